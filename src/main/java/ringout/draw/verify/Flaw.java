package ringout.draw.verify;

import ringout.draw.paper.Point;

/**
 * Something wrong with a finished sheet.
 *
 * @param kind what is wrong
 * @param words what exactly, with the identifiers of the sheet
 * @param at where, mm from the upper left corner of the sheet
 */
public record Flaw(Kind kind, String words, Point at) {
    /** What can be wrong. */
    public enum Kind {
        /** The text is no SVG that the verifier understands. */
        UNREADABLE,
        /** A promised wire is not there. */
        WIRE_ABSENT,
        /** A wire is there twice. */
        WIRE_TWICE,
        /** A wire is there that was not promised. */
        WIRE_UNPROMISED,
        /** A wire does not end at its pin. */
        WRONG_END,
        /** Two wires lie on each other. */
        WIRE_ON_WIRE,
        /** Two parallel wires are less than 2 mm apart. */
        TOO_CLOSE,
        /** A wire ends or turns on another. */
        WIRE_TOUCHES,
        /** A wire runs neither level nor plumb. */
        OBLIQUE,
        /** A dot joins more than three lines. */
        FOUR_WAY_DOT,
        /** A wire runs through a unit. */
        WIRE_THROUGH_UNIT,
        /** Two units overlap. */
        UNIT_ON_UNIT,
        /** A promised thing is not there. */
        THING_ABSENT,
        /** A thing is there twice. */
        THING_TWICE,
        /** A thing is there that was not promised. */
        THING_UNPROMISED,
        /** Two discs overlap. */
        DISC_ON_DISC,
        /** Two badges overlap. */
        BADGE_ON_BADGE,
        /** Two texts overlap. */
        TEXT_ON_TEXT,
        /** A text lies on a wire that is not its own, or on its own without a gap. */
        TEXT_ON_WIRE,
        /** A text is crossed by an outline. */
        TEXT_ACROSS_EDGE,
        /** A text lies below other ink. */
        TEXT_COVERED,
        /** Lettering is lower than 2.5 mm, or than 5 mm where it is to be read at arm's length. */
        TEXT_TOO_SMALL,
        /** A text is squeezed or stretched. */
        TEXT_SQUEEZED,
        /** Something lies outside the frame, or the frame outside the sheet. */
        OUTSIDE_FRAME,
        /** Lettering or a line does not stand out from its ground. */
        LOW_CONTRAST
    }
}
