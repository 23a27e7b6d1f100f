package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.graph.wire.PowerBeside;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * A bus lead or other differential lead that is not twisted.
 *
 * <p>Why it matters: twisting makes both legs pick up the same noise, so that it cancels.
 *
 * <p>Condition: a lead with H and L, or with plus and minus of a pair, longer than 0.3 m and not twisted. S4; S3 when it lies
 * for more than 100 mm beside a lead of more than 20 A.
 *
 * <p>Does not see: how well it is twisted, where the twist ends at the plug.
 *
 * <p>Reference: length: common practice, no source; DroneCAN specification, section 8 (flat cable only in very small, quiet
 * installations).
 */
@CheckInfo(
        code = "T14",
        name = "pair-not-twisted",
        severity = Severity.S4,
        since = "0.1",
        needs = {"whether each bus lead is twisted", "length of each bus lead"})
public final class PairNotTwisted implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Threshold limit = at.limit(Thresholds.PAIR_UNTWISTED);
        Map<Integer, Lead> leads = new TreeMap<>();
        for (Wire wire : at.wiring().wires()) {
            if (pair(at, wire.fromPin()) && pair(at, wire.toPin())) {
                leads.put(wire.leadIndex(), wire.lead());
            }
        }
        List<String> twistUnknown = new ArrayList<>();
        List<Lead> bare = new ArrayList<>();
        for (Lead lead : leads.values()) {
            boolean knownShort = lead.lengthMm().isKnown() && lead.lengthMm().or(0.0) <= limit.value();
            if (lead.twisted().is(true) || knownShort) {
                out.looked();
            } else if (lead.twisted().isMissing()) {
                twistUnknown.add(lead.id());
            } else if (!lead.lengthMm().isKnown()) {
                bare.add(lead);
            } else {
                out.finding(draft(at, lead, limit));
            }
        }
        ask(out, twistUnknown, bare);
    }

    private static void ask(Outcomes out, List<String> twistUnknown, List<Lead> bare) {
        if (!twistUnknown.isEmpty()) {
            out.cannotTell(
                    "twist of " + String.join(", ", twistUnknown),
                    "look at the lead",
                    twistUnknown.size(),
                    twistUnknown.toArray(new String[0]));
        }
        if (!bare.isEmpty()) {
            Metres.ask(out, bare);
        }
    }

    private static boolean pair(Situation at, int pin) {
        PinRole role = at.wiring().role(pin).orElse(PinRole.NONE);
        return switch (role) {
            case CAN_H, CAN_L, PAIR_P, PAIR_N -> true;
            case PASSIVE ->
                ringout.graph.bus.Buses.of(at.circuit()).hubOfPin(pin).isPresent();
            default -> false;
        };
    }

    private static Draft draft(Situation at, Lead lead, Threshold limit) {
        double mm = lead.lengthMm().or(0.0);
        Map<String, Double> power = beside(at, lead);
        String beside = power.isEmpty()
                ? ""
                : ", beside " + String.join(", ", power.keySet()) + " of "
                        + String.join(
                                ", ",
                                power.values().stream()
                                        .map(ringout.model.shape.Scalars::number)
                                        .toList())
                        + " A";
        return Draft.of(
                        power.isEmpty() ? Severity.S4 : Severity.S3,
                        "pair not twisted: " + lead.id() + ", " + Metres.words(mm) + " m" + beside)
                .about(lead.id())
                .at(lead)
                .input(lead.lengthMm())
                .sum(Metres.words(mm) + " m not twisted, limit " + Metres.words(limit.value()) + " m" + beside)
                .judged(Metres.of(mm), Metres.of(limit.value()), "m", limit.source())
                .why("the legs pick up noise differently, and it no longer cancels")
                .fix(
                        power.isEmpty()
                                ? "twist the pair"
                                : "twist the pair, and lead " + lead.id() + " away from "
                                        + String.join(", ", power.keySet()));
    }

    /** Power leads of more than the limit that a lead lies beside for long. */
    private static Map<String, Double> beside(Situation at, Lead lead) {
        return PowerBeside.of(at.circuit())
                .of(
                        lead,
                        at.limit(Thresholds.PAIR_BESIDE).value(),
                        at.limit(Thresholds.PAIR_BESIDE_CURRENT).value());
    }
}
