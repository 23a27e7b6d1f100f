package ringout.draw.form;

/**
 * One end of a link at a box or splice.
 *
 * @param index its number
 * @param node the box or splice
 * @param group the plug, or the splice's own group of this one tap
 * @param offset steps from the top of the group to the line
 * @param link the wire or move
 * @param row identifier of the row or splice
 * @param lane what stands beside the end
 */
public record Tap(int index, int node, int group, int offset, int link, String row, Lane lane) {}
