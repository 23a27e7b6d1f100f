package ringout.draw.harness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import ringout.draw.card.TextTable;
import ringout.draw.lead.LeadCard;
import ringout.draw.lead.LeadEnd;
import ringout.draw.lead.Passed;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Fuse;
import ringout.draw.scene.WireKind;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.route.Spot;
import ringout.graph.wire.WireColour;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Origin;
import ringout.model.RoutePoint;
import ringout.model.Shield;
import ringout.model.Unit;
import ringout.model.shape.Scalars;

/** The drawing of one made-up lead: the conductors of its rows between the same two plugs. */
final class LeadPicture {
    private final Wiring wiring;
    private final WireLook look;
    private final PlugFaces faces;
    private final List<Wire> wires;
    private final Lead lead;

    /**
     * Prepares a picture.
     *
     * @param wires conductors of the lead between one pair of plugs, at least one
     */
    LeadPicture(Circuit circuit, List<Wire> wires) {
        this.wiring = circuit.wiring();
        this.look = new WireLook(circuit);
        this.faces = new PlugFaces(circuit);
        this.wires = List.copyOf(wires);
        this.lead = wires.get(0).lead();
    }

    /**
     * The card.
     *
     * @param id identifier within the set
     * @param part such as {@code part 1 of 2}, of a lead with more than two plugs; empty otherwise
     * @param findings to be marked
     */
    LeadCard card(String id, String part, List<FindingLine> findings) {
        Wire first = wires.get(0);
        OptionalDouble length = longest();
        Optional<Fuse> fuse =
                wires.stream().flatMap(wire -> look.fuse(wire).stream()).findFirst();
        return new LeadCard(
                id,
                lead.id().isEmpty() ? id : lead.id(),
                facts(part, fuse),
                new LeadEnd(lead.fromLabel().or(""), face(first.fromPin())),
                new LeadEnd(lead.toLabel().or(""), face(first.toPin())),
                length,
                length.isPresent() ? millimetres(length.getAsDouble()) + origin() : "?",
                passed(first),
                kind(),
                cover(),
                fuse,
                legs(),
                table(),
                findings);
    }

    private ringout.draw.face.Face face(int pin) {
        return faces.of(wiring.unitOf(pin), wiring.plugIndex(pin));
    }

    /** What it is for: the first thing it carries that is neither a supply nor a return. */
    private WireKind kind() {
        List<WireKind> kinds = wires.stream().map(look::kind).toList();
        return kinds.stream()
                .filter(kind -> kind != WireKind.SUPPLY && kind != WireKind.RETURN && kind != WireKind.OTHER)
                .findFirst()
                .orElse(kinds.get(0));
    }

    private OptionalDouble longest() {
        return wires.stream()
                .flatMap(wire -> wire.lengthMm().known().stream())
                .mapToDouble(mm -> mm)
                .max();
    }

    private static String millimetres(double mm) {
        return Scalars.number(mm) + " mm";
    }

    private String origin() {
        return lead.lengthMm() instanceof Datum.Known<Double> known && known.origin() == Origin.MEASURED
                ? " measured"
                : "";
    }

    private List<String> facts(String part, Optional<Fuse> fuse) {
        List<String> words = new ArrayList<>();
        lead.kind().known().ifPresent(kind -> words.add(kind.word()));
        sizes().ifPresent(words::add);
        if (lead.twisted().is(true)) {
            words.add("twisted");
        }
        lead.pairs().known().ifPresent(pairs -> words.add("pairs " + pairs));
        lead.shield().known().filter(s -> s != Shield.NONE).ifPresent(s -> words.add("shield grounded at " + s.word()));
        sleeve().ifPresent(sleeve -> words.add("sleeve " + sleeve));
        fuse.ifPresent(f -> words.add("fuse " + f.rating() + " at " + (f.atStart() ? "from end" : "to end")));
        lead.bundle().known().ifPresent(bundle -> words.add("bundle " + bundle));
        lead.routeMm().known().ifPresent(mm -> words.add("way " + millimetres(mm)));
        List<String> facts = new ArrayList<>(List.of(String.join(", ", words)));
        facts.removeIf(String::isEmpty);
        if (!part.isEmpty()) {
            facts.add(part + " of one made-up lead");
        }
        lead.note().known().ifPresent(facts::add);
        return facts;
    }

    /** The size, when all conductors have the same; else the table tells. */
    private Optional<String> sizes() {
        List<String> sizes = wires.stream().map(this::size).distinct().toList();
        return sizes.size() == 1 && !sizes.get(0).isEmpty() ? Optional.of(sizes.get(0)) : Optional.empty();
    }

    private String size(Wire wire) {
        return wire.awg().known().map(awg -> awg + " AWG").orElse(look.size(wire));
    }

    private Optional<String> sleeve() {
        return lead.sleeve().known().filter(s -> !s.toLowerCase(Locale.ROOT).equals("none"));
    }

    private LeadCard.Cover cover() {
        Shield shield = lead.shield().or(Shield.NONE);
        boolean both = shield == Shield.BOTH;
        return new LeadCard.Cover(
                sleeve().orElse(""), shield != Shield.NONE, both || shield == Shield.FROM, both || shield == Shield.TO);
    }

    private List<LeadCard.Leg> legs() {
        return wires.stream()
                .map(wire -> new LeadCard.Leg(
                        lead.id() + "." + wiring.pin(wire.fromPin()).number(),
                        wiring.name(wire.fromPin()),
                        wiring.name(wire.toPin())))
                .toList();
    }

    /** A row a conductor; size and length only where they differ, else they stand above. */
    private TextTable table() {
        boolean sized = sizes().isEmpty();
        boolean measured = wires.stream().map(this::length).distinct().count() > 1;
        List<String> heads = new ArrayList<>(List.of("pin", "signal", "colour"));
        List<List<String>> rows = new ArrayList<>();
        for (Wire wire : wires) {
            List<String> row = new ArrayList<>(end(wire.fromPin()));
            row.add(WireColour.of(wiring, wire));
            addIf(sized, row, size(wire));
            addIf(measured, row, length(wire));
            row.addAll(end(wire.toPin()));
            rows.add(row);
        }
        addIf(sized, heads, "size");
        addIf(measured, heads, "mm");
        heads.addAll(List.of("pin", "signal"));
        return new TextTable(heads, rows, 2);
    }

    private List<String> end(int pin) {
        return List.of(wiring.pin(pin).number(), PinSignal.of(wiring, pin));
    }

    private static void addIf(boolean wanted, List<String> row, String text) {
        if (wanted) {
            row.add(text);
        }
    }

    private String length(Wire wire) {
        return wire.lengthMm().known().map(Scalars::number).orElse("?");
    }

    /** What it passes, with the distance from the datum along the straight pieces between the points told. */
    private List<Passed> passed(Wire first) {
        List<Passed> passed = new ArrayList<>();
        Optional<Spot> last = place(first.fromPin());
        double way = 0;
        for (RoutePoint point : lead.route()) {
            Optional<Spot> here = spot(point.xMm(), point.yMm(), point.zMm());
            way += last.isPresent() && here.isPresent() ? last.get().to(here.get()) : 0;
            boolean placed = last.isPresent() && here.isPresent();
            last = here;
            passed.add(new Passed(words(point), placed ? OptionalDouble.of(way) : OptionalDouble.empty()));
        }
        return passed;
    }

    private static String words(RoutePoint point) {
        String flags = point.flags().stream().map(flag -> flag.word()).collect(Collectors.joining(", "));
        String through = point.through().known().map(t -> " through " + t).orElse("");
        String guarded = point.guarded().is(true) ? ", guarded" : "";
        return (flags.isEmpty() ? "point" : flags) + through + guarded;
    }

    private Optional<Spot> place(int pin) {
        if (wiring.directory().isJoint(wiring.unitOf(pin))) {
            return Optional.empty();
        }
        Unit unit = wiring.unit(pin);
        return spot(unit.xMm(), unit.yMm(), unit.zMm());
    }

    private static Optional<Spot> spot(Datum<Double> x, Datum<Double> y, Datum<Double> z) {
        return x.isKnown() && y.isKnown() && z.isKnown()
                ? Optional.of(new Spot(x.or(0.0), y.or(0.0), z.or(0.0)))
                : Optional.empty();
    }
}
