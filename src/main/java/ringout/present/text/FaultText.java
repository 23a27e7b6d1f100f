package ringout.present.text;

import java.util.List;
import java.util.Locale;
import java.util.SortedSet;
import java.util.TreeSet;
import ringout.present.words.SearchWords;
import ringout.sheet.Cautions;
import ringout.trace.session.FaultReport;
import ringout.trace.session.ListDoubt;
import ringout.trace.session.NextStep;
import ringout.trace.session.Ranked;
import ringout.trace.session.Way;

/** Where the search for a fault stands, as text for a terminal. */
public final class FaultText {
    private static final int INDENT = 11;
    private static final int BRIEF = 5;

    private final FaultReport report;
    private final Lines lines = new Lines();

    private FaultText(FaultReport report) {
        this.report = report;
    }

    /** The whole report, lines ending in \n. */
    public static String of(FaultReport report) {
        FaultText text = new FaultText(report);
        text.head();
        text.faults();
        text.pairs();
        text.jobs();
        text.lines.line("");
        text.next();
        text.afterwards();
        return text.lines.toString();
    }

    /** What leads and what to do next, lines ending in \n. */
    public static String brief(FaultReport report) {
        FaultText text = new FaultText(report);
        text.lines.line("");
        report.ranked().stream().limit(BRIEF).forEach(text::fault);
        text.lines.hanging("  " + percent(report.unknown()), INDENT, "something not in the model");
        text.pairs();
        text.lines.line("");
        text.next();
        return text.lines.toString();
    }

    /** What to prove again, lines ending in \n. */
    public static String retest(FaultReport report) {
        FaultText text = new FaultText(report);
        text.afterwards();
        return text.lines.toString();
    }

    private void head() {
        lines.line(SearchWords.scene(report.scene()) + " (" + report.state() + ")");
        if (!report.behind().isEmpty()) {
            lines.field(
                    "behind",
                    String.join(", ", report.behind()) + ": commanded through what is silent, told of by it only");
        }
        for (Way way : report.ways()) {
            lines.field(way.power() ? "power" : "signal", way.trail().words());
        }
        report.progress().readings().forEach(reading -> lines.field("read", SearchWords.reading(reading)));
        report.progress().vain().forEach(repair -> lines.field("in vain", repair));
        if (!report.scene().tellsOfChange()) {
            lines.field("ask", "what changed last? say --touched with rows, plugs or units, or crash, or update");
        }
        if (!report.lookAt().isEmpty()) {
            lines.field(
                    "ask",
                    "first, it costs nothing: who else is silent? " + String.join(", ", report.lookAt())
                            + " would be with some of these; name them with --silent, or say --alive others");
        }
        SortedSet<String> dim = new TreeSet<>(report.scene().silent());
        dim.removeAll(report.scene().lit());
        dim.removeAll(report.scene().dark());
        if (!dim.isEmpty()) {
            lines.field("ask", "is it lit? say --lit or --dark for " + String.join(", ", dim));
        }
        lines.line("");
    }

    private void faults() {
        lines.line(
                report.single()
                        ? "what explains it (" + String.format(Locale.ROOT, "%.1f", report.bits()) + " bit left)"
                        : "no single fault explains all of it; each of these explains a part, at least two are present");
        report.ranked().forEach(this::fault);
        if (report.others() > 0) {
            lines.hanging("", INDENT, report.others() + " more below 1 % each");
        }
        lines.hanging("  " + percent(report.unknown()), INDENT, "something not in the model");
    }

    private void fault(Ranked one) {
        lines.hanging("  " + percent(one.share()), INDENT, one.candidate().title());
        String because = SearchWords.because(one);
        if (!because.isEmpty()) {
            lines.hanging("", INDENT + 2, because);
        }
    }

    private void pairs() {
        if (report.pairs().any()) {
            lines.line("");
            lines.line(
                    "two faults would; at least one of these, offered and not certain: repair the first, observe again");
            report.pairs()
                    .atLeastOneOf()
                    .forEach(one -> lines.hanging(
                            "  " + percent(one.share()), INDENT, one.candidate().title()));
            report.pairs().pairs().stream()
                    .limit(3)
                    .forEach(two -> lines.field(
                            "such as", two.one().title() + " and " + two.other().title()));
        }
        for (ListDoubt doubt : report.listDoubts()) {
            lines.field(
                    "list?",
                    "or the list is wrong: " + doubt.row() + " would have to say " + doubt.should() + ", not "
                            + doubt.says() + "; look at the aircraft before either is changed");
        }
    }

    private void afterwards() {
        lines.line("");
        lines.line("after the repair, prove again (all that was opened or disturbed, not just the fault)");
        report.retest().forEach(one -> lines.hanging("  " + one.object(), INDENT, one.what()));
        lines.field("both ways", "fault there, repaired, gone; where it does no harm undone, back, repaired again");
    }

    private static String percent(double share) {
        String words = SearchWords.share(share);
        return words.startsWith("under") ? "< 1 %" : " ".repeat(Math.max(0, 5 - words.length())) + words;
    }

    private void jobs() {
        lines.line("");
        lines.line("repair actions");
        for (NextStep.Job job : report.jobs()) {
            lines.hanging("  " + percent(job.share()), INDENT, SearchWords.job(job));
        }
    }

    private void next() {
        NextStep next = report.next();
        if (next instanceof NextStep.Test test) {
            test(test);
        } else if (next instanceof NextStep.Do repair) {
            repair(repair);
        } else if (next instanceof NextStep.GoIn in) {
            goIn(in);
        } else if (next instanceof NextStep.InTurn turn) {
            lines.line("next: no test left tells these apart; do them in turn, look after each whether it is cured");
            turn.inTurn().forEach(job -> lines.hanging("  " + percent(job.share()), INDENT, SearchWords.job(job)));
            cautions(Cautions.PACKS);
        } else if (next instanceof NextStep.NothingFits none) {
            nothing(none);
        }
    }

    private void test(NextStep.Test test) {
        lines.hanging(
                "next:", 6, (test.again() ? "read again: " : "") + test.card().title());
        lines.field(
                "cost",
                SearchWords.minutes(test.minutes()) + ", "
                        + SearchWords.access(test.card().opening()) + "; tells "
                        + String.format(Locale.ROOT, "%.2f", test.bits()) + " bit"
                        + test.toTheEnd()
                                .map(minutes -> "; to the end about " + SearchWords.minutes(minutes))
                                .orElse(""));
        lines.field("test", test.card().id());
        lines.field("sound", "with nothing wrong: " + test.sound());
        for (NextStep.Branch branch : test.branches()) {
            lines.field(branch.outcome(), SearchWords.share(branch.chance()) + ": " + SearchWords.shown(branch));
            lines.hanging(
                    "",
                    INDENT + 2,
                    "then " + SearchWords.share(branch.share()) + " "
                            + branch.leading().action());
        }
        lines.field("trap", test.card().trap());
        if (!test.card().disturbs().isEmpty()) {
            lines.field(
                    "prove",
                    "again afterwards: " + String.join(", ", test.card().disturbs()));
        }
        cautions(test.card().safety());
    }

    private void repair(NextStep.Do repair) {
        lines.hanging("next:", 6, "stop measuring: " + repair.job().action());
        lines.field(
                "why",
                SearchWords.share(repair.job().share())
                        + (repair.covers() ? ", enough to act on" : ", and no dearer than the cheapest useful test"));
        lines.field(
                "cost",
                SearchWords.minutes(repair.minutes()) + ", "
                        + SearchWords.lids(repair.job().lids()));
        repair.repeatFirst()
                .ifPresent(card -> lines.field("first", "read again, the advice hangs on it: " + card.title()));
        lines.field("then", "observe again; what is cured by pulling and plugging alone is not cured");
        cautions(Cautions.PACKS);
    }

    private void goIn(NextStep.GoIn in) {
        lines.hanging(
                "next:",
                6,
                "further outside tests will not separate these. They share one repair access ("
                        + String.join(", ", in.lids()) + ", " + SearchWords.minutes(in.minutes())
                        + "). Open it; have ready:");
        in.bring().stream()
                .filter(job -> job.share() >= 0.02)
                .forEach(job -> lines.hanging("  " + percent(job.share()), INDENT, job.action()));
        in.lookFirst().forEach(card -> lines.field("inside", card.title()));
        cautions(Cautions.PACKS);
    }

    private void nothing(NextStep.NothingFits none) {
        lines.hanging(
                "next:",
                6,
                "the readings fit no fault of the model (" + SearchWords.share(none.unknown())
                        + " for something else): two faults, a wrong list, or something not thought of");
        for (Ranked near : none.nearest()) {
            lines.field("nearest", near.candidate().title() + "; " + SearchWords.because(near));
        }
        lines.field(
                "do",
                "look again who else is silent, read the doubtful tests again; write down all readings before anything is changed");
    }

    private void cautions(List<String> words) {
        words.forEach(caution -> lines.field("caution", caution));
        lines.field("caution", "do not fly to see whether it comes back");
    }
}
