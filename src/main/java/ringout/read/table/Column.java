package ringout.read.table;

import ringout.model.shape.Slot;
import ringout.text.Characters;
import ringout.text.Span;

/**
 * One column of a table.
 *
 * @param index position, from 0
 * @param head head as the user wrote it
 * @param target what its cells are
 * @param unit unit of measure said by the head, or empty
 */
record Column(int index, String head, Target target, String unit) {
    /** What the cells of a column are. */
    sealed interface Target {
        /**
         * A field of the row.
         *
         * @param slot the field
         */
        record Own(Slot slot) implements Target {
            @Override
            public boolean equals(Object other) {
                return this == other || (other instanceof Own that && slot.equals(that.slot));
            }

            @Override
            public int hashCode() {
                return slot.hashCode();
            }
        }

        /**
         * A field of a record inside the row.
         *
         * @param outer the record
         * @param slot the field
         */
        record Inner(Slot outer, Slot slot) implements Target {}

        /**
         * A field of the settings of a unit's ports, as {@code CAN1=10 CAN2=10} or one bare value.
         *
         * @param list the settings
         * @param slot the field
         */
        record PerPort(Slot list, Slot slot) implements Target {}

        /**
         * A part of an end: unit, plug or pin.
         *
         * @param slot the end
         * @param part 0 unit, 1 plug, 2 pin
         */
        record EndPart(Slot slot, int part) implements Target {
            @Override
            public boolean equals(Object other) {
                return this == other || (other instanceof EndPart that && part == that.part && slot.equals(that.slot));
            }

            @Override
            public int hashCode() {
                return 31 * slot.hashCode() + part;
            }
        }

        /**
         * Says which record the row belongs to.
         *
         * @param level position among the levels of the table
         */
        record Parent(int level) implements Target {
            @Override
            public boolean equals(Object other) {
                return this == other || (other instanceof Parent that && level == that.level);
            }

            @Override
            public int hashCode() {
                return level;
            }
        }
    }

    /** Whether its cells are decimal numbers. */
    boolean isNumber() {
        return (target instanceof Target.Own own && own.slot().type() == Double.class)
                || (target instanceof Target.Inner inner && inner.slot().type() == Double.class);
    }

    /** A cell of this column. */
    Span cell(String file, int row) {
        return Span.row(file, row).cell(index + 1, Characters.shown(head, 40));
    }
}
