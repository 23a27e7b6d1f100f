package ringout.draw.tree;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.draw.scene.SheetInfo;

/**
 * A tree ready to be laid out.
 *
 * @param info the title block
 * @param nodes in the order of the sheet from top to bottom
 * @param links a node may have several above it only when they have no other below them
 * @param heads what the columns of the leaves say, the name apart
 * @param marks badges on nodes and links
 * @param findings the finding list
 * @param notes lines below it
 */
public record TreeScene(
        SheetInfo info,
        List<TreeNode> nodes,
        List<TreeLink> links,
        List<String> heads,
        List<Mark> marks,
        List<FindingLine> findings,
        List<String> notes) {
    /** Keeps unmodifiable copies and refuses a scene that contradicts itself. */
    public TreeScene {
        nodes = List.copyOf(nodes);
        links = List.copyOf(links);
        heads = List.copyOf(heads);
        marks = List.copyOf(marks);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
        Set<String> known = new HashSet<>();
        for (TreeNode node : nodes) {
            need(known.add(node.id()), "identifier used twice: " + node.id());
        }
        for (TreeLink link : links) {
            need(known.contains(link.from()) && known.contains(link.to()), "link " + link.id() + " has an unknown end");
        }
        links.forEach(link -> need(known.add(link.id()), "identifier used twice: " + link.id()));
        marks.forEach(
                mark -> mark.targets().forEach(target -> need(known.contains(target), "mark on unknown " + target)));
    }

    /** {@return whether some lines lead round in a ring, which no tree can show} */
    public boolean rings() {
        Map<String, Integer> above = new HashMap<>();
        links.forEach(link -> above.merge(link.to(), 1, Integer::sum));
        Deque<String> free = new ArrayDeque<>();
        nodes.stream().map(TreeNode::id).filter(id -> !above.containsKey(id)).forEach(free::add);
        int passed = 0;
        while (!free.isEmpty()) {
            String node = free.remove();
            passed++;
            for (TreeLink link : links) {
                if (link.from().equals(node) && above.merge(link.to(), -1, Integer::sum) == 0) {
                    free.add(link.to());
                }
            }
        }
        return passed < nodes.size();
    }

    private static void need(boolean kept, String breach) {
        if (!kept) {
            throw new IllegalArgumentException(breach);
        }
    }
}
