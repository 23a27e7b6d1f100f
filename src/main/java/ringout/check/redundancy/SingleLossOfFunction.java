package ringout.check.redundancy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.loss.FunctionLoss;
import ringout.graph.loss.Item;
import ringout.graph.loss.Items;
import ringout.graph.loss.LossTable;
import ringout.graph.loss.Roots;
import ringout.model.AircraftFunction;
import ringout.model.Datum;

/**
 * What falls with each thing: the loss table in one line, and every function that must survive one failure and does not.
 *
 * <p>Why it matters: the reviewer's first question is what happens when one thing lets go, and nobody sees it in a list.
 *
 * <p>Condition: every plug, lead, fuse, splice, clamp, regulator is taken away alone; what is no longer fed, returned or reached stops
 * the functions that run through it. A function marked "must survive one failure" that one of them stops is a finding, unless
 * that one is accepted as a common root. A cut that only lowers capacity is no loss; a return that is left but too thin for the
 * average current is one. A unit that others stand in for is missed only when they fail as well.
 *
 * <p>Does not see: a supply way that is left and too thin; failures inside a unit; two failures at once. Of more than
 * 3000 leads it makes no table.
 *
 * <p>Reference: common practice, no source; dominators by T. Lengauer and R. E. Tarjan (1979).
 */
@CheckInfo(
        code = "R01",
        name = "single-loss",
        severity = Severity.S3,
        since = "0.3",
        needs = {"functions with their chains", "unit types", "whether each function must survive one failure"})
public final class SingleLossOfFunction implements Check {
    /** A list of more leads is no aircraft anybody reads a loss table of; functions that must survive are judged all the same. */
    private static final int MOST_LISTED = 3000;

    private static final int WORST = 5;
    private static final int FEW = 4;

    @Override
    public void look(Situation at, Outcomes out) {
        List<AircraftFunction> functions = at.aircraft().functions();
        if (functions.isEmpty()) {
            return;
        }
        Set<String> untyped = untyped(at, functions);
        if (!untyped.isEmpty()) {
            out.cannotTell(
                    "unit type of " + String.join(", ", untyped),
                    "add its plugs and pins to the library",
                    10 * untyped.size(),
                    untyped.toArray(new String[0]));
            return;
        }
        List<String> unsaid = new ArrayList<>();
        for (AircraftFunction function : functions) {
            if (function.mustSurvive() instanceof Datum.Unknown) {
                unsaid.add(function.name());
            } else if (function.mustSurvive().is(true)) {
                survives(at, out, function);
            }
        }
        if (!unsaid.isEmpty()) {
            out.cannotTell(
                    "whether " + String.join(", ", unsaid) + " must survive one failure",
                    "ask whoever answers for the design",
                    5,
                    unsaid.toArray(new String[0]));
        }
        if (at.aircraft().leads().size() > MOST_LISTED) {
            out.looked();
            return;
        }
        LossTable table = LossTable.of(at.circuit());
        if (!table.lines().isEmpty()) {
            out.finding(listed(table));
        }
    }

    private static Set<String> untyped(Situation at, List<AircraftFunction> functions) {
        Set<String> found = new TreeSet<>();
        for (AircraftFunction function : functions) {
            for (String name : function.chain()) {
                at.directory()
                        .find(name)
                        .filter(unit -> !at.directory().typeKnown(unit))
                        .ifPresent(unit -> found.add(at.directory().name(unit)));
            }
        }
        return found;
    }

    private static void survives(Situation at, Outcomes out, AircraftFunction function) {
        Optional<Set<Integer>> taking = FunctionLoss.of(at.circuit()).of(function);
        if (taking.isEmpty()) {
            return;
        }
        out.looked();
        Items items = Items.of(at.circuit());
        Roots accepted = Roots.of(at.circuit());
        List<String> names = taking.get().stream()
                .map(items::item)
                .filter(item -> item.kind() != Item.Kind.UNIT && !accepted.holds(item))
                .map(Item::name)
                .toList();
        if (!names.isEmpty()) {
            out.finding(Draft.of(
                            Severity.S3,
                            "single loss: " + function.name()
                                    + " must survive one failure, and does not survive the loss of " + few(names))
                    .about("function " + function.name())
                    .at(new Place(function.at(), function.name(), "function " + function.name()))
                    .sum(names.size() + " things take it alone: " + String.join(", ", names))
                    .why("it was declared to outlive one failure")
                    .fix("give " + function.name()
                            + " a second way, or declare these single by design and inspect them each flight")
                    .cause("function " + function.name() + " single"));
        }
    }

    private static Draft listed(LossTable table) {
        List<LossTable.Line> grave = table.grave();
        String worst = table.lines().stream()
                .limit(WORST)
                .map(SingleLossOfFunction::words)
                .collect(Collectors.joining("; "));
        return Draft.of(
                        Severity.S5,
                        "loss table: " + table.lines().size() + " things take something when they let go alone, "
                                + grave.size() + " of them a function flight depends on")
                .about(StoppedRotors.TABLE)
                .sum("the worst: " + worst)
                .why("single by design needs a look before each flight")
                .explains("R02")
                .cause(StoppedRotors.TABLE);
    }

    private static String words(LossTable.Line line) {
        return line.item().name() + " takes " + few(line.functions().isEmpty() ? line.units() : line.functionNames());
    }

    private static String few(List<String> names) {
        return names.size() <= FEW
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, FEW)) + " and " + (names.size() - FEW) + " more";
    }
}
