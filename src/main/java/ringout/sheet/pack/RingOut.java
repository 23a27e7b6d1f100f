package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.sheet.Cautions;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.Continuity;
import ringout.sheet.harness.HarnessNet;
import ringout.sheet.harness.HarnessNets;
import ringout.solve.Resistivity;

/**
 * The ring-out sheet: the fewest continuity measurements that prove the bare harness, contacts minus nets, each with the
 * resistance it must show.
 */
final class RingOut {
    /** What a hand-held meter and a good signal contact never exceed: common practice, no source. */
    private static final double ACCEPT_OHM = 0.5;

    private static final double ROOM = 2;
    private static final double READING_MM = 22;
    private static final double INITIALS_MM = 16;
    private static final double TENTH = 10;

    private RingOut() {}

    static Document of(PackSource from) {
        List<HarnessNet> nets = HarnessNets.of(from.wiring());
        int pins = nets.stream().mapToInt(net -> net.pins().size()).sum();
        int lines = nets.stream().mapToInt(net -> net.lines().size()).sum();
        int loops = nets.stream().mapToInt(net -> net.loops().size()).sum();
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Caution(Cautions.OHMS));
        blocks.add(
                new Paragraph("Bare harness, every unit unplugged. " + pins + " contacts in " + nets.size() + " nets: "
                        + lines + " lines prove that all of them are joined as listed, of "
                        + (long) pins * (pins - 1) / 2 + " pairs there are."
                        + " Expected is copper of the listed size and length at 20 degC (IEC 60028) and both mated contacts; leads"
                        + " of the meter zeroed. Write the reading, not OK."));
        blocks.add(new Paragraph(
                "It does not show: a short (next sheet), a power contact that is a few milliohm worse, which"
                        + " takes a four-wire meter or the volts lost under load, a strand that hangs on by one thread, a crimp that"
                        + " will let go. Bend and pull each end gently while the meter is on."));
        blocks.add(table(from, nets));
        if (loops > 0) {
            blocks.add(parallel(from, nets));
        }
        blocks.add(from.signOff());
        return from.upright("ring-out", "Ring-out sheet", Cautions.FOOT_OHMS, List.of(new Section("", blocks)));
    }

    static Table table(PackSource from, List<HarnessNet> nets) {
        TableBuilder table = Table.named(
                "ring-out",
                Column.number("no", ""),
                Column.text("conductor"),
                Column.text("from"),
                Column.text("to"),
                Column.number("expect", "ohm"),
                Column.number("accept", "ohm below"),
                Column.writeIn("reading", "ohm", READING_MM),
                Column.writeIn("initials", "", INITIALS_MM));
        for (HarnessNet net : nets) {
            for (Continuity line : net.lines()) {
                double ohm = ohm(from.wiring(), line);
                boolean told = told(line);
                table.row(
                        Integer.toString(table.size() + 1),
                        String.join(
                                " + ",
                                line.wires().stream()
                                        .map(from.conductors()::name)
                                        .toList()),
                        from.conductors().pin(line.from()),
                        from.conductors().pin(line.to()),
                        told ? String.format(Locale.ROOT, "%.2f", ohm) : "?",
                        String.format(Locale.ROOT, "%.1f", accept(ohm)),
                        "",
                        "");
            }
        }
        return table.table();
    }

    /** Resistance of a line in ohm: its conductors, and at each of their ends the contact or joint. */
    static double ohm(Wiring wiring, Continuity line) {
        double sum = 0;
        for (Wire wire : line.wires()) {
            sum += Resistivity.ohm(wire)
                    + Resistivity.contactOhm(wiring, wire.fromPin())
                    + Resistivity.contactOhm(wiring, wire.toPin());
        }
        return sum;
    }

    private static boolean told(Continuity line) {
        return line.wires().stream().allMatch(Resistivity::isKnown);
    }

    /** Below the usual limit, or twice what is expected where the conductor itself has that much; in tenths, upwards. */
    static double accept(double ohm) {
        return Math.max(ACCEPT_OHM, Math.ceil(ROOM * ohm * TENTH) / TENTH);
    }

    private static Table parallel(PackSource from, List<HarnessNet> nets) {
        TableBuilder table = Table.named(
                        "ring-out-parallel",
                        Column.text("conductor"),
                        Column.text("from"),
                        Column.text("to"),
                        Column.writeIn("reading alone", "ohm", READING_MM),
                        Column.writeIn("initials", "", INITIALS_MM))
                .titled(
                        "Side by side with others: an open one is not seen from the ends. Measure each alone, before the"
                                + " second end is made");
        for (HarnessNet net : nets) {
            for (Wire wire : net.loops()) {
                table.row(
                        from.conductors().name(wire),
                        from.conductors().pin(wire.fromPin()),
                        from.conductors().pin(wire.toPin()),
                        "",
                        "");
            }
        }
        return table.table();
    }
}
