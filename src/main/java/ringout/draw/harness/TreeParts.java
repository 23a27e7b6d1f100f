package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.draw.tree.Girth;
import ringout.draw.tree.TreeLink;
import ringout.draw.tree.TreeNode;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.model.Awg;

/** Things and lines of a tree as they are found, and which leads and units they stand for. */
final class TreeParts {
    private static final double MM_PER_M = 1000;

    private final Circuit circuit;
    private final Ids ids = new Ids();
    private final Map<String, TreeNode> nodes = new LinkedHashMap<>();
    private final List<TreeLink> links = new ArrayList<>();
    private final Map<String, Set<String>> ofLead = new LinkedHashMap<>();
    private final Map<String, Set<String>> ofUnit = new LinkedHashMap<>();
    private final Set<String> linked = new HashSet<>();

    TreeParts(Circuit circuit) {
        this.circuit = circuit;
    }

    /** The identifier of a thing, by what it is. */
    String id(String key, String name) {
        return ids.of(key, name);
    }

    void node(TreeNode node, int unit) {
        nodes.put(node.id(), node);
        ofUnit.computeIfAbsent(circuit.wiring().directory().name(unit), key -> new LinkedHashSet<>())
                .add(node.id());
    }

    /** The same thing with other words. */
    void replace(TreeNode node) {
        nodes.put(node.id(), node);
    }

    boolean has(String id) {
        return nodes.containsKey(id);
    }

    /**
     * A line, once between two things.
     *
     * @param wires the conductors it stands for
     * @param label what stands on it
     * @param brief the same where there is little room
     */
    void link(String from, String to, List<Wire> wires, String label, String brief, boolean fused, Girth girth) {
        if (from.equals(to) || !linked.add(from + "\n" + to)) {
            return;
        }
        String name = names(wires);
        String id = ids.of("link " + from + " " + to, name.isEmpty() ? from + " " + to : name);
        links.add(new TreeLink(id, from, to, label, brief, fused, girth));
        wires.forEach(wire -> ofLead.computeIfAbsent(wire.lead().id(), key -> new LinkedHashSet<>())
                .add(id));
    }

    /** Leads by name: {@code W61}. */
    static String names(List<Wire> wires) {
        return wires.stream().map(wire -> wire.lead().id()).distinct().collect(Collectors.joining(" + "));
    }

    /** Leads with their sizes, and with their lengths if wanted: {@code W61 18 AWG 0.22 m}. */
    static String words(List<Wire> wires, boolean length) {
        return wires.stream()
                .map(wire -> wire.lead().id() + size(wire) + (length ? length(wire) : ""))
                .distinct()
                .collect(Collectors.joining(" + "));
    }

    static String size(Wire wire) {
        if (wire.awg().known().isPresent()) {
            Awg awg = wire.awg().known().get();
            return " " + awg + " AWG";
        }
        return wire.areaMm2().isKnown()
                ? String.format(Locale.ROOT, " %.2f mm2", wire.areaMm2().or(0.0))
                : " size ?";
    }

    private static String length(Wire wire) {
        return wire.lengthMm().isKnown()
                ? String.format(Locale.ROOT, " %.2f m", wire.lengthMm().or(0.0) / MM_PER_M)
                : "";
    }

    List<TreeNode> nodes() {
        return List.copyOf(nodes.values());
    }

    List<TreeLink> links() {
        return List.copyOf(links);
    }

    Map<String, Set<String>> ofLead() {
        return ofLead;
    }

    Map<String, Set<String>> ofUnit() {
        return ofUnit;
    }
}
