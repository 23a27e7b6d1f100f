package ringout.model.seal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import ringout.model.Aircraft;
import ringout.model.Awg;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.model.PinMap;
import ringout.model.Word;
import ringout.model.shape.Given;
import ringout.model.shape.Identity;
import ringout.model.shape.Marks;
import ringout.model.shape.Scalars;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;

/**
 * One text for one meaning: the aircraft as JSON by the rules of RFC 8785 (names sorted, no blanks, numbers and strings in
 * their one form). Only what is given is written. Records of a list are sorted by their key and then by their text, items
 * of a list by their text, pairs of a pin map by the pin; but for the lists whose order says something. Where the types of
 * the library lie is left out: the types themselves are in.
 */
public final class Canonical {
    /** Lists whose order is part of what they say. */
    private static final Set<String> IN_ORDER =
            Set.of("Aircraft.states", "AircraftFunction.chain", "Airframe.plugOrder", "Lead.route", "AsBuilt.steps");

    private static final Set<String> NEVER = Set.of("Aircraft.library");

    private static final Set<String> WRITTEN_AFTERWARDS =
            Set.of("Aircraft.library", "Aircraft.waivers", "Unit.asRead", "Step.done", "Step.by");

    /** Of the record, what belongs to the plan. */
    private static final Set<String> PLAN = Set.of("steps", "tests");

    private final boolean all;

    private Canonical(boolean all) {
        this.all = all;
    }

    /** Everything that is given. */
    public static String all(Aircraft aircraft) {
        return new Canonical(true).record(Shape.of(Aircraft.class), aircraft);
    }

    /** The list and the plan only; see {@link Seal#ofList}. */
    public static String list(Aircraft aircraft) {
        return new Canonical(false).record(Shape.of(Aircraft.class), aircraft);
    }

    private String record(Shape<?> shape, Object record) {
        Map<String, String> fields = new TreeMap<>();
        for (Slot slot : shape.slots()) {
            Object value = slot.get(record);
            if (Given.is(slot, value) && !isLeftOut(shape, slot)) {
                String text = field(shape, slot, value);
                if (!text.equals("{}") && !text.equals("[]")) {
                    fields.put(slot.name(), text);
                }
            }
        }
        StringBuilder json = new StringBuilder("{");
        fields.forEach((name, text) -> json.append(json.length() > 1 ? "," : "")
                .append(JsonForm.string(name))
                .append(':')
                .append(text));
        return json.append('}').toString();
    }

    private boolean isLeftOut(Shape<?> shape, Slot slot) {
        String name = name(shape, slot);
        if (all) {
            return NEVER.contains(name);
        }
        return WRITTEN_AFTERWARDS.contains(name) || (name.startsWith("AsBuilt.") && !PLAN.contains(slot.name()));
    }

    private static String name(Shape<?> shape, Slot slot) {
        return shape.type().getSimpleName() + "." + slot.name();
    }

    private String field(Shape<?> shape, Slot slot, Object value) {
        boolean sorted = !IN_ORDER.contains(name(shape, slot));
        return switch (slot.kind()) {
            case RECORD -> record(Shape.of(slot.type()), value);
            case RECORDS -> records(Shape.of(slot.type()), (List<?>) value, sorted);
            case SCALARS -> {
                List<String> items = new ArrayList<>();
                ((List<?>) value).forEach(item -> items.add(scalar(item)));
                yield list(items, sorted);
            }
            case DATUM -> datum((Datum<?>) value);
            default -> scalar(value);
        };
    }

    private String records(Shape<?> shape, List<?> records, boolean sorted) {
        List<?> inOrder = records;
        if (sorted) {
            Comparator<Object> byKey =
                    Comparator.comparing(record -> Identity.fold(shape, Identity.key(shape, record)));
            inOrder = records.stream()
                    .sorted(byKey.thenComparing(record -> record(shape, record)))
                    .toList();
        }
        return list(inOrder.stream().map(record -> record(shape, record)).toList(), false);
    }

    private static String list(List<String> items, boolean sorted) {
        List<String> inOrder = sorted ? items.stream().sorted().toList() : items;
        return "[" + String.join(",", inOrder) + "]";
    }

    private static String datum(Datum<?> datum) {
        if (!(datum instanceof Datum.Known<?> known)) {
            return JsonForm.string(Marks.write(datum));
        }
        String value = scalar(known.value());
        if (known.origin() == Origin.LIST && known.date().isEmpty()) {
            return value;
        }
        String date = known.date().isEmpty() ? "" : "\"date\":" + JsonForm.string(known.date()) + ",";
        String origin = known.origin() == Origin.LIST
                ? ""
                : "\"origin\":" + JsonForm.string(known.origin().word()) + ",";
        return "{" + date + origin + "\"value\":" + value + "}";
    }

    private static String scalar(Object value) {
        if (value instanceof Boolean || value instanceof Integer) {
            return value.toString();
        }
        if (value instanceof Double number) {
            return JsonForm.number(number);
        }
        if (value instanceof Awg awg && awg.gauge() > 0) {
            return Integer.toString(awg.gauge());
        }
        if (value instanceof PinMap map) {
            return JsonForm.string(new PinMap(map.pairs().stream()
                            .sorted(Comparator.comparing(PinMap.Pair::from).thenComparing(PinMap.Pair::to))
                            .toList())
                    .toString());
        }
        return JsonForm.string(value instanceof Word word ? word.word() : Scalars.write(value));
    }
}
