package ringout.draw.scene;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Where things stood on the wiring sheets of an earlier output, so that a later one can keep to it and paper on the wall
 * still matches.
 *
 * @param sheets in their order
 */
public record Earlier(List<Sheet> sheets) {
    /**
     * One sheet.
     *
     * @param name of its file
     * @param wires identifiers of its conductors
     * @param spots where its boxes and splices stood
     */
    public record Sheet(String name, List<String> wires, List<Spot> spots) {
        /** Keeps unmodifiable copies. */
        public Sheet {
            wires = List.copyOf(wires);
            spots = List.copyOf(spots);
        }
    }

    /** No earlier output. */
    public static final Earlier NONE = new Earlier(List.of());

    /** Keeps an unmodifiable copy. */
    public Earlier {
        sheets = List.copyOf(sheets);
    }

    /** {@return number of the sheet that has most of some conductors, from 0; -1 when none has any} */
    public int sheetWith(Collection<String> wires) {
        int best = -1;
        int most = 0;
        for (int i = 0; i < sheets.size(); i++) {
            Set<String> shared = new HashSet<>(wires);
            shared.retainAll(new HashSet<>(sheets.get(i).wires()));
            if (shared.size() > most) {
                most = shared.size();
                best = i;
            }
        }
        return best;
    }

    /** {@return the places of some things on the sheet that has most of some conductors} */
    public List<Spot> spots(Collection<String> wires, Set<String> things) {
        int sheet = sheetWith(wires);
        List<Spot> kept = new ArrayList<>();
        if (sheet >= 0) {
            sheets.get(sheet).spots().stream()
                    .filter(spot -> things.contains(spot.id()))
                    .forEach(kept::add);
        }
        return kept;
    }
}
