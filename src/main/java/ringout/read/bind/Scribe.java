package ringout.read.bind;

import java.util.Optional;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.model.shape.Marks;
import ringout.model.shape.Parsed;
import ringout.model.shape.Scalars;
import ringout.model.shape.Slot;
import ringout.model.shape.Sourced;
import ringout.model.shape.Words;
import ringout.text.Problems;
import ringout.text.Span;

/** Turns the text of one field into its value. Places are asked for only when there is something to tell. */
public final class Scribe {
    private final Problems problems;

    /** A scribe that tells what it cannot read. */
    public Scribe(Problems problems) {
        this.problems = problems;
    }

    /** The value of a required or listed scalar; nothing when it cannot be read (the problem is told). */
    public @Nullable Object scalar(Slot slot, String text, Supplier<Span> at) {
        Parsed parsed = Scalars.parse(slot, text);
        if (parsed instanceof Parsed.Good good) {
            return good.value();
        }
        Parsed.Bad bad = (Parsed.Bad) parsed;
        problems.add(at.get(), "`" + slot.name() + "` " + bad.why(), bad.hint());
        return null;
    }

    /** The datum of a field from text: a mark, or a value from the list. */
    public @Nullable Datum<Object> datum(Slot slot, String text, Supplier<Span> at) {
        Optional<Datum<Object>> mark = Marks.of(text);
        if (mark.isPresent()) {
            return mark.get();
        }
        Object value = scalar(slot, text, at);
        return value == null ? null : Datum.of(value);
    }

    /** The same value with its origin and date. */
    public @Nullable Datum<Object> datum(Slot slot, String text, String origin, String date, Supplier<Span> at) {
        Datum<Object> plain = datum(slot, text, at);
        if (!(plain instanceof Datum.Known<Object> known) || (origin.isEmpty() && date.isEmpty())) {
            return plain;
        }
        if (!date.isEmpty() && !Sourced.isDate(date)) {
            problems.add(
                    at.get(), "date of `" + slot.name() + "`: '" + date + "' is not a day", "write it as 2026-03-01");
            return null;
        }
        Parsed word = origin.isEmpty() ? new Parsed.Good(Origin.LIST) : Words.parse(Origin.class, origin);
        if (word instanceof Parsed.Good good) {
            return new Datum.Known<>(known.value(), (Origin) good.value(), date);
        }
        problems.add(at.get(), "origin of `" + slot.name() + "`: " + ((Parsed.Bad) word).why(), "");
        return null;
    }
}
