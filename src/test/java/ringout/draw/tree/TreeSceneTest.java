package ringout.draw.tree;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.draw.scene.SheetInfo;

/** What a tree can show. */
class TreeSceneTest {
    @ParameterizedTest
    @CsvSource({"AB BC, false", "AC BC, false", "AB AC BC, false", "AB BC CB, true", "BC CB, true", "AA, true"})
    void linesThatLeadRoundAreARing(String lines, boolean ring) {
        List<TreeNode> nodes = new ArrayList<>();
        for (String name : List.of("A", "B", "C")) {
            nodes.add(new TreeNode(name, "board", name, List.of(), List.of(), false, Optional.empty()));
        }
        List<TreeLink> links = new ArrayList<>();
        for (String line : lines.split(" ")) {
            String from = line.substring(0, 1);
            links.add(new TreeLink(line, from, line.substring(1), "", "", false, Girth.SUPPLY));
        }
        SheetInfo info = SheetInfo.of("", "", "", "");
        TreeScene scene = new TreeScene(info, nodes, links, List.of(), List.of(), List.of(), List.of());
        assertEquals(ring, scene.rings());
    }
}
