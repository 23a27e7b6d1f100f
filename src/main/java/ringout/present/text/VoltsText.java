package ringout.present.text;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.model.Lead;
import ringout.present.words.Cautions;
import ringout.present.words.ReadingWords;
import ringout.solve.meter.Reading;
import ringout.solve.meter.VoltsAnswer;
import ringout.solve.power.Assumption;

/** What a voltmeter should show, as text for a terminal and as one line. */
public final class VoltsText {
    private static final double STEP_V = 0.1;
    private static final double LEAST_A = 1e-3;

    private final VoltsAnswer answer;
    private final Lines lines = new Lines();

    private VoltsText(VoltsAnswer answer) {
        this.answer = answer;
    }

    /** One line: points, state, reading, band. */
    public static String line(VoltsAnswer answer) {
        String band = answer.reading() instanceof Reading.Volts volts
                ? " (" + ReadingWords.range(volts.least(), volts.most()) + ")"
                : "";
        return answer.from() + " to " + answer.to() + ", " + where(answer) + ": " + ReadingWords.of(answer.reading())
                + band + '\n';
    }

    /** The whole answer, the cautions first, lines ending in \n. */
    public static String of(VoltsAnswer answer) {
        VoltsText text = new VoltsText(answer);
        Cautions.VOLTS.forEach(caution -> text.lines.field("CAUTION", caution));
        text.lines.line(answer.from() + " (red lead) to " + answer.to() + " (black lead): expect "
                + ReadingWords.of(answer.reading()));
        text.lines.field("state", where(answer));
        text.reading();
        answer.ways().forEach(text::way);
        text.resistance();
        text.assumed();
        MeaningText meanings = new MeaningText(text.lines);
        meanings.others(
                answer.meanings(),
                answer.notTried(),
                "packs charged otherwise, a contact of high resistance, or more"
                        + " than one fault; measure the packs first");
        meanings.unseen(answer.unseen());
        text.lines.field(
                "note",
                "floating: the meter drifts, often near nothing, or shows a ghost of a few volts through one strand");
        text.lines.field("note", "shorts are looked for with the power off, never with it on");
        return text.lines.toString();
    }

    private static String where(VoltsAnswer answer) {
        String pulled = answer.pulled().isEmpty() ? "" : ", pulled: " + String.join(", ", answer.pulled());
        String event = answer.event().map(name -> ", " + name).orElse(", loads at rest");
        return answer.state() + ", power on" + event + pulled;
    }

    private void reading() {
        if (answer.reading() instanceof Reading.Volts volts) {
            lines.field(
                    "band",
                    ReadingWords.range(volts.least(), volts.most()) + "; least: " + extreme(answer.least()) + "; most: "
                            + extreme(answer.most()));
            answer.withoutFigure()
                    .forEach(words -> lines.field("no figure", "with " + words + " the voltage collapses"));
        } else if (answer.reading() instanceof Reading.Floating) {
            lines.field("note", "a signal, or cut off from every pack: what a driver puts on it is not computed");
        }
    }

    private static String extreme(Optional<VoltsAnswer.Extreme> end) {
        return end.map(e -> "packs " + e.packs() + ", loads " + e.loads() + ", regulators " + e.tolerance())
                .orElse("the expected case");
    }

    private void way(VoltsAnswer.Way way) {
        String rows = way.rows().isEmpty()
                ? ""
                : "; rows " + way.rows().stream().map(Lead::id).collect(Collectors.joining(", "));
        lines.field(way.supply() ? "supply" : "return", way.trail().words() + rows);
    }

    /** How much too much a missing voltage means, by Ohm's law at the current that flows. */
    private void resistance() {
        answer.amps()
                .filter(amps -> amps > LEAST_A)
                .ifPresent(amps -> lines.field(
                        "current",
                        String.format(
                                Locale.ROOT,
                                "%.3g A flow by the last lead to %s: 0.1 V too little there means %.0f milliohm too much",
                                amps,
                                answer.from(),
                                STEP_V / amps * 1000)));
    }

    private void assumed() {
        for (Assumption assumption : answer.assumed()) {
            lines.field(
                    "assumed",
                    assumption.gap().datum() + " of " + assumption.gap().of() + ": not given, " + assumption.value());
        }
    }
}
