package ringout.draw.form;

import static ringout.draw.letter.Lettering.MEDIUM;
import static ringout.draw.letter.Lettering.SMALL;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.scene.Box;
import ringout.draw.scene.Move;
import ringout.draw.scene.Plug;
import ringout.draw.scene.Splice;
import ringout.draw.scene.Wire;
import ringout.draw.scene.WiringScene;

/** Numbers and measures the parts of a scene, in its order. */
final class FormsBuilder {
    private static final double NARROWEST_BOX = 30;
    private static final double WIDEST_TITLE = 44;
    private static final double WIDEST_ZONE = 34;
    private static final double MARGIN = 1.5;

    /** A box is widened while its subtitle needs more lines than these. */
    private static final int FEW_LINES = 2;

    private static final int MOST_LINES = 4;
    private static final double LEAST_BELOW_TITLE = 1.5;

    private final WiringScene scene;
    private final BadgeIndex badges;
    private final LaneMaker laneMaker;
    private final PlugMaker plugMaker;
    private final Map<String, List<WireEnd>> ends = new HashMap<>();
    private final List<NodeForm> nodes = new ArrayList<>();
    private final List<GroupForm> groups = new ArrayList<>();
    private final List<Tap> taps = new ArrayList<>();
    private final int[] fromTap;
    private final int[] toTap;

    /** One end of a wire or move before it has a number. */
    private record WireEnd(int link, boolean start, Lane lane) {}

    FormsBuilder(WiringScene scene) {
        this.scene = scene;
        this.badges = new BadgeIndex(scene.marks());
        this.laneMaker = new LaneMaker(badges, scene.references());
        this.plugMaker = new PlugMaker(badges);
        int links = scene.wires().size() + scene.moves().size();
        this.fromTap = new int[links];
        this.toTap = new int[links];
        Arrays.fill(toTap, Link.FLAGGED);
    }

    Forms build() {
        collectEnds();
        scene.boxes().forEach(this::addBox);
        scene.splices().forEach(this::addSplice);
        List<Link> links = new ArrayList<>();
        for (Wire wire : scene.wires()) {
            int i = links.size();
            links.add(new Link(i, wire.id(), Optional.of(wire), Optional.empty(), fromTap[i], toTap[i]));
        }
        for (Move move : scene.moves()) {
            int i = links.size();
            links.add(new Link(i, move.id(), Optional.empty(), Optional.of(move), fromTap[i], toTap[i]));
        }
        return new Forms(scene, nodes, groups, taps, links);
    }

    private void collectEnds() {
        int link = 0;
        for (Wire wire : scene.wires()) {
            addEnd(wire.from(), new WireEnd(link, true, laneMaker.ofWire(wire, true)));
            addEnd(wire.to(), new WireEnd(link, false, laneMaker.ofWire(wire, false)));
            link++;
        }
        for (Move move : scene.moves()) {
            addEnd(move.from(), new WireEnd(link, true, laneMaker.ofMove(move.id(), true)));
            addEnd(move.to(), new WireEnd(link, false, laneMaker.ofMove(move.id(), false)));
            link++;
        }
    }

    private void addEnd(String at, WireEnd end) {
        ends.computeIfAbsent(at, a -> new ArrayList<>()).add(end);
    }

    private List<WireEnd> endsAt(String id) {
        return ends.getOrDefault(id, List.of());
    }

    private void addBox(Box box) {
        int node = nodes.size();
        List<Integer> own = new ArrayList<>();
        for (Plug plug : box.plugs()) {
            own.add(addPlug(node, plug));
        }
        String title = Lettering.fit(Lettering.printable(box.title()), MEDIUM, Weight.BOLD, WIDEST_TITLE);
        String zone = Lettering.fit(Lettering.printable(box.zone()), SMALL, Weight.REGULAR, WIDEST_ZONE);
        List<BadgeForm> marks = badges.of(box.id());
        double line = Lettering.width(title, MEDIUM, Weight.BOLD)
                + (zone.isEmpty() ? 0 : Lettering.width(zone, SMALL, Weight.REGULAR) + 2 * MARGIN)
                + marks.stream().mapToDouble(b -> b.width() + BadgeForm.GAP).sum();
        double plugs =
                own.stream().mapToDouble(g -> groups.get(g).width()).max().orElse(0) + Lattice.AISLE;
        String what = Lettering.printable(box.subtitle());
        double width = wideEnough(what, Math.max(NARROWEST_BOX, Math.max(line + 2 * MARGIN, plugs)));
        List<String> subtitle = Lettering.wrap(what, SMALL, Weight.REGULAR, width - 2 * MARGIN, MOST_LINES);
        double drop = marks.isEmpty() && Lettering.riseOf(what, SMALL) == 0 ? 0 : NodeForm.DROP;
        double below = Math.max(LEAST_BELOW_TITLE, subtitle.size() * NodeForm.SUBTITLE_LINE);
        double lines = NodeForm.TITLE_LINE + drop + below;
        int head = (int) Math.ceil(lines / Lattice.STEP - 1e-9);
        nodes.add(new NodeForm(node, box.id(), Optional.of(box), title, zone, subtitle, drop, marks, head, width, own));
    }

    /** A box is made wider, within limits, rather than its subtitle cut. */
    private static double wideEnough(String subtitle, double least) {
        double width = least;
        while (width < WIDEST_TITLE
                && Lettering.wrap(subtitle, SMALL, Weight.REGULAR, width - 2 * MARGIN, MOST_LINES + 1)
                                .size()
                        > FEW_LINES) {
            width += 2;
        }
        return width;
    }

    private int addPlug(int node, Plug plug) {
        Map<String, List<Lane>> lanes = new HashMap<>();
        plug.rows()
                .forEach(row -> lanes.put(
                        row.id(), endsAt(row.id()).stream().map(WireEnd::lane).toList()));
        PlugForm form = plugMaker.make(plug, lanes);
        double room = lanes.values().stream()
                .flatMap(List::stream)
                .mapToDouble(Lane::labelWidth)
                .max()
                .orElse(0);
        int group = groups.size();
        List<Integer> own = new ArrayList<>();
        for (RowForm row : form.rows()) {
            List<WireEnd> here = endsAt(row.row().id());
            for (int i = 0; i < here.size(); i++) {
                WireEnd end = here.get(i);
                WireEnd roomy = new WireEnd(end.link(), end.start(), end.lane().withRoom(room));
                own.add(addTap(node, group, row.lines().get(i), row.row().id(), roomy));
            }
        }
        groups.add(new GroupForm(group, node, plug.id(), Optional.of(form), own, form.height()));
        return group;
    }

    private void addSplice(Splice splice) {
        int node = nodes.size();
        List<Integer> own = new ArrayList<>();
        for (WireEnd end : endsAt(splice.id())) {
            int group = groups.size();
            int extra = end.lane().tall() || end.lane().flagWidth() > 0 ? Lattice.BADGE : 0;
            int tap = addTap(node, group, 1 + extra, splice.id(), end);
            String id = linkId(end.link());
            groups.add(new GroupForm(group, node, id, Optional.empty(), List.of(tap), Lattice.ROW + extra));
            own.add(group);
        }
        String label = Lettering.fit(Lettering.printable(splice.label()), SMALL, Weight.BOLD, WIDEST_ZONE);
        List<BadgeForm> marks = badges.of(splice.id());
        double width = Lettering.width(label, SMALL, Weight.BOLD)
                + marks.stream().mapToDouble(b -> b.width() + BadgeForm.GAP).sum()
                + 2 * MARGIN;
        int head = Lattice.ROW + (marks.isEmpty() ? 0 : Lattice.BADGE);
        nodes.add(new NodeForm(node, splice.id(), Optional.empty(), label, "", List.of(), 0, marks, head, width, own));
    }

    private String linkId(int link) {
        int wires = scene.wires().size();
        return link < wires
                ? scene.wires().get(link).id()
                : scene.moves().get(link - wires).id();
    }

    private int addTap(int node, int group, int offset, String row, WireEnd end) {
        int tap = taps.size();
        taps.add(new Tap(tap, node, group, offset, end.link(), row, end.lane()));
        if (end.start()) {
            fromTap[end.link()] = tap;
        } else {
            toTap[end.link()] = tap;
        }
        return tap;
    }
}
