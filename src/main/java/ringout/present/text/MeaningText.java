package ringout.present.text;

import java.util.List;
import ringout.present.words.FaultWords;
import ringout.present.words.ReadingWords;
import ringout.solve.meter.Fault;
import ringout.solve.meter.Meaning;

/** What readings other than the expected one mean, and what the expected one does not show. */
final class MeaningText {
    private static final int INDENT = 24;

    private final Lines lines;

    MeaningText(Lines lines) {
        this.lines = lines;
    }

    void others(List<Meaning> meanings, int notTried, String between) {
        if (!meanings.isEmpty()) {
            lines.line("  any other reading means, one fault at a time:");
            meanings.forEach(this::meaning);
            lines.hanging("    between these", INDENT, between);
        }
        if (notTried > 0) {
            lines.hanging("    not tried", INDENT, notTried + " further faults, to keep the answer quick");
        }
    }

    private void meaning(Meaning meaning) {
        String name = "    " + ReadingWords.of(meaning);
        for (String phrase : FaultWords.of(meaning.faults())) {
            lines.hanging(name, INDENT, phrase);
            name = "";
        }
        if (ambiguous(meaning.faults())) {
            lines.hanging(
                    "",
                    INDENT,
                    "same number, different repair: a break silences everything beyond it, a missing terminator usually"
                            + " nobody");
        }
    }

    private static boolean ambiguous(List<Fault> faults) {
        return has(faults, Fault.Kind.TERMINATOR_MISSING)
                && (has(faults, Fault.Kind.OPEN_CONDUCTOR) || has(faults, Fault.Kind.UNSEATED));
    }

    private static boolean has(List<Fault> faults, Fault.Kind kind) {
        return faults.stream().anyMatch(fault -> fault.kind() == kind);
    }

    void unseen(List<Fault> unseen) {
        if (unseen.isEmpty()) {
            return;
        }
        lines.line("  the same reading, so not found by this measurement:");
        FaultWords.of(unseen).forEach(phrase -> lines.hanging("", INDENT, phrase));
        if (has(unseen, Fault.Kind.TERMINATOR_MOVED)) {
            lines.hanging(
                    "",
                    INDENT,
                    "this reading does not prove that the terminators are at the ends: only the pulled end plug does");
        }
    }
}
