package ringout.present.text;

import java.util.List;
import ringout.present.lines.LineChange;
import ringout.repair.Mending;
import ringout.repair.Repair;

/** What was mended in a list, what was not, and the lines that differ. */
public final class RepairText {
    private RepairText() {}

    /**
     * The text.
     *
     * @param mending the repairs
     * @param changes lines that differ between the list and the mended one
     * @param written where the mended list is; empty when nothing was written
     */
    public static String of(Mending mending, List<LineChange> changes, String written) {
        StringBuilder text = new StringBuilder();
        int left = mending.after().headlines().size();
        text.append(count(mending.repairs().size(), "repair"))
                .append(" found, each tried on a copy and reviewed again; ")
                .append(count(left, "finding"))
                .append(left == 1 ? " is" : " are")
                .append(" left")
                .append(written.isEmpty() ? "" : "; the mended list is in " + written)
                .append('\n');
        mending.repairs().forEach(repair -> repair(text, repair));
        mending.after().headlines().stream()
                .map(headline -> headline.finding())
                .forEach(finding -> text.append("left   ")
                        .append(finding.severity())
                        .append(' ')
                        .append(finding.code())
                        .append(' ')
                        .append(finding.title())
                        .append("\n   no small change of the list clears it alone: ")
                        .append(finding.fix())
                        .append('\n'));
        lines(text, changes);
        return text.toString();
    }

    private static void repair(StringBuilder text, Repair repair) {
        text.append("mend   ")
                .append(repair.code())
                .append(' ')
                .append(repair.title())
                .append('\n');
        repair.words().forEach(words -> text.append("   make   ").append(words).append('\n'));
        text.append("   sure   ")
                .append(repair.sureness().words())
                .append(repair.others() > 0 ? " (" + repair.others() + " more)" : "")
                .append('\n');
        if (!repair.decide().isEmpty()) {
            text.append("   first  ")
                    .append(repair.decide())
                    .append("; if the meter shows nothing wrong, correct the list and not the aircraft\n");
        }
    }

    private static void lines(StringBuilder text, List<LineChange> changes) {
        String file = "";
        for (LineChange change : changes) {
            if (!change.file().equals(file)) {
                file = change.file();
                text.append(file).append('\n');
            }
            text.append("  line ").append(change.line()).append('\n');
            change.out().forEach(line -> text.append("  - ").append(line).append('\n'));
            change.in().forEach(line -> text.append("  + ").append(line).append('\n'));
        }
    }

    private static String count(int number, String word) {
        return number + " " + word + (number == 1 ? "" : "s");
    }
}
