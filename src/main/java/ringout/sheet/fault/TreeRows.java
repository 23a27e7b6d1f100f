package ringout.sheet.fault;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import ringout.sheet.document.Column;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.trace.session.NextStep;
import ringout.trace.session.SearchTree;

/** The tree of tests as rows: a test a number, a row an outcome, each telling at which number to go on. */
final class TreeRows {
    private static final double READING_MM = 20;
    private static final int NAMED = 2;

    private int number = 1;

    /** A test with its number. */
    private record Numbered(int number, SearchTree tree) {}

    Table table(SearchTree tree) {
        TableBuilder table = Table.named(
                "fault-tests",
                Column.text("no"),
                Column.text("test"),
                Column.number("time", "min"),
                Column.text("shows"),
                Column.text("speaks for"),
                Column.text("then"),
                Column.writeIn("reading", "", READING_MM));
        Deque<Numbered> open = new ArrayDeque<>(List.of(new Numbered(1, tree)));
        if (!(tree.step() instanceof NextStep.Test)) {
            return table.row("1", end(tree.step()), "", "", "", "", "").table();
        }
        while (!open.isEmpty()) {
            rows(table, open.remove(), open);
        }
        return table.table();
    }

    private void rows(TableBuilder table, Numbered one, Deque<Numbered> open) {
        NextStep.Test test = (NextStep.Test) one.tree().step();
        String lids = test.card().opening().free()
                ? ""
                : "; behind " + String.join(", ", test.card().opening().covers());
        boolean first = true;
        for (SearchTree.Limb limb : one.tree().limbs()) {
            table.row(
                    first ? String.valueOf(one.number()) : "",
                    first ? test.card().title() + lids : "",
                    first ? minutes(test.minutes()) : "",
                    shows(test, limb),
                    speaksFor(test, limb),
                    then(limb.then(), open),
                    "");
            first = false;
        }
    }

    /** The outcome with the figure computed for its likeliest fault. */
    private static String shows(NextStep.Test test, SearchTree.Limb limb) {
        String value = test.branches().stream()
                .filter(branch -> branch.outcome().equals(limb.outcome()))
                .flatMap(branch -> branch.with().stream())
                .map(NextStep.Shown::value)
                .findFirst()
                .orElse(limb.outcome());
        String chance = " (" + FaultSheet.percent(limb.chance()) + " %)";
        return value.equals(limb.outcome()) ? limb.outcome() + chance : limb.outcome() + ": " + value + chance;
    }

    private static String speaksFor(NextStep.Test test, SearchTree.Limb limb) {
        return test.branches().stream()
                .filter(branch -> branch.outcome().equals(limb.outcome()))
                .flatMap(branch -> branch.with().stream())
                .limit(NAMED)
                .map(NextStep.Shown::fault)
                .collect(Collectors.joining("; "));
    }

    private String then(SearchTree tree, Deque<Numbered> open) {
        if (tree.step() instanceof NextStep.Test && !tree.limbs().isEmpty()) {
            number++;
            open.add(new Numbered(number, tree));
            return "go to " + number;
        }
        return end(tree.step());
    }

    private static String end(NextStep step) {
        if (step instanceof NextStep.Test test) {
            return "go on with: " + test.card().title();
        }
        if (step instanceof NextStep.Do repair) {
            return "stop: " + repair.job().action() + " ("
                    + FaultSheet.percent(repair.job().share()) + " %)";
        }
        if (step instanceof NextStep.GoIn in) {
            return "open " + String.join(", ", in.lids()) + "; ready for: "
                    + in.bring().stream().limit(NAMED).map(NextStep.Job::action).collect(Collectors.joining("; "));
        }
        if (step instanceof NextStep.InTurn turn) {
            return "in turn: "
                    + turn.inTurn().stream()
                            .limit(NAMED)
                            .map(NextStep.Job::action)
                            .collect(Collectors.joining("; "));
        }
        return "fits nothing: read again; two faults, or a wrong list";
    }

    private static String minutes(double minutes) {
        return String.format(Locale.ROOT, minutes == Math.rint(minutes) ? "%.0f" : "%.1f", minutes);
    }
}
