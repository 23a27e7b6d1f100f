package ringout.draw.face;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The face of a plug on a lead.
 *
 * @param plug the plug of the unit it goes into, such as {@code FC-C2}
 * @param rows contacts as seen from the wire side, each row from left to right, the upper row first
 * @param sign what its contacts are
 */
public record Face(String plug, List<List<Contact>> rows, ContactSign sign) {
    /** Keeps unmodifiable copies. */
    public Face {
        rows = rows.stream().map(List::copyOf).toList();
    }

    /** {@return the rows as seen from a side: on the mating face left and right change places, above and below do not} */
    public List<List<Contact>> seenFrom(View view) {
        if (view == View.WIRE_SIDE) {
            return rows;
        }
        List<List<Contact>> mirrored = new ArrayList<>();
        for (List<Contact> row : rows) {
            List<Contact> turned = new ArrayList<>(row);
            Collections.reverse(turned);
            mirrored.add(turned);
        }
        return mirrored;
    }

    /** {@return how many contacts the longest row has} */
    int columns() {
        return rows.stream().mapToInt(List::size).max().orElse(0);
    }
}
