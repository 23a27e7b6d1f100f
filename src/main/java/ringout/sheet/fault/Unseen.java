package ringout.sheet.fault;

import java.util.ArrayList;
import java.util.List;
import ringout.graph.Circuit;
import ringout.model.PlannedTest;
import ringout.trace.predict.Coverage;
import ringout.trace.predict.FaultDictionary;
import ringout.trace.predict.PlannedLine;
import ringout.trace.predict.TestPoints;

/**
 * One's own checklist held against every single fault of the list: what would pass it, what to add, and where a test point tells most. Two faults at
 * once, and those that come and go, are not looked at.
 *
 * @param aircraft name of the aircraft
 * @param state its state
 * @param coverage what the lines see
 * @param planned lines of the list that were held against the faults; none means that every lead is supposed to be rung out
 * @param passedOver tests of the list that say nothing computable: they count as seeing nothing
 * @param additions lines to add, those that catch most for their time first
 * @param points places for test points
 * @param latent part of all faults that shows at no unit, 0 to 1
 */
public record Unseen(
        String aircraft,
        String state,
        Coverage coverage,
        int planned,
        List<String> passedOver,
        List<Coverage.Addition> additions,
        TestPoints points,
        double latent) {
    /** Keeps its own copies. */
    public Unseen {
        passedOver = List.copyOf(passedOver);
        additions = List.copyOf(additions);
    }

    /**
     * What the planned tests of a circuit would not see.
     *
     * @param lines how many lines to add at most
     * @param points how many test points at most
     */
    public static Unseen of(Circuit circuit, int lines, int points) {
        List<PlannedLine> planned = PlannedLine.of(circuit);
        Coverage coverage = Coverage.of(circuit, planned.isEmpty() ? PlannedLine.ringOut(circuit) : planned);
        List<String> over = new ArrayList<>();
        for (PlannedTest test : circuit.wiring().aircraft().record().tests()) {
            if (planned.stream().noneMatch(line -> line.name().equals(test.id()))) {
                over.add(test.id());
            }
        }
        return new Unseen(
                circuit.wiring().aircraft().name(),
                circuit.state().name(),
                coverage,
                planned.size(),
                over,
                coverage.additions(lines),
                TestPoints.of(circuit, points),
                FaultDictionary.of(circuit).latentShare());
    }

    /** {@return the faults of a severity that pass all lines} */
    public List<Coverage.Unseen> of(Coverage.Severity severity) {
        return coverage.unseen().stream()
                .filter(one -> one.severity() == severity)
                .toList();
    }
}
