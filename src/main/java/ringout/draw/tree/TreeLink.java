package ringout.draw.tree;

/**
 * A line of a tree.
 *
 * @param id identifier within the sheet
 * @param from identifier of the node nearer to the packs
 * @param to identifier of the other
 * @param label leads, sizes, fuses and lengths
 * @param brief the same without lengths, where there is little room
 * @param fused whether a fuse protects it
 * @param girth how thick it is drawn
 */
public record TreeLink(String id, String from, String to, String label, String brief, boolean fused, Girth girth) {}
