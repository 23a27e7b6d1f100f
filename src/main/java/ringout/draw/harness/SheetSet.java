package ringout.draw.harness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import ringout.draw.card.CardSheet;
import ringout.draw.ink.StyledSheet;
import ringout.draw.scene.Earlier;
import ringout.draw.scene.Spot;
import ringout.draw.style.Drawn;
import ringout.draw.wiring.WiringDrawing;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.graph.bus.Buses;
import ringout.graph.power.PowerGraph;

/**
 * All sheets of an aircraft in one state, numbered through: the wiring sheets, the bus diagrams, the power tree and the
 * return diagram. A sheet has the same
 * number whether the whole set is printed or a part of it.
 */
public final class SheetSet {
    /** Kinds of sheets. */
    public enum Kind {
        /** Units by zone, one line a lead. */
        BLOCK,
        /** Pin-to-pin wiring diagram. */
        WIRING,
        /** Bus diagram to scale of length. */
        BUS,
        /** Power tree. */
        POWER,
        /** Return diagram. */
        RETURN,
        /** Places and routes to scale. */
        PLACE,
        /** Map of motors and control surfaces. */
        MAP,
        /** What is lost with each plug, lead and part. */
        LOSS,
        /** What comes of plugs in wrong sockets. */
        MISPLUG,
        /** Drawings of made-up leads. */
        LEAD,
        /** Faces of plugs. */
        FACE,
        /** One finding, its neighbourhood and its arithmetic. */
        FINDING
    }

    /**
     * A sheet of the set.
     *
     * @param kind what it shows
     * @param name for a file, without an ending
     * @param sheet ready to be written
     * @param spots where things stand on it, of a kind whose places can be held; else none
     */
    public record Numbered(Kind kind, String name, StyledSheet sheet, List<Spot> spots) {
        /** Keeps an unmodifiable copy. */
        public Numbered {
            spots = List.copyOf(spots);
        }
    }

    /** A sheet whose number is not known yet. */
    private record Pending(Kind kind, String name, Numbering sheet, List<Spot> spots) {
        Pending(Kind kind, String name, Numbering sheet) {
            this(kind, name, sheet, List.of());
        }
    }

    /** Draws a sheet as number n of m. */
    private interface Numbering {
        StyledSheet numbered(int sheet, int sheets);
    }

    private SheetSet() {}

    /**
     * The whole set.
     *
     * @param report findings to mark
     * @param hash of the data, printed on every sheet
     */
    public static List<Numbered> of(Circuit circuit, Report report, String hash) {
        return of(circuit, report, hash, Earlier.NONE);
    }

    /** The whole set, its wiring sheets held against an earlier output. */
    public static List<Numbered> of(Circuit circuit, Report report, String hash, Earlier earlier) {
        List<Pending> set = new ArrayList<>();
        List<WiringDrawing.Fits> wiring = inParts(WiringSheets.of(circuit, report, hash, earlier));
        for (int i = 0; i < wiring.size(); i++) {
            String name = String.format(Locale.ROOT, "wiring-%02d", i + 1);
            WiringDrawing.Fits fits = wiring.get(i);
            set.add(new Pending(
                    Kind.WIRING,
                    name,
                    (n, m) -> fits.numbered(n, m).sheet(),
                    fits.routed().placed().spots()));
        }
        BusSheets.of(circuit, report, hash)
                .forEach(bus -> set.add(new Pending(
                        Kind.BUS,
                        bus.name(),
                        (n, m) -> bus.drawing().numbered(n, m).sheet())));
        TreeSheets.power(circuit, report, hash)
                .ifPresent(tree -> set.add(new Pending(
                        Kind.POWER, "power", (n, m) -> tree.numbered(n, m).sheet())));
        TreeSheets.returns(circuit, report, hash)
                .ifPresent(tree -> set.add(new Pending(
                        Kind.RETURN, "return", (n, m) -> tree.numbered(n, m).sheet())));
        SurveySheets.block(circuit, report, hash)
                .ifPresent(block -> set.add(0, new Pending(Kind.BLOCK, "block", block::numbered)));
        SurveySheets.place(circuit, report, hash)
                .ifPresent(plan -> set.add(new Pending(Kind.PLACE, "place", plan::numbered)));
        SurveySheets.map(circuit, report, hash).ifPresent(map -> set.add(new Pending(Kind.MAP, "map", map::numbered)));
        add(set, Kind.LOSS, "loss", SurveySheets.loss(circuit, report, hash));
        add(set, Kind.MISPLUG, "misplug", SurveySheets.misplug(circuit, report, hash));
        addCards(set, Kind.LEAD, LeadSheets.of(circuit, report, hash));
        addCards(set, Kind.FACE, FaceSheets.of(circuit, report, hash));
        FindingSheets.of(circuit, report, hash)
                .forEach(one -> set.add(new Pending(
                        Kind.FINDING,
                        String.format(Locale.ROOT, "finding-%02d", one.number()),
                        (n, m) -> one.drawing().numbered(n, m).sheet())));
        return numbered(set);
    }

    private static void add(List<Pending> set, Kind kind, String name, List<Drawn> sheets) {
        for (int i = 0; i < sheets.size(); i++) {
            String one = sheets.size() == 1 ? name : String.format(Locale.ROOT, "%s-%02d", name, i + 1);
            set.add(new Pending(kind, one, sheets.get(i)::numbered));
        }
    }

    private static void addCards(List<Pending> set, Kind kind, List<CardSheet> sheets) {
        for (int i = 0; i < sheets.size(); i++) {
            CardSheet sheet = sheets.get(i);
            String name = String.format(Locale.ROOT, "%s-%02d", kind.name().toLowerCase(Locale.ROOT), i + 1);
            set.add(new Pending(kind, name, (n, m) -> sheet.numbered(n, m).sheet()));
        }
    }

    private static List<Numbered> numbered(List<Pending> set) {
        List<Numbered> sheets = new ArrayList<>();
        for (Pending one : set) {
            int number = sheets.size() + 1;
            sheets.add(new Numbered(one.kind(), one.name(), one.sheet().numbered(number, set.size()), one.spots()));
        }
        return sheets;
    }

    /** Where things stand on the wiring sheets of a set, to be held by a later one. */
    public static Earlier layout(List<Numbered> sheets) {
        return new Earlier(sheets.stream()
                .filter(sheet -> sheet.kind() == Kind.WIRING)
                .map(sheet -> new Earlier.Sheet(
                        sheet.name(),
                        sheet.sheet().promised().stream()
                                .map(StyledSheet.Promise::wire)
                                .toList(),
                        sheet.spots()))
                .toList());
    }

    /** What the set lacks, in words: a bus or a tree that no sheet holds, or of which nothing can be computed. */
    public static List<String> missing(Circuit circuit, List<Numbered> sheets) {
        List<String> missing = new ArrayList<>();
        long wired = Buses.of(circuit).segments().stream()
                .filter(segment -> !segment.links().isEmpty())
                .count();
        long drawn = count(sheets, Kind.BUS);
        if (drawn < wired) {
            missing.add((wired - drawn) + " of " + wired + " bus diagrams: larger than the largest sheet");
        }
        for (Kind kind : List.of(Kind.BLOCK, Kind.PLACE)) {
            if (count(sheets, kind) == 0) {
                missing.add((kind == Kind.BLOCK ? "block diagram" : "location and route plan")
                        + ": larger than the largest sheet");
            }
        }
        if (!PowerGraph.of(circuit).loads().isEmpty()) {
            String why =
                    ": nothing flows that could be computed, supplies feed each other, or it is larger than the largest sheet";
            if (count(sheets, Kind.POWER) == 0) {
                missing.add("power tree" + why);
            }
            if (count(sheets, Kind.RETURN) == 0) {
                missing.add("return diagram" + why);
            }
        }
        return missing;
    }

    private static long count(List<Numbered> sheets, Kind kind) {
        return sheets.stream().filter(sheet -> sheet.kind() == kind).count();
    }

    /** Sheets of one system are told apart in their titles. */
    private static List<WiringDrawing.Fits> inParts(List<WiringDrawing.Fits> sheets) {
        List<String> titles = sheets.stream().map(WiringDrawing.Fits::title).toList();
        List<WiringDrawing.Fits> told = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            String title = titles.get(i);
            int parts = Collections.frequency(titles, title);
            int part = Collections.frequency(titles.subList(0, i + 1), title);
            told.add(parts == 1 ? sheets.get(i) : sheets.get(i).entitled(title + ", part " + part + " of " + parts));
        }
        return told;
    }
}
