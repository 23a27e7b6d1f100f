package ringout.check.redundancy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.loss.Pair;
import ringout.model.Datum;
import ringout.model.Unit;

/**
 * Redundant units with one firmware or one setting.
 *
 * <p>Why it matters: a fault of the firmware, or one wrong entry, takes both on the same day. It is often wanted so, for simple upkeep;
 * then it is worth knowing.
 *
 * <p>Condition: two units that stand in for each other are of one type and run one firmware version, as read or else as listed.
 *
 * <p>Does not see: parameters of the controller that both depend on; hardware of one batch.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "R07",
        name = "redundant-pair-common-firmware",
        severity = Severity.S5,
        since = "0.3",
        needs = {"which units are redundant", "firmware of both, as read"})
public final class CommonFirmware implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<String> same = new ArrayList<>();
        List<String> names = new ArrayList<>();
        Set<String> unsaid = new TreeSet<>();
        for (Pair pair : Pair.of(at.circuit())) {
            if (pair.inputs()) {
                continue;
            }
            Unit a = at.directory().unit(pair.a().unit());
            Unit b = at.directory().unit(pair.b().unit());
            if (!kind(a).equals(kind(b))) {
                continue;
            }
            Datum<String> first = firmware(a);
            Datum<String> second = firmware(b);
            List.of(a, b).stream()
                    .filter(unit -> firmware(unit) instanceof Datum.Unknown)
                    .forEach(unit -> unsaid.add(unit.ref()));
            if (first.isKnown() && second.isKnown()) {
                out.looked();
                if (first.or("").equals(second.or(""))) {
                    same.add(pair.names() + " " + first.or(""));
                    names.add(a.ref());
                    names.add(b.ref());
                }
            }
        }
        if (!unsaid.isEmpty()) {
            out.cannotTell(
                    "firmware of " + String.join(", ", unsaid),
                    "read it over the service link",
                    3 * unsaid.size(),
                    unsaid.toArray(new String[0]));
        }
        if (!same.isEmpty()) {
            out.finding(Draft.of(Severity.S5, "redundant units on one firmware: " + String.join(", ", same))
                    .about(names)
                    .sum(String.join("; ", same))
                    .why("a fault of the firmware takes both on the same day; often wanted for simple upkeep")
                    .fix("update one of them first and fly with it, then the other")
                    .cause("firmware of redundant units"));
        }
    }

    private static String kind(Unit unit) {
        return unit.type().toUpperCase(Locale.ROOT);
    }

    private static Datum<String> firmware(Unit unit) {
        return unit.asRead().firmware().orElse(unit.firmware());
    }
}
