package ringout.draw.form;

import java.util.List;
import ringout.draw.letter.Lettering;

/**
 * What stands on a wire from its end outwards: a sleeve of its colour, its label, its fuse, its badges, and the flag of an end on
 * another sheet. No wire turns inside a lane, so nothing in it can be crossed.
 *
 * @param colour colour letters of the sleeve; empty for none
 * @param label the text in the gap of the line; empty for none
 * @param labelWidth mm
 * @param labelRoom mm, at least the width; equal for all wires of a plug, so that what follows stands in line
 * @param fuse whether a fuse stands behind the label
 * @param badges from the end outwards
 * @param flag the text of the flag; empty for none
 * @param flagWidth mm over all, 0 for none
 */
public record Lane(
        String colour,
        String label,
        double labelWidth,
        double labelRoom,
        boolean fuse,
        List<BadgeForm> badges,
        String flag,
        double flagWidth) {
    /** Length of the sleeve along the wire, mm. */
    public static final double SLEEVE = 3.4;

    /** Length of a fuse along the wire, mm. */
    public static final double FUSE = 5.4;

    private static final double LEAD_IN = 1.1;
    private static final double GAP = 0.9;
    private static final double AFTER_LABEL = 1.3;
    private static final double FLAG_TAIL = 2.5;
    private static final double BARE = 2.5;

    /** Keeps an unmodifiable copy of the badges. */
    public Lane {
        badges = List.copyOf(badges);
    }

    /** {@return whether the line needs more height: it has badges, or letters that rise above capitals} */
    boolean tall() {
        return !badges.isEmpty() || Lettering.riseOf(label, Lettering.SMALL) > 0;
    }

    /** {@return the same with more room for the label} */
    Lane withRoom(double room) {
        return label.isEmpty() ? this : new Lane(colour, label, labelWidth, room, fuse, badges, flag, flagWidth);
    }

    /** {@return from the end to the sleeve, mm} */
    public double sleeveStart() {
        return LEAD_IN;
    }

    /** {@return from the end to the label, mm} */
    public double labelStart() {
        return colour.isEmpty() ? LEAD_IN + GAP : LEAD_IN + SLEEVE + GAP;
    }

    /** {@return from the end to the fuse, mm} */
    public double fuseStart() {
        return labelStart() + labelRoom + AFTER_LABEL;
    }

    /** {@return from the end to a badge, mm} */
    public double badgeStart(int badge) {
        double start = label.isEmpty() ? LEAD_IN : labelStart() + labelRoom + AFTER_LABEL + (fuse ? FUSE + GAP : 0);
        for (int i = 0; i < badge; i++) {
            start += badges.get(i).width() + BadgeForm.GAP;
        }
        return start;
    }

    /** {@return from the end to the tip of the flag, mm} */
    public double flagStart() {
        return badgeStart(badges.size()) + FLAG_TAIL;
    }

    /** {@return from the end to where the wire may turn, mm} */
    public double width() {
        if (flagWidth > 0) {
            return flagStart() + flagWidth;
        }
        return Math.max(BARE, badgeStart(badges.size()));
    }
}
