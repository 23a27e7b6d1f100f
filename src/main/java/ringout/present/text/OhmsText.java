package ringout.present.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import ringout.graph.Gap;
import ringout.model.Lead;
import ringout.present.words.Cautions;
import ringout.present.words.OhmsWords;
import ringout.present.words.ReadingWords;
import ringout.solve.meter.BadContact;
import ringout.solve.meter.OhmsAnswer;
import ringout.solve.meter.Reading;
import ringout.solve.meter.Route;

/** What an ohmmeter should show, as text for a terminal and as one line. */
public final class OhmsText {
    private static final int PERCENT = 100;

    /** Below it the meter's own leads and digits are most of what is shown. Common practice, no source. */
    private static final double HAND_HELD_OHM = 0.5;

    private final OhmsAnswer answer;
    private final Lines lines = new Lines();

    private OhmsText(OhmsAnswer answer) {
        this.answer = answer;
    }

    /** One line: points, state, reading, worst case. */
    public static String line(OhmsAnswer answer) {
        String band = answer.reading() instanceof Reading.Ohms ohms
                ? " (" + OhmsWords.range(ohms.least(), ohms.most()) + ")"
                : "";
        return answer.from() + " to " + answer.to() + ", " + where(answer) + ": " + ReadingWords.of(answer.reading())
                + band + '\n';
    }

    /** The whole answer, lines ending in \n. */
    public static String of(OhmsAnswer answer) {
        OhmsText text = new OhmsText(answer);
        String inside = answer.inside().isEmpty()
                ? ""
                : " by the wiring; what is inside " + String.join(", ", answer.inside()) + " cannot be told";
        text.lines.line(
                answer.from() + " to " + answer.to() + ": expect " + ReadingWords.of(answer.reading()) + inside);
        text.lines.field("state", where(answer));
        text.reading();
        text.routes();
        text.gaps();
        text.meanings();
        text.otherStates();
        Cautions.OHMS.forEach(caution -> text.lines.field("caution", caution));
        return text.lines.toString();
    }

    private static String where(OhmsAnswer answer) {
        String pulled = answer.pulled().isEmpty() ? "" : ", pulled: " + String.join(", ", answer.pulled());
        return answer.state() + ", power off" + pulled;
    }

    private void reading() {
        if (answer.reading() instanceof Reading.Ohms ohms) {
            lines.field(
                    "band",
                    OhmsWords.range(ohms.least(), ohms.most()) + " at most (worst case of all tolerances together); "
                            + OhmsWords.range(
                                    Math.max(0, ohms.ohm() - answer.spreadOhm()), ohms.ohm() + answer.spreadOhm())
                            + " usually (their root-sum-square)");
            if (ohms.ohm() < HAND_HELD_OHM) {
                lines.field("note", "a hand-held meter shows nearly nothing here: milliohms need four wires");
            }
        } else if (!answer.inside().isEmpty()) {
            lines.field(
                    "inside",
                    "only the inside of " + String.join(", ", answer.inside())
                            + " lies between: it may show anything from"
                            + " a winding's milliohms to megohms, rising while capacitors charge; not in the list, not"
                            + " computed");
        } else {
            lines.field("inside", "nothing in the list lies between these points");
        }
    }

    private void routes() {
        for (Route route : answer.routes()) {
            String rows = route.rows().isEmpty()
                    ? ""
                    : "; rows " + route.rows().stream().map(Lead::id).collect(Collectors.joining(", "));
            lines.field(
                    "path",
                    percent(route.share()) + " of the current: " + route.trail().words() + rows);
        }
        if (!answer.routes().isEmpty() && !answer.restThrough().isEmpty()) {
            lines.field(
                    "path", percent(answer.rest()) + " in parallel through " + String.join(", ", answer.restThrough()));
        }
    }

    private static String creeping(BadContact bad) {
        return OhmsWords.range(value(bad.from()), value(bad.to())) + " with "
                + OhmsWords.range(bad.fromOhm(), bad.toOhm()) + " too much in a contact such as " + bad.lead() + " at "
                + bad.pin() + "; ";
    }

    private static double value(Reading reading) {
        return reading instanceof Reading.Ohms ohms ? ohms.ohm() : Double.POSITIVE_INFINITY;
    }

    private static String percent(double share) {
        return String.format(Locale.ROOT, share < 0.1 && share > 0 ? "%.1f %%" : "%.0f %%", share * PERCENT);
    }

    private void gaps() {
        Map<String, List<String>> byDatum = new LinkedHashMap<>();
        for (Gap gap : answer.gaps()) {
            byDatum.computeIfAbsent(gap.datum(), key -> new ArrayList<>()).add(gap.of());
        }
        byDatum.forEach((datum, of) -> lines.field(
                "unknown", datum + " of " + String.join(", ", of) + ": not given, counted as " + counted(datum)));
    }

    private static String counted(String datum) {
        return switch (datum) {
            case "terminator on or off" -> "off";
            case "node input" -> "none";
            default -> "no resistance";
        };
    }

    private void meanings() {
        MeaningText meanings = new MeaningText(lines);
        String contact = answer.badContact().map(OhmsText::creeping).orElse("");
        meanings.others(
                answer.meanings(), answer.notTried(), contact + "a contact of high resistance, or more than one fault");
        meanings.unseen(answer.unseen());
    }

    private void otherStates() {
        for (OhmsAnswer.StateReading other : answer.otherStates()) {
            lines.field("also", "in state " + other.state() + ": " + ReadingWords.of(other.reading()));
        }
    }
}
