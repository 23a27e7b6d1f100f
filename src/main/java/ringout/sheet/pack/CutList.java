package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import ringout.graph.Wire;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Row;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.Conductors;

/** The cut list: by size, thickest first, and colour; the longest first, so that what is left of the roll is used. */
final class CutList {
    private static final double METRE = 1000;

    /**
     * One kind of wire.
     *
     * @param area cross-section in mm2; 0 when the size is not known
     * @param size in words
     * @param colour letters
     */
    record Kind(double area, String size, String colour) implements Comparable<Kind> {
        static Kind of(PackSource from, Wire wire) {
            return new Kind(
                    wire.areaMm2().or(0.0),
                    Conductors.size(wire),
                    from.conductors().colour(wire));
        }

        String words() {
            return size + ", " + colour;
        }

        @Override
        public int compareTo(Kind other) {
            return Comparator.comparingDouble((Kind kind) -> -kind.area)
                    .thenComparing(Kind::size)
                    .thenComparing(Kind::colour)
                    .compare(this, other);
        }
    }

    private CutList() {}

    static Document of(PackSource from) {
        Paragraph how = new Paragraph(
                "Conductors to be cut, without leads that come made with a unit. Lengths are cut lengths as"
                        + " listed: what a termination takes must be in them. Strip lengths are those of the contact's maker; the"
                        + " list does not give them. Tick when cut and labelled.");
        return from.flat("cut-list", "Cut list", List.of(new Section("", List.of(how, table(from)))));
    }

    /** Conductors that are made here, by kind, the longest first; without a length at the end. */
    static Map<Kind, List<Wire>> byKind(PackSource from) {
        Map<Kind, List<Wire>> kinds = new TreeMap<>();
        for (Wire wire : from.wiring().wires()) {
            if (!wire.lead().delivered().is(true)) {
                kinds.computeIfAbsent(Kind.of(from, wire), key -> new ArrayList<>())
                        .add(wire);
            }
        }
        kinds.values()
                .forEach(wires -> wires.sort(Comparator.comparingDouble(
                                (Wire wire) -> -wire.lengthMm().or(0.0))
                        .thenComparingInt(Wire::index)));
        return kinds;
    }

    /** The sum of lengths in m, of those that are known. */
    static double metres(List<Wire> wires) {
        return wires.stream().mapToDouble(wire -> wire.lengthMm().or(0.0)).sum() / METRE;
    }

    /** Those without a length. */
    static long unmeasured(List<Wire> wires) {
        return wires.stream().filter(wire -> !wire.lengthMm().isKnown()).count();
    }

    static Table table(PackSource from) {
        Conductors names = from.conductors();
        TableBuilder table = Table.named(
                        "cut-list",
                        Column.tick("cut"),
                        Column.number("length", "mm"),
                        Column.text("conductor"),
                        Column.text("from"),
                        Column.text("ends in"),
                        Column.text("to"),
                        Column.text("ends in "),
                        Column.text("label"))
                .by("wire");
        byKind(from).forEach((kind, wires) -> {
            table.group(kind.words());
            for (Wire wire : wires) {
                table.row(
                        "",
                        Conductors.length(wire),
                        names.name(wire),
                        names.pin(wire.fromPin()),
                        names.termination(wire, wire.fromPin()),
                        names.pin(wire.toPin()),
                        names.termination(wire, wire.toPin()),
                        Conductors.label(wire, wire.fromPin()));
            }
            long open = unmeasured(wires);
            table.row(
                    Row.Kind.SUM,
                    "-",
                    String.format(Locale.ROOT, "%.0f", metres(wires) * METRE),
                    wires.size() + (wires.size() == 1 ? " piece" : " pieces"),
                    open == 0 ? "" : open + " without a length, not in the sum",
                    "",
                    "",
                    "",
                    "");
        });
        return table.table();
    }
}
