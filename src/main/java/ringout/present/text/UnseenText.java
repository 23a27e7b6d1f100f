package ringout.present.text;

import java.util.List;
import java.util.Locale;
import ringout.sheet.Cautions;
import ringout.sheet.fault.Unseen;
import ringout.trace.predict.Coverage;
import ringout.trace.predict.TestPoints;

/** What a checklist would not see, for a terminal. */
public final class UnseenText {
    private static final int INDENT = 10;
    private static final int MOST_FAULTS = 20;
    private static final int MOST_GROUPS = 5;
    private static final double PERCENT = 100;

    private final Unseen unseen;
    private final Lines lines = new Lines();

    private UnseenText(Unseen unseen) {
        this.unseen = unseen;
    }

    /** {@return the report, lines ending in \n} */
    public static String of(Unseen unseen) {
        UnseenText text = new UnseenText(unseen);
        text.head();
        text.faults(Coverage.Severity.FLIGHT_CRITICAL, "flight depends on what they touch");
        text.faults(Coverage.Severity.OTHER, "others");
        text.additions();
        text.points();
        text.lines.line("");
        text.lines.field(
                "not seen",
                "two faults at once, and faults that come and go; faults are weighed by what they stop, not by what they"
                        + " heat; what no line shows is unproved, not sound");
        Cautions.OHMS.forEach(caution -> text.lines.field("caution", caution));
        return text.lines.toString();
    }

    private void head() {
        String share = percent(unseen.coverage().share()) + " of all single faults";
        lines.line(unseen.aircraft() + " (" + unseen.state() + "): "
                + (unseen.planned() == 0
                        ? "no test is planned that can be held against a fault; every lead rung out would show " + share
                        : unseen.planned() + " planned lines show " + share));
        lines.field("silent", percent(unseen.latent()) + " of all single faults show at no unit by themselves");
        if (!unseen.passedOver().isEmpty()) {
            lines.field(
                    "counted",
                    "as seeing nothing, because what they measure cannot be computed: "
                            + String.join(", ", unseen.passedOver()));
        }
    }

    private void faults(Coverage.Severity severity, String title) {
        List<Coverage.Unseen> found = unseen.of(severity);
        lines.line("");
        lines.line("would pass unseen, " + title + ": " + found.size());
        found.stream()
                .limit(MOST_FAULTS)
                .forEach(one -> lines.hanging("", INDENT, one.candidate().title()));
        if (found.size() > MOST_FAULTS) {
            lines.hanging("", INDENT, (found.size() - MOST_FAULTS) + " more, less likely");
        }
    }

    private void additions() {
        lines.line("");
        lines.line("lines to add, those that catch most for their time first");
        for (Coverage.Addition addition : unseen.additions()) {
            lines.hanging(
                    String.format(Locale.ROOT, "  %3d more", addition.catches().size()),
                    INDENT + 2,
                    String.format(
                            Locale.ROOT,
                            "%s, %.1f min",
                            addition.card().title(),
                            addition.card().allMinutes()));
        }
    }

    private void points() {
        TestPoints points = unseen.points();
        lines.line("");
        lines.line(String.format(
                Locale.ROOT,
                "test points: the units alone tell %d kinds of faults apart, %.1f faults alike on average",
                points.classesWithout(),
                points.ambiguityWithout()));
        for (TestPoints.Point point : points.points()) {
            lines.hanging(
                    String.format(Locale.ROOT, "  %4d", point.classes()),
                    INDENT,
                    String.format(
                            Locale.ROOT,
                            "%s; then %.1f alike on average",
                            point.card().title(),
                            point.ambiguity()));
        }
        points.neverApart().stream()
                .limit(MOST_GROUPS)
                .forEach(group -> lines.hanging(
                        "  never",
                        INDENT,
                        group.size() + " faults no measurement with everything mated tells apart: "
                                + String.join(
                                        ", ",
                                        group.stream()
                                                .limit(3)
                                                .map(one -> one.title())
                                                .toList())
                                + (group.size() > 3 ? " ..." : "")));
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, "%.0f %%", PERCENT * share);
    }
}
