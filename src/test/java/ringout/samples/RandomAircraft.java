package ringout.samples;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import ringout.model.Aircraft;
import ringout.model.Awg;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.Origin;
import ringout.model.PinMap;
import ringout.model.shape.Identity;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Span;

/** Aircraft full of odd values, made from the shapes alone: every field of every record has its turn. */
public final class RandomAircraft {
    private static final List<String> ODD = List.of(
            "left wing",
            "a,b",
            "a;b",
            "a; b;",
            ",first",
            "#first",
            "\"",
            "''",
            "ditto",
            "do.",
            "ESC1..6",
            "x1..x3",
            "a=b",
            "=1+1",
            "620 (measured)",
            "x (label 2026-03-01)",
            "(measured)",
            "say \"so\"",
            "\"quoted\"",
            "line\nbreak",
            "line\r\nbreak",
            "tab\tin",
            " blank ",
            "\u00a0nb\u00a0",
            "\u00fcm\u00efd",
            "\u65e5\u672c",
            "\ud83d\ude80",
            "n/a.",
            "-",
            "- -",
            "0",
            "1,250",
            "1.250",
            "0x62",
            "?!",
            "sep=;",
            "|",
            "'",
            "back\\slash",
            "</svg>",
            "null",
            "true",
            "W#1",
            "[x]",
            "a..b",
            "\u2026",
            "\u3003",
            "CAN1=10 CAN2=10",
            "26 mm",
            "awg");

    private final Random random;
    private final int size;

    private RandomAircraft(long seed, int size) {
        this.random = new Random(seed);
        this.size = size;
    }

    /** An aircraft of a seed; lists have up to the given number of records. */
    public static Aircraft of(long seed, int size) {
        return new RandomAircraft(seed, size).record(Shape.of(Aircraft.class), 0);
    }

    private <R> R record(Shape<R> shape, int depth) {
        Object[] values = new Object[shape.slots().size()];
        double full = random.nextDouble();
        for (Slot slot : shape.slots()) {
            boolean given = slot.kind() == Slot.Kind.REQUIRED || random.nextDouble() < full;
            values[slot.index()] = given ? value(shape, slot, depth) : Shape.absent(slot);
        }
        return shape.make(values);
    }

    private Object value(Shape<?> shape, Slot slot, int depth) {
        return switch (slot.kind()) {
            case SPAN -> Span.NONE;
            case REQUIRED -> required(shape, slot);
            case DATUM -> datum(slot);
            case SCALARS -> slot.name().equals("library") ? List.of() : scalars(slot);
            case RECORD -> record(Shape.of(slot.type()), depth + 1);
            case RECORDS -> records(Shape.of(slot.type()), depth + 1);
        };
    }

    private Object required(Shape<?> shape, Slot slot) {
        boolean empty = shape.isKey(slot) && Identity.mayBeEmpty(shape) && random.nextInt(4) == 0;
        if (empty) {
            return "";
        }
        return scalar(slot.type());
    }

    private Object datum(Slot slot) {
        return switch (random.nextInt(10)) {
            case 0 -> Datum.unknown();
            case 1 -> Datum.notApplicable();
            case 2 -> Datum.notAsked();
            case 3 -> new Datum.Known<>(scalar(slot.type()), pick(Origin.values()), "");
            case 4 ->
                new Datum.Known<>(
                        scalar(slot.type()), pick(Origin.values()), "2026-0" + (1 + random.nextInt(9)) + "-11");
            default -> Datum.of(scalar(slot.type()));
        };
    }

    private List<Object> scalars(Slot slot) {
        List<Object> list = new ArrayList<>();
        for (int i = random.nextInt(4); i > 0; i--) {
            list.add(random.nextInt(20) == 0 && slot.type() == String.class ? "" : scalar(slot.type()));
        }
        return List.copyOf(list);
    }

    private List<Object> records(Shape<?> shape, int depth) {
        List<Object> list = new ArrayList<>();
        Set<String> keys = new HashSet<>();
        int most = depth > 1 ? 1 + size / 2 : size;
        for (int i = random.nextInt(most + 1); i > 0; i--) {
            Object record = record(shape, depth);
            if (!Identity.unique(shape) || keys.add(Identity.fold(shape, Identity.key(shape, record)))) {
                list.add(record);
            }
        }
        return List.copyOf(list);
    }

    private Object scalar(Class<?> type) {
        if (type == String.class) {
            return text();
        }
        if (type == End.class) {
            return new End(text());
        }
        if (type == Double.class) {
            return number();
        }
        if (type == Integer.class) {
            return random.nextInt(3) == 0 ? random.nextInt() : random.nextInt(64);
        }
        if (type == Boolean.class) {
            return random.nextBoolean();
        }
        if (type == Awg.class) {
            return new Awg(random.nextInt(63) - 3);
        }
        return type == PinMap.class ? pinMap() : pick(type.getEnumConstants());
    }

    private double number() {
        return switch (random.nextInt(6)) {
            case 0 -> random.nextInt(2000);
            case 1 -> random.nextInt(20000) / 1000.0;
            case 2 -> -random.nextDouble() * 100;
            case 3 -> random.nextDouble() * 1e-12;
            case 4 -> random.nextDouble() * 1e300;
            default -> 0.1 + 0.2;
        };
    }

    private PinMap pinMap() {
        List<PinMap.Pair> pairs = new ArrayList<>();
        for (int i = 1 + random.nextInt(4); i > 0; i--) {
            pairs.add(new PinMap.Pair(pin(), pin()));
        }
        return new PinMap(List.copyOf(pairs));
    }

    private String pin() {
        return pick(new String[] {"1", "2", "H", "L", "TX", "B+", "BAT-", "-", "A1", "0V", "n\u00b01"});
    }

    private String text() {
        return switch (random.nextInt(4)) {
            case 0 -> ODD.get(random.nextInt(ODD.size()));
            case 1 -> ODD.get(random.nextInt(ODD.size())) + random.nextInt(100);
            default -> "N" + random.nextInt(200) + (random.nextInt(8) == 0 ? " " + random.nextInt(9) : "");
        };
    }

    private <T> T pick(T[] choices) {
        return choices[random.nextInt(choices.length)];
    }
}
