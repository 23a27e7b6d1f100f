package ringout.read.table;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ringout.model.Awg;
import ringout.model.LeadKind;
import ringout.model.shape.CellForm;
import ringout.model.shape.Parsed;
import ringout.model.shape.Scalars;
import ringout.model.shape.Slot;
import ringout.model.shape.Sourced;
import ringout.text.Problems;
import ringout.text.Ranges;
import ringout.text.Span;

/** The value of a cell for a field: units of measure from the head, the table's decimal mark, ranges in lists. */
final class Cells {
    /** Heads under which some write the kind of lead and others the signal of a wire. */
    private static final Set<String> SIGNAL = Set.of("signal", "function", "funktion", "fonction", "signalname");

    private final Problems problems;
    private final DecimalStyle style;
    private final Map<Slot, Map<String, Object>> seen = new HashMap<>();

    Cells(Problems problems, DecimalStyle style) {
        this.problems = problems;
        this.style = style;
    }

    /** The value, or null when it cannot be read; that is told. */
    @Nullable
    Object value(Slot slot, String text, String unit, Span at) {
        if (slot.type() == String.class && slot.kind() != Slot.Kind.SCALARS) {
            return parse(slot, text, at);
        }
        Map<String, Object> known = seen.computeIfAbsent(slot, s -> new HashMap<>());
        Object value = known.get(text);
        if (value == null) {
            value = slot.type() == Double.class ? number(slot, text, unit, at) : parse(slot, lists(slot, text), at);
            if (value != null) {
                known.put(text, value);
            }
        }
        return value;
    }

    private @Nullable Object number(Slot slot, String text, String unit, Span at) {
        if (slot.kind() == Slot.Kind.SCALARS) {
            return parse(slot, text, at);
        }
        if (style.doubtful(text)) {
            problems.add(
                    at,
                    "'" + text + "' can be read in two ways",
                    DecimalStyle.question(Sourced.of(text).text()));
            return null;
        }
        return parse(slot, measured(style.plain(text), unit), at);
    }

    /** Puts the unit of the head behind a bare number. */
    private static String measured(String text, String unit) {
        String number = Sourced.of(text).text();
        return unit.isEmpty() || !Scalars.isBareNumber(number)
                ? text
                : number + " " + unit + text.substring(number.length());
    }

    private static String lists(Slot slot, String text) {
        return slot.kind() == Slot.Kind.SCALARS && text.contains("..")
                ? String.join("; ", Ranges.items(CellForm.items(text, false))) + ";"
                : text;
    }

    private @Nullable Object parse(Slot slot, String text, Span at) {
        Parsed parsed = CellForm.parse(slot, text);
        if (parsed instanceof Parsed.Good good) {
            return good.value();
        }
        Parsed.Bad bad = (Parsed.Bad) parsed;
        problems.add(at, bad.why(), bad.hint());
        return null;
    }

    /** The field a cell is meant for, by what it says: a wire size under another head, a signal under the head of the kind. */
    static Slot meant(Column column, Slot slot, String text, List<Slot> siblings) {
        if (slot.name().equals("signal")) {
            return sibling(siblings, "kind").filter(kind -> isKind(kind, text)).orElse(slot);
        }
        boolean signal = slot.type() == LeadKind.class
                && SIGNAL.contains(Synonyms.fold(column.head()))
                && CellForm.parse(slot, text) instanceof Parsed.Bad;
        return signal ? sibling(siblings, "signal").orElse(slot) : bySize(slot, text, siblings);
    }

    /** Whether a text is a word for a kind of lead. */
    static boolean isKind(Slot kind, String text) {
        return kind.type() == LeadKind.class && Scalars.parse(kind, text) instanceof Parsed.Good;
    }

    /** The field a wire size is meant for: a column of gauges may hold cross-sections, and the other way round. */
    private static Slot bySize(Slot slot, String text, List<Slot> siblings) {
        String lower = text.toLowerCase(java.util.Locale.ROOT);
        boolean area = lower.contains("mm");
        boolean gauge = lower.contains("awg");
        if (slot.type() == Awg.class && area) {
            return sibling(siblings, "areaMm2").orElse(slot);
        }
        return slot.name().equals("areaMm2") && gauge ? sibling(siblings, "awg").orElse(slot) : slot;
    }

    private static Optional<Slot> sibling(List<Slot> siblings, String name) {
        return siblings.stream().filter(slot -> slot.name().equals(name)).findFirst();
    }
}
