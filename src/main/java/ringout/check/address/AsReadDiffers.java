package ringout.check.address;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.Unit;

/**
 * A unit that says another address, firmware or serial number of itself than the list.
 *
 * <p>Why it matters: all that is checked of the list is checked of another unit than the one aboard.
 *
 * <p>Condition: address, firmware or serial number as read differ from those listed; of a unit with several addresses the one read
 * is none of them. Looked at for a serial-numbered aircraft, or where at least one unit was read. One finding a unit.
 *
 * <p>Does not see: settings that are not read; parameter files (X11).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "A11",
        name = "as-read-differs",
        severity = Severity.S3,
        since = "0.1",
        needs = {"address, firmware and serial number as read of each unit", "the same as listed"})
public final class AsReadDiffers implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<Unit> units = at.aircraft().units();
        boolean read = units.stream().anyMatch(AsReadDiffers::wasRead);
        if (!read && !at.aircraft().tail().isKnown()) {
            return;
        }
        Gaps gaps = new Gaps();
        for (int unit = 0; unit < units.size(); unit++) {
            if (at.circuit().aboard(unit)) {
                look(out, units.get(unit), gaps);
            }
        }
        gaps.tell(
                out,
                datum -> datum.endsWith("as read")
                        ? new Gaps.Way("read it from the unit with its tool or over the bus", 2)
                        : new Gaps.Way("copy it from the label or the build record", 2));
    }

    private static boolean wasRead(Unit unit) {
        return unit.asRead().address().isKnown()
                || unit.asRead().firmware().isKnown()
                || unit.asRead().serial().isKnown();
    }

    private static void look(Outcomes out, Unit unit, Gaps gaps) {
        List<String> differs = new ArrayList<>();
        List<String> settings = new ArrayList<>();
        List<Integer> addresses = unit.ports().stream()
                .map(PortSetting::address)
                .flatMap(address -> address.known().stream())
                .distinct()
                .toList();
        Datum<Integer> address = unit.asRead().address();
        if (address.isKnown() && !addresses.isEmpty()) {
            out.looked();
            if (!addresses.contains(address.or(0))) {
                String listed = String.join(
                        ", ", addresses.stream().map(String::valueOf).toList());
                differs.add("address " + address.or(0) + " instead of " + listed);
                settings.add("address");
            }
        } else if (address.isMissing() && !addresses.isEmpty()) {
            gaps.add("address as read", unit.ref());
        } else if (address.isKnown()) {
            gaps.add("address as listed", unit.ref());
        }
        text(out, unit, "firmware", unit.firmware(), unit.asRead().firmware(), gaps, differs, settings);
        text(out, unit, "serial number", unit.serial(), unit.asRead().serial(), gaps, differs, settings);
        if (!differs.isEmpty()) {
            out.finding(draft(unit, differs, settings));
        }
    }

    private static void text(
            Outcomes out,
            Unit unit,
            String what,
            Datum<String> listed,
            Datum<String> read,
            Gaps gaps,
            List<String> differs,
            List<String> settings) {
        if (listed.isKnown() && read.isKnown()) {
            out.looked();
            if (!listed.or("").strip().equalsIgnoreCase(read.or("").strip())) {
                differs.add(what + " " + read.or("") + " instead of " + listed.or(""));
                settings.add(what);
            }
        } else if (listed.isKnown() && read.isMissing()) {
            gaps.add(what + " as read", unit.ref());
        } else if (read.isKnown() && listed.isMissing()) {
            gaps.add(what + " as listed", unit.ref());
        }
    }

    private static Draft draft(Unit unit, List<String> differs, List<String> settings) {
        String words = String.join(", ", differs);
        Draft draft = Draft.of(Severity.S3, "as read differs: " + unit.ref() + " says " + words)
                .about(unit.ref())
                .sum(words)
                .why("what is checked of the list is checked of another unit than the one aboard")
                .meter("read " + unit.ref() + " again, with every other unit of its kind unplugged")
                .fix("set " + unit.ref() + " as listed, or put what was read into the list and check it again")
                .input(unit.asRead().address());
        settings.forEach(setting -> draft.at(unit, setting));
        return draft;
    }
}
