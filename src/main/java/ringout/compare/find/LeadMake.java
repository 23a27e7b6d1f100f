package ringout.compare.find;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Kind;
import ringout.compare.match.Cable;
import ringout.compare.match.Match;
import ringout.graph.Wire;
import ringout.graph.wire.WireColour;
import ringout.model.FuseEnd;
import ringout.model.Lead;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;

/** Differences of what a lead is made of: label, length, size, colours, fuse, connectors and the rest of its row. */
final class LeadMake {
    /** What conductors are compared by, one by one, wherever it is written. */
    private static final Set<String> OF_WIRES =
            Set.of("from", "to", "pins", "awg", "areaMm2", "lengthMm", "colours", "conductors");

    private static final Set<String> FUSES = Set.of("fuseA", "fuseAt", "fuseMeltA2s", "unfused");
    private static final Set<String> CONNECTORS =
            Set.of("fromFamily", "toFamily", "fromKey", "toKey", "fromHalf", "toHalf", "fromPlating", "toPlating");
    private static final Set<String> LABELS = Set.of("fromLabel", "toLabel");
    private static final Set<String> RECORDS = Set.of("recent", "matings", "madeBy");

    private final Scene scene;

    /** The words of one kind of difference. */
    private record Said(List<String> before, List<String> after, List<String> fields) {
        Said() {
            this(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        }

        void add(String field, String here, String there, boolean alone) {
            fields.add(field);
            before.add(alone ? here : field + " " + (here.isEmpty() ? "not given" : here));
            after.add(alone ? there : field + " " + (there.isEmpty() ? "not given" : there));
        }
    }

    LeadMake(Scene scene) {
        this.scene = scene;
    }

    /** Whether a lead is told in both by one row in the same words between the same contacts. */
    boolean plainly(Match.Pair pair) {
        List<Wire> here = pair.base().wires();
        List<Wire> there = pair.other().wires();
        if (!pair.joinsSame()
                || !scene.names().plain()
                || pair.base().rows().size() > 1
                || pair.other().rows().size() > 1) {
            return false;
        }
        for (int i = 0; i < here.size(); i++) {
            boolean same = scene.match().pin(here.get(i).fromPin())
                            == there.get(i).fromPin()
                    && scene.match().pin(here.get(i).toPin()) == there.get(i).toPin();
            if (!same) {
                return false;
            }
        }
        return Plainly.same(pair.base().row(), pair.other().row());
    }

    List<Difference> of(Match.Pair pair, Ways ways) {
        Map<Kind, Said> said = new EnumMap<>(Kind.class);
        if (!Names.fold(pair.base().id()).equals(Names.fold(pair.other().id()))) {
            add(said, Kind.LABEL, "name", pair.base().id(), pair.other().id());
        }
        wires(ways, said);
        rows(pair, ways, said);
        if (said.isEmpty()) {
            return List.of();
        }
        List<Difference> found = new ArrayList<>();
        said.forEach((kind, words) -> found.add(difference(pair, kind, words)));
        return found;
    }

    private static void add(Map<Kind, Said> said, Kind kind, String field, String before, String after) {
        said.computeIfAbsent(kind, key -> new Said()).add(field, before, after, false);
    }

    private void wires(Ways ways, Map<Kind, Said> said) {
        Map<Wire, Wire> wires = ways.wires();
        if (wires.isEmpty()) {
            return;
        }
        compare(wires, said, Kind.SIZE, "size", wire -> size(wire));
        compare(
                wires,
                said,
                Kind.LENGTH,
                "length",
                wire -> number(wire.lengthMm().known(), " mm"));
        compareColours(wires, said);
        compare(
                wires,
                said,
                Kind.JOINT,
                "splice",
                wire -> wire.own().flatMap(own -> own.splice().known()).orElse(""));
    }

    private static String size(Wire wire) {
        return wire.awg()
                .known()
                .map(awg -> "AWG " + awg)
                .orElseGet(() -> number(wire.areaMm2().known(), " mm2"));
    }

    private static String number(Optional<Double> value, String symbol) {
        return value.map(known -> ringout.model.shape.Scalars.number(known) + symbol)
                .orElse("");
    }

    private void compare(
            Map<Wire, Wire> wires, Map<Kind, Said> said, Kind kind, String field, Function<Wire, String> text) {
        Set<String> before = new TreeSet<>();
        Set<String> after = new TreeSet<>();
        wires.forEach((here, there) -> {
            String a = text.apply(here);
            String b = text.apply(there);
            if (!scene.names().same(a, b)) {
                before.add(a.isEmpty() ? "not given" : a);
                after.add(b.isEmpty() ? "not given" : b);
            }
        });
        if (!before.isEmpty()) {
            String where = before.size() == 1 && after.size() == 1 ? field : field + "s";
            add(said, kind, where, String.join(" ", before), String.join(" ", after));
        }
    }

    private void compareColours(Map<Wire, Wire> wires, Map<Kind, Said> said) {
        List<String> before = new ArrayList<>();
        List<String> after = new ArrayList<>();
        wires.forEach((here, there) -> {
            String a = WireColour.of(scene.match().base(), here);
            String b = WireColour.of(scene.match().other(), there);
            if (!a.equals(b)) {
                String pin = scene.match().base().pin(here.fromPin()).number() + "=";
                before.add(pin + (a.isEmpty() ? "?" : a));
                after.add(pin + (b.isEmpty() ? "?" : b));
            }
        });
        if (!before.isEmpty()) {
            add(said, Kind.COLOUR, "colour", String.join(" ", before), String.join(" ", after));
        }
    }

    private void rows(Match.Pair pair, Ways ways, Map<Kind, Said> said) {
        Lead here = whole(pair.base());
        Lead there = ways.reversed() ? TurnedLead.of(whole(pair.other())) : whole(pair.other());
        FieldWalk walk = new FieldWalk(scene.values());
        for (FieldChange change : walk.of(here, there, slot -> !OF_WIRES.contains(slot.name()))) {
            if (change.field().equals("fuseAt") && told(change.before()).equals(told(change.after()))) {
                continue;
            }
            add(
                    said,
                    kind(change.field().isEmpty() ? change.group() : change.field()),
                    change.what(),
                    change.before(),
                    change.after());
        }
    }

    /** The end of a fuse: the from end, where the row says nothing. */
    private static String told(String end) {
        return end.isEmpty() ? FuseEnd.FROM.word() : end;
    }

    /** One row that says what all rows of a lead say together. */
    private static Lead whole(Cable cable) {
        if (cable.rows().size() == 1) {
            return cable.row();
        }
        Shape<Lead> shape = Shape.of(Lead.class);
        Object[] values = shape.values(cable.row());
        for (Lead row : cable.rows()) {
            for (Slot slot : shape.slots()) {
                boolean open = slot.kind() == Slot.Kind.DATUM && values[slot.index()].equals(Shape.absent(slot));
                if (open) {
                    values[slot.index()] = slot.get(row);
                }
            }
        }
        return shape.make(values);
    }

    private static Kind kind(String field) {
        if (FUSES.contains(field)) {
            return Kind.FUSE;
        }
        if (CONNECTORS.contains(field)) {
            return Kind.CONNECTOR;
        }
        if (LABELS.contains(field)) {
            return Kind.LABEL;
        }
        if (RECORDS.contains(field)) {
            return Kind.RECORD;
        }
        return field.equals("routeMm") ? Kind.LENGTH : Kind.MAKE;
    }

    private static Difference difference(Match.Pair pair, Kind kind, Said said) {
        String id = pair.base().id();
        return new Difference(
                kind,
                id,
                id + " " + (said.fields().size() == 1 ? said.fields().get(0) : kind.word()),
                said.before().stream().map(words -> plain(said, words)).collect(Collectors.joining(", ")),
                said.after().stream().map(words -> plain(said, words)).collect(Collectors.joining(", ")),
                List.of(),
                List.of(Scene.place(pair.base())),
                List.of(Scene.place(pair.other())),
                Set.of(id),
                LeadFinder.touched(List.of(pair.base()), List.of(pair.other()), List.of(), List.of()));
    }

    /** One field needs no name again. */
    private static String plain(Said said, String words) {
        return said.fields().size() == 1 ? words.substring(said.fields().get(0).length() + 1) : words;
    }
}
