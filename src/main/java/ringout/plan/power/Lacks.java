package ringout.plan.power;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.solve.power.Assumption;
import ringout.solve.power.OperatingPoint;
import ringout.solve.power.PowerFlow;

/** What an operating point lacks to be held against an ammeter. */
final class Lacks {
    private static final int TOLD = 4;

    private Lacks() {}

    /** {@return what must be known before a current can be told; empty when nothing is missing} */
    static Optional<String> ofCurrent(OperatingPoint point) {
        if (point instanceof OperatingPoint.Collapse collapse) {
            return Optional.of("a supply that carries it: the voltage collapses at " + collapse.limiting());
        }
        if (!(point instanceof PowerFlow)) {
            return Optional.of("a steady state: diodes and regulators do not come to rest");
        }
        return words(point.assumed().stream().filter(Lacks::counts).toList());
    }

    /** {@return conductors and packs of which no resistance is known, so that voltages are computed without their drop} */
    static Optional<String> ofVolts(OperatingPoint point) {
        return words(point.assumed().stream().filter(one -> !counts(one)).toList());
    }

    private static Optional<String> words(List<Assumption> lacks) {
        if (lacks.isEmpty()) {
            return Optional.empty();
        }
        String told = lacks.stream()
                .limit(TOLD)
                .map(one -> one.gap().datum() + " of " + one.gap().of())
                .collect(Collectors.joining(", "));
        return Optional.of(lacks.size() > TOLD ? told + " and " + (lacks.size() - TOLD) + " more" : told);
    }

    /** A resistance left out moves volts by little and amperes by less; anything else moves the amperes. */
    private static boolean counts(Assumption one) {
        String datum = one.gap().datum();
        return !datum.equals("length")
                && !datum.equals("wire size")
                && !datum.equals("internal resistance")
                && !datum.startsWith("resistance of ");
    }
}
