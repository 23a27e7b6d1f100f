package ringout.seeded;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import ringout.model.Awg;
import ringout.model.Datum;
import ringout.model.PinMap;

/** Values a datum could have instead, far from the true one: what a check that reads it must see. */
final class Absurd {
    private static final double FAR = 1000;

    private Absurd() {}

    static List<Datum<?>> of(Object value) {
        List<Object> others = new ArrayList<>();
        if (value instanceof Double number) {
            others.add(number == 0 ? FAR : number * FAR);
            others.add(number / FAR);
        } else if (value instanceof Integer number) {
            others.add(number == 0 ? (int) FAR : number * (int) FAR);
            others.add(Math.max(1, number / (int) FAR));
        } else if (value instanceof Boolean flag) {
            others.add(!flag);
        } else if (value instanceof Awg size) {
            others.add(new Awg(size.gauge() < 20 ? 36 : 0));
        } else if (value instanceof PinMap map) {
            others.add(turned(map));
        } else if (value instanceof Enum<?> word) {
            List<?> words = Arrays.asList(word.getDeclaringClass().getEnumConstants());
            int at = words.indexOf(word);
            others.add(words.get((at + 1) % words.size()));
            others.add(words.get((at + words.size() / 2) % words.size()));
        } else {
            others.add(value + "X");
        }
        return others.stream()
                .filter(other -> !other.equals(value))
                .distinct()
                .<Datum<?>>map(Datum::of)
                .toList();
    }

    /** Every conductor goes to the far pin of the next. */
    private static PinMap turned(PinMap map) {
        List<PinMap.Pair> pairs = new ArrayList<>();
        for (int i = 0; i < map.pairs().size(); i++) {
            String to = map.pairs().get((i + 1) % map.pairs().size()).to();
            pairs.add(new PinMap.Pair(map.pairs().get(i).from(), to));
        }
        return new PinMap(List.copyOf(pairs));
    }
}
