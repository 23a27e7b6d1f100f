package ringout.model.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.model.Datum;

/**
 * One field as the text of one cell, both ways. The marks "?" and "n/a" stand for themselves; an origin stands in
 * brackets behind the value; items of a list are separated by spaces or commas, or, when there is one, by semicolons only.
 */
public final class CellForm {
    private CellForm() {}

    /** Reads a field of scalars, or a list of them; the text is not empty and has no blanks around it. */
    public static Parsed parse(Slot slot, String text) {
        return switch (slot.kind()) {
            case DATUM -> datum(slot, text);
            case SCALARS -> list(slot, text);
            case REQUIRED -> Scalars.parse(slot, text);
            default -> new Parsed.Bad("`" + slot.name() + "` does not fit in one cell", "");
        };
    }

    private static Parsed datum(Slot slot, String text) {
        Optional<Datum<Object>> mark = Marks.of(text);
        if (mark.isPresent()) {
            return new Parsed.Good(mark.get());
        }
        Sourced sourced = Sourced.of(text);
        return Scalars.parse(slot, sourced.text()) instanceof Parsed.Good good
                ? new Parsed.Good(new Datum.Known<>(good.value(), sourced.origin(), sourced.date()))
                : Scalars.parse(slot, sourced.text());
    }

    private static Parsed list(Slot slot, String text) {
        List<Object> values = new ArrayList<>();
        for (String item : items(text, slot.type() == Double.class)) {
            Parsed parsed = Scalars.parse(slot, item);
            if (!(parsed instanceof Parsed.Good good)) {
                return parsed;
            }
            values.add(good.value());
        }
        return new Parsed.Good(List.copyOf(values));
    }

    /** The items of a list in one cell. */
    public static List<String> items(String text, boolean numbers) {
        String separator = text.indexOf(';') >= 0 ? ";" : numbers ? "\\s+" : "[\\s,]+";
        List<String> items = new ArrayList<>();
        for (String item : text.split(separator)) {
            if (!item.isBlank()) {
                items.add(item.strip());
            }
        }
        return items;
    }

    /** The text of a field; nothing when no cell would be read back as the same value. Empty for what is not given. */
    public static Optional<String> write(Slot slot, Object value) {
        if (value instanceof Datum.NotAsked || (value instanceof List<?> none && none.isEmpty())) {
            return Optional.of("");
        }
        String text = text(value);
        return text.equals(text.strip())
                        && !text.isEmpty()
                        && parse(slot, text) instanceof Parsed.Good good
                        && good.value().equals(value)
                ? Optional.of(text)
                : Optional.empty();
    }

    private static String text(Object value) {
        if (value instanceof Datum.Known<?> known) {
            return Scalars.write(known.value()) + Sourced.suffix(known);
        }
        if (value instanceof Datum<?> datum) {
            return Marks.write(datum);
        }
        if (value instanceof List<?> list) {
            List<String> items = list.stream().map(Scalars::write).toList();
            boolean simple = items.stream().noneMatch(item -> item.matches("(?s).*[\\s,;].*"));
            return simple
                    ? String.join(" ", items)
                    : items.stream().map(i -> i + ";").collect(Collectors.joining(" "));
        }
        return Scalars.write(value);
    }
}
