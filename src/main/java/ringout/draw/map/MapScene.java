package ringout.draw.map;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.draw.scene.SheetInfo;

/**
 * Motors and control surfaces, ready to be laid out.
 *
 * @param info the title block
 * @param convention where the numbers and turning directions come from, in words
 * @param rotors what turns, in the order of the frame table
 * @param heads heads of the columns of the table of rotors, the first that of the names
 * @param surfaces the control surfaces
 * @param surfaceHeads heads of the columns of their table
 * @param marks badges on rotors and surfaces
 * @param findings the finding list
 * @param notes lines below it
 */
public record MapScene(
        SheetInfo info,
        String convention,
        List<MapRotor> rotors,
        List<String> heads,
        List<SurfaceRow> surfaces,
        List<String> surfaceHeads,
        List<Mark> marks,
        List<FindingLine> findings,
        List<String> notes) {
    /** Which way something turns, seen from above. */
    public enum Turn {
        /** Clockwise. */
        CW,
        /** Counter-clockwise. */
        CCW
    }

    /** Place of a rotor on its arm. */
    public enum Tier {
        /** Alone. */
        SINGLE,
        /** Above another. */
        UPPER,
        /** Below another. */
        LOWER
    }

    /**
     * Where a rotor stands.
     *
     * @param forwardMm forward of the hub
     * @param rightMm right of the hub
     */
    public record Spot(double forwardMm, double rightMm) {}

    /**
     * Something that turns.
     *
     * @param id identifier on the sheet
     * @param name as people call it: {@code M1}
     * @param spot where it stands; nothing when that is not known, and then it has a line in the table only
     * @param bearingDeg bearing from the nose, right positive
     * @param tier upper or lower
     * @param turn which way it is to turn
     * @param cells what the table says of it, the name apart
     */
    public record MapRotor(
            String id,
            String name,
            Optional<Spot> spot,
            OptionalDouble bearingDeg,
            Tier tier,
            Optional<Turn> turn,
            List<String> cells) {
        /** Keeps an unmodifiable copy. */
        public MapRotor {
            cells = List.copyOf(cells);
        }
    }

    /**
     * A control surface.
     *
     * @param id identifier on the sheet
     * @param cells what the table says of it, its name first
     */
    public record SurfaceRow(String id, List<String> cells) {
        /** Keeps an unmodifiable copy. */
        public SurfaceRow {
            cells = List.copyOf(cells);
        }
    }

    /** Keeps unmodifiable copies and refuses a scene that contradicts itself. */
    public MapScene {
        rotors = List.copyOf(rotors);
        heads = List.copyOf(heads);
        surfaces = List.copyOf(surfaces);
        surfaceHeads = List.copyOf(surfaceHeads);
        marks = List.copyOf(marks);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
        Set<String> known = new HashSet<>();
        for (MapRotor rotor : rotors) {
            need(known.add(rotor.id()), "identifier used twice: " + rotor.id());
            need(rotor.cells().size() == heads.size() - 1, "row of " + rotor.id() + " does not fit its heads");
        }
        for (SurfaceRow row : surfaces) {
            need(known.add(row.id()), "identifier used twice: " + row.id());
            need(row.cells().size() == surfaceHeads.size(), "row of " + row.id() + " does not fit its heads");
        }
        marks.forEach(
                mark -> mark.targets().forEach(target -> need(known.contains(target), "mark on unknown " + target)));
    }

    private static void need(boolean kept, String breach) {
        if (!kept) {
            throw new IllegalArgumentException(breach);
        }
    }
}
