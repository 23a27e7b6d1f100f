package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.graph.Part;
import ringout.graph.power.Consumer;
import ringout.graph.power.Load;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.Volts;
import ringout.graph.returns.ReturnGraph;
import ringout.model.PartKind;

/** What every unit has to return, and to which 0V: its own loads and the inputs of its regulators, unit by unit. */
final class Returns {
    /**
     * What a unit returns from one of its 0V points to one source.
     *
     * @param unit number of the unit
     * @param zero vertex of its 0V
     * @param home vertex of the 0V of the source, minus of the lowest pack
     * @param averageA average current in A, as far as it is known
     * @param peakA peak current in A, as far as it is known
     * @param known whether the average is known
     * @param words where it comes from: {@code 270.3 W at 44.4 V}; empty for a plain current
     */
    record Need(int unit, int zero, int home, double averageA, double peakA, boolean known, String words) {
        Need plus(Need more) {
            String both = words.isEmpty() || more.words.isEmpty() ? words + more.words : words + " and " + more.words;
            return new Need(unit, zero, home, averageA + more.averageA, peakA + more.peakA, known && more.known, both);
        }
    }

    private record Key(int unit, int zero, int home) {
        @Override
        public boolean equals(Object other) {
            return this == other
                    || (other instanceof Key that && unit == that.unit && zero == that.zero && home == that.home);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * unit + zero) + home;
        }
    }

    private final PowerGraph power;
    private final ReturnGraph returns;
    private final Map<Key, Need> needs = new LinkedHashMap<>();

    private Returns(Situation at) {
        power = PowerGraph.of(at.circuit());
        returns = ReturnGraph.of(at.circuit());
        for (Consumer consumer : power.consumers()) {
            boolean takes = !consumer.loads().isEmpty() || consumer.draws();
            if (takes && consumer.zero() >= 0 && at.circuit().aboard(consumer.unit()) && power.fed(consumer.plus())) {
                loads(consumer);
            }
        }
        for (PowerSource source : power.sources()) {
            if (power.works(source) && source.kind() == PowerSource.Kind.REGULATOR && source.minus() >= 0) {
                input(at, source);
            }
        }
    }

    /** The needs of all units aboard, in the order of the units' consumers, then of the regulators. */
    static List<Need> of(Situation at) {
        return new ArrayList<>(new Returns(at).needs.values());
    }

    /** The 0V points that what feeds a supply point returns to. */
    static Set<Integer> homes(PowerGraph power, int plus) {
        Set<Integer> homes = new LinkedHashSet<>();
        for (PowerSource source : power.feeding(plus)) {
            int home = power.bottom(source).minus();
            if (home >= 0) {
                homes.add(home);
            }
        }
        return homes;
    }

    private void loads(Consumer consumer) {
        var volts = power.between(consumer.plus(), consumer.zero())
                .map(Volts::nominal)
                .orElse(OptionalDouble.empty());
        double average = 0;
        double peak = 0;
        boolean known = !consumer.loads().isEmpty();
        String words = "";
        for (Load load : consumer.loads()) {
            known &= load.average(volts).isPresent();
            average += load.average(volts).orElse(0);
            peak += load.peak(volts).orElse(0);
            words = LoadWords.of(load, volts);
        }
        share(consumer.unit(), consumer.zero(), consumer.plus(), average, peak, known, words);
    }

    private void input(Situation at, PowerSource source) {
        var part = at.wiring().parts().get(source.part());
        var amps = power.demand().inputA(part);
        double peak = power.demand().peakInputA(part).orElse(0);
        String words = words(source, part);
        share(source.unit(), source.minus(), part.from(), amps.orElse(0), peak, amps.isPresent(), words);
    }

    /** {@code 4 A x 5 V / 22.2 V / 0.9}: the input of a regulator by the power behind it. */
    private String words(PowerSource source, Part regulator) {
        String out = Figures.of(power.demand().averageA(regulator.to())) + " A";
        boolean linear = regulator.origin() instanceof Part.Inner inner
                && inner.part().kind().is(PartKind.LINEAR_REGULATOR);
        if (linear || !(regulator.origin() instanceof Part.Inner inner)) {
            return out + " through its regulator";
        }
        OptionalDouble in = power.between(regulator.from(), source.minus())
                .map(Volts::nominal)
                .orElse(OptionalDouble.empty());
        return out + " x " + Figures.of(source.volts().nominal()) + " V / " + Figures.of(in) + " V / "
                + Figures.of(inner.part().rating().efficiency().or(Double.NaN));
    }

    /**
     * Packs in parallel take equal parts of the return, each by its own leads; what they have in common, first of all the
     * lead of the unit itself, carries it all. Of inputs joined by diodes each may have to take it all.
     */
    private void share(int unit, int zero, int plus, double average, double peak, boolean known, String words) {
        Set<Integer> homes = homes(power, plus);
        boolean common = homes.size() > 1 && commonNeck(zero, homes);
        int parallel =
                common ? 1 : Math.max(1, power.lifting(power.ties().of(plus)).size());
        for (int home : homes) {
            Need need = new Need(unit, zero, home, average / parallel, peak / parallel, known, words);
            needs.merge(new Key(unit, zero, home), need, Need::plus);
            if (common) {
                return;
            }
        }
    }

    /** Whether the packs have a wider way to each other than to the unit: then what limits it lies before they part. */
    private boolean commonNeck(int zero, Set<Integer> homes) {
        int first = homes.iterator().next();
        if (!returns.reaches(zero, first)) {
            return false;
        }
        double width = returns.width(zero, first).low();
        return homes.stream()
                .allMatch(home -> home == first
                        || (returns.reaches(first, home)
                                && returns.width(first, home).high() > width));
    }
}
