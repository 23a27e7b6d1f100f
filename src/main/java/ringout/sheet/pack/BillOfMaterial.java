package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.ContactHalf;
import ringout.model.Datum;
import ringout.model.Joint;
import ringout.model.Lead;
import ringout.model.Plug;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.model.shape.Scalars;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;

/** The bill of material: what is bought to build one aircraft, with a tenth more of what gets spoiled. */
final class BillOfMaterial {
    /** Wire and contacts spoiled in work: common practice, no source. */
    private static final double SPOILED = 1.1;

    private final PackSource from;
    private final Wiring wiring;
    private final Map<String, Integer> housings = new TreeMap<>();
    private final Map<String, Integer> contacts = new TreeMap<>();

    private BillOfMaterial(PackSource from) {
        this.from = from;
        wiring = from.wiring();
        Set<Integer> plugs = new HashSet<>();
        Set<Integer> pins = new HashSet<>();
        for (Wire wire : wiring.wires()) {
            if (!wire.lead().delivered().is(true)) {
                end(wire, wire.fromPin(), plugs, pins);
                end(wire, wire.toPin(), plugs, pins);
            }
        }
    }

    static Document of(PackSource from) {
        BillOfMaterial bill = new BillOfMaterial(from);
        Paragraph how =
                new Paragraph("For one aircraft, as listed. Contacts and wire carry a tenth more for what is spoiled in"
                        + " work. A plug of several leads counts once; leads that come made with a unit are told apart and not"
                        + " counted. Sleeve is the length of the leads under it. Not listed, because the list does not hold"
                        + " them: screws, ties, tape, labels, solder, heat shrink, sealing plugs.");
        return from.upright(
                "bill-of-material",
                "Bill of material",
                List.of(
                        new Section("", List.of(how)),
                        new Section("", List.of(bill.units(), bill.parts(), bill.wire()))));
    }

    private void end(Wire wire, int pin, Set<Integer> plugs, Set<Integer> pins) {
        int unit = wiring.unitOf(pin);
        if (wiring.directory().isJoint(unit)) {
            return;
        }
        boolean start = pin == wire.fromPin();
        Lead lead = wire.lead();
        Plug plug = wiring.plug(pin);
        String family = (start ? lead.fromFamily() : lead.toFamily())
                .orElse(plug.family())
                .or("family not given");
        Datum<ContactHalf> own = start ? lead.fromHalf() : lead.toHalf();
        String half = own.known()
                .or(() -> plug.half().known().map(BillOfMaterial::other))
                .map(Scalars::write)
                .map(word -> ", " + word)
                .orElse("");
        if (plugs.add(wiring.firstPin(unit, wiring.plugIndex(pin)))) {
            String key = (start ? lead.fromKey() : lead.toKey())
                    .orElse(plug.key())
                    .known()
                    .map(word -> ", key " + word)
                    .orElse("");
            housings.merge(family + half + key, 1, Integer::sum);
        }
        if (pins.add(pin)) {
            contacts.merge(family + half, 1, Integer::sum);
        }
    }

    /** The half that mates; what carries both kinds mates with its like. */
    private static ContactHalf other(ContactHalf half) {
        return switch (half) {
            case PINS -> ContactHalf.SOCKETS;
            case SOCKETS -> ContactHalf.PINS;
            case NEUTRAL -> half;
        };
    }

    static int withSpoiled(int count) {
        // Not a product of doubles rounded up: 1.1 times 10 is a little more than 11 there.
        return count + (count + 9) / 10;
    }

    private Table units() {
        Map<String, List<Unit>> byType = new TreeMap<>();
        from.aircraft()
                .units()
                .forEach(unit -> byType.computeIfAbsent(unit.type(), key -> new ArrayList<>())
                        .add(unit));
        TableBuilder table = Table.named(
                        "bill-units",
                        Column.text("type"),
                        Column.text("what it is"),
                        Column.text("maker's part"),
                        Column.number("count", ""),
                        Column.text("as"))
                .titled("Units");
        byType.forEach((name, units) -> {
            Optional<UnitType> type = from.type(units.get(0));
            table.row(
                    name,
                    type.map(BillOfMaterial::what).orElse(""),
                    type.map(BillOfMaterial::part).orElse(""),
                    Integer.toString(units.size()),
                    String.join(" ", units.stream().map(Unit::ref).toList()));
        });
        return table.table();
    }

    private static String what(UnitType type) {
        return type.title()
                .known()
                .orElseGet(() -> type.kind().known().map(Scalars::write).orElse(""));
    }

    private static String part(UnitType type) {
        return type.makerPart().or("")
                + type.revision().known().map(r -> " rev " + r).orElse("");
    }

    private Table parts() {
        TableBuilder table = Table.named(
                        "bill-parts",
                        Column.text("part"),
                        Column.number("count", ""),
                        Column.number("to buy", ""),
                        Column.text("note"))
                .titled("Plugs, contacts, fuses, joints, sleeve")
                .by("kind");
        table.group("plugs and lugs of the leads");
        housings.forEach((name, count) -> table.row(name, count.toString(), count.toString(), ""));
        table.group("contacts");
        contacts.forEach((name, count) -> table.row(
                name, count.toString(), Integer.toString(withSpoiled(count)), "with a tenth for spoiled ones"));
        table.group("fuses in leads");
        counted(from.aircraft().leads().stream()
                        .filter(lead -> lead.fuseA().isKnown())
                        .map(lead -> "fuse " + Scalars.number(lead.fuseA().or(0.0)) + " A with holder")
                        .toList())
                .forEach((name, count) ->
                        table.row(name, count.toString(), Integer.toString(2 * count), "one spare each"));
        table.group("joints");
        counted(from.aircraft().joints().stream().map(BillOfMaterial::joint).toList())
                .forEach((name, count) -> table.row(name, count.toString(), count.toString(), ""));
        table.group("leads that come made with a unit");
        from.aircraft().leads().stream()
                .filter(lead -> lead.delivered().is(true))
                .forEach(lead -> table.row(lead.id() + ": " + lead.from() + " to " + lead.to(), "1", "0", "delivered"));
        table.group("sleeve");
        sleeves(table);
        return table.table();
    }

    private static String joint(Joint joint) {
        return joint.kind().known().map(Scalars::write).orElse("joint")
                + joint.conductors()
                        .known()
                        .map(count -> " for " + count + " conductors")
                        .orElse("")
                + joint.ratingA()
                        .known()
                        .map(amps -> ", " + Scalars.number(amps) + " A")
                        .orElse("");
    }

    private static Map<String, Integer> counted(List<String> names) {
        Map<String, Integer> counts = new TreeMap<>();
        names.forEach(name -> counts.merge(name, 1, Integer::sum));
        return counts;
    }

    private void sleeves(TableBuilder table) {
        Map<String, Double> metres = new TreeMap<>();
        Map<String, Set<String>> open = new TreeMap<>();
        for (Lead lead : from.aircraft().leads()) {
            lead.sleeve().known().filter(word -> !word.equals("none")).ifPresent(sleeve -> {
                metres.merge(sleeve, lead.lengthMm().or(0.0) / 1000, Double::sum);
                if (!lead.lengthMm().isKnown()) {
                    open.computeIfAbsent(sleeve, key -> new TreeSet<>()).add(lead.id());
                }
            });
        }
        metres.forEach((sleeve, sum) -> table.row(
                sleeve + ", m",
                number(sum),
                number(sum * SPOILED),
                "length of the leads and a tenth"
                        + (open.containsKey(sleeve)
                                ? "; without a length: " + String.join(" ", open.getOrDefault(sleeve, Set.of()))
                                : "")));
    }

    private Table wire() {
        TableBuilder table = Table.named(
                        "bill-wire",
                        Column.text("wire"),
                        Column.text("colour"),
                        Column.number("pieces", ""),
                        Column.number("sum", "m"),
                        Column.number("to buy", "m"),
                        Column.text("note"))
                .titled("Wire");
        CutList.byKind(from).forEach((kind, wires) -> {
            long open = CutList.unmeasured(wires);
            table.row(
                    kind.size(),
                    kind.colour(),
                    Integer.toString(wires.size()),
                    number(CutList.metres(wires)),
                    number(CutList.metres(wires) * SPOILED),
                    open == 0 ? "" : open + " without a length, not in the sum");
        });
        return table.table();
    }

    private static String number(double metres) {
        return String.format(Locale.ROOT, "%.2f", metres);
    }
}
