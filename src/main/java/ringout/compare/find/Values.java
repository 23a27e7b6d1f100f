package ringout.compare.find;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.model.Datum;
import ringout.model.shape.FieldUnit;
import ringout.model.shape.Scalars;
import ringout.model.shape.Slot;

/**
 * Compares single values. Where a value comes from and when it was taken does not count, only what it says; "?" and empty both
 * say nothing.
 */
final class Values {
    /** Lists whose order says something. */
    private static final Set<String> ORDERED = Set.of("plugOrder", "chain");

    private final Names names;

    Values(Names names) {
        this.names = names;
    }

    /** Whether two values of one field say the same. */
    boolean same(Slot slot, Object here, Object there) {
        if (here == there) {
            return true;
        }
        if (here instanceof Datum<?> a && there instanceof Datum<?> b) {
            return same(a, b);
        }
        if (here instanceof List<?> a && there instanceof List<?> b) {
            return same(slot, a, b);
        }
        return names.same(here.toString(), there.toString());
    }

    private boolean same(Datum<?> here, Datum<?> there) {
        if (here instanceof Datum.Known<?> a && there instanceof Datum.Known<?> b) {
            return a.value() instanceof String text
                    ? names.same(text, b.value().toString())
                    : a.value().equals(b.value());
        }
        return !here.isKnown() && !there.isKnown() && here.isNotApplicable() == there.isNotApplicable();
    }

    private boolean same(Slot slot, List<?> here, List<?> there) {
        if (here.size() != there.size()) {
            return false;
        }
        List<String> a = here.stream().map(item -> names.here(item.toString())).toList();
        List<String> b =
                there.stream().map(item -> names.there(item.toString())).toList();
        return ordered(slot)
                ? a.equals(b)
                : a.stream().sorted().toList().equals(b.stream().sorted().toList());
    }

    /** Whether equal words always name the same thing. */
    boolean plain() {
        return names.plain();
    }

    /** A key as it is compared. */
    String key(String key, boolean here) {
        return here ? names.here(key) : names.there(key);
    }

    static boolean ordered(Slot slot) {
        return ORDERED.contains(slot.name());
    }

    /** A value as a person reads it, with its unit of measure. */
    static String write(Slot slot, Object value) {
        if (value instanceof Datum<?> datum) {
            String absence = datum.isNotApplicable() ? "n/a" : datum instanceof Datum.Unknown ? "?" : "";
            return datum.known().map(known -> scalar(slot, known)).orElse(absence);
        }
        if (value instanceof List<?> list) {
            return list.stream().map(item -> Scalars.write(item)).collect(Collectors.joining(" "));
        }
        return scalar(slot, value);
    }

    private static String scalar(Slot slot, Object value) {
        String symbol = value instanceof Number ? FieldUnit.of(slot.name()).symbol() : "";
        return symbol.isEmpty() ? Scalars.write(value) : Scalars.write(value) + " " + symbol;
    }

    /** The name of a field without its unit of measure and in words: {@code lengthMm} is {@code length}. */
    static String words(String field) {
        if (field.equals("what")) {
            return "description";
        }
        int start = field.length() - 1;
        while (start > 0 && !Character.isUpperCase(field.charAt(start))) {
            start--;
        }
        boolean measured = start > 0 && !FieldUnit.of(field).symbol().isEmpty();
        String plain = measured ? field.substring(0, start) : field;
        StringBuilder words = new StringBuilder();
        for (int i = 0; i < plain.length(); i++) {
            char letter = plain.charAt(i);
            if (Character.isUpperCase(letter)) {
                words.append(' ');
            }
            words.append(Character.toLowerCase(letter));
        }
        return words.toString();
    }
}
