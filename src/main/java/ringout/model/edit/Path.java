package ringout.model.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The way to a field, a record or a list: {@code units[LOG].ports[CAN2].terminator}. A record of a list is named by its
 * key, by {@code #3} for the third, or by {@code W41#2} for the second of that key; a key with unusual letters stands in
 * double quotes.
 *
 * @param steps from the aircraft inwards
 */
public record Path(List<Step> steps) {
    /**
     * One step inwards.
     *
     * @param field name of the field
     * @param pick which record of a list; {@link Pick#NONE} where there is no list or the whole list is meant
     */
    public record Step(String field, Pick pick) {
        @Override
        public String toString() {
            return field + pick;
        }
    }

    /**
     * Which record of a list.
     *
     * @param key key of the record, or empty when only the place counts
     * @param nth 1 for the first (of that key), 0 when not said
     * @param given whether there is a choice at all
     */
    public record Pick(String key, int nth, boolean given) {
        /** No choice. */
        public static final Pick NONE = new Pick("", 0, false);

        @Override
        public String toString() {
            if (!given) {
                return "";
            }
            boolean plain = key.matches("[^\\[\\]#\"\\\\\\p{Cntrl}]*") && key.equals(key.strip());
            String word = plain ? key : '"' + key.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
            return "[" + word + (nth == 0 ? "" : "#" + nth) + "]";
        }
    }

    /** A way of these steps. */
    public Path {
        steps = List.copyOf(steps);
    }

    /** One step further in. */
    public Path then(String field) {
        List<Step> longer = new ArrayList<>(steps);
        longer.add(new Step(field, Pick.NONE));
        return new Path(longer);
    }

    /** The way to a record of the list this way ends at, by its key. */
    public Path at(String key) {
        List<Step> same = new ArrayList<>(steps);
        Step last = same.remove(same.size() - 1);
        same.add(new Step(last.field(), new Pick(key, 0, true)));
        return new Path(same);
    }

    /** The way of one step. */
    public static Path of(String field) {
        return new Path(List.of(new Step(field, Pick.NONE)));
    }

    @Override
    public String toString() {
        return steps.stream().map(Step::toString).collect(Collectors.joining("."));
    }
}
