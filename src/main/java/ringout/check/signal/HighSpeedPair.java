package ringout.check.signal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.signal.PairLeads;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.SerialPort;

/**
 * An Ethernet, digital video or USB lead whose pairs are broken up, too long, or untwisted at the plug.
 *
 * <p>Why it matters: continuity is perfect, yet the link drops to a low rate, loses frames or never comes up, mostly when cold, hot or
 * beside a transmitter.
 *
 * <p>Condition: the two conductors of a pair at one end do not meet the two of one pair at the other, plus to plus; or they are
 * not the two that are twisted together in the lead (split pair: 1-2, 3-4, 5-6, 7-8 passes every continuity test); or the lead is
 * longer than the maker of either port allows; or a pair is untwisted for more than 13 mm at a plug. An Ethernet lead with the
 * T568A order at one end and T568B at the other keeps its pairs.
 *
 * <p>Does not see: impedance; pairs that run through a board or a joint; a lead not twisted at all (T14).
 *
 * <p>Reference: ANSI/TIA-568 (pairs 1-2, 3-6, 4-5, 7-8); 13 mm: common practice, no source; length: maker's data.
 */
@CheckInfo(
        code = "S24",
        name = "high-speed-pair",
        severity = Severity.S3,
        since = "0.1",
        needs = {
            "which conductors are twisted together",
            "longest lead the port allows",
            "untwisted length at the plugs"
        })
public final class HighSpeedPair implements Check {
    private static final String LONGEST = "longest lead";
    private static final String LENGTH = "length";

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        for (PairLeads.PairLead lead : PairLeads.of(at.circuit())) {
            pairs(at, out, lead, gaps);
            length(at, out, lead, gaps);
            plug(at, out, lead.lead(), gaps);
        }
        gaps.tell(out, datum -> switch (datum) {
            case LONGEST -> new Gaps.Way("look it up in the maker's data", 3);
            case LENGTH -> new Gaps.Way("measure it along the lead", 2);
            default -> new Gaps.Way("look at the lead at both plugs", 2);
        });
    }

    private static void pairs(Situation at, Outcomes out, PairLeads.PairLead lead, Gaps gaps) {
        List<String> faults = new ArrayList<>();
        for (PairLeads.Run run : lead.runs()) {
            fault(at.wiring(), run).ifPresent(faults::add);
        }
        if (!faults.isEmpty()) {
            out.finding(draft(lead.lead(), "pairs", String.join("; ", faults))
                    .source("ANSI/TIA-568 and the maker's pin-out")
                    .meter("wire-map tester with pair test on " + lead.lead().id() + ", not a continuity tester")
                    .fix("make " + lead.lead().id() + " anew with each pair on one pair, plus to plus"));
            return;
        }
        Datum<String> twisted = lead.lead().pairs();
        if (twisted.isKnown()) {
            out.looked();
            Twists twists = Twists.of(twisted.or(""));
            List<String> split = lead.runs().stream()
                    .map(run -> split(at.wiring(), run, twists))
                    .flatMap(Optional::stream)
                    .toList();
            if (!split.isEmpty()) {
                out.finding(draft(lead.lead(), "pairs", "split pair: " + String.join(", ", split))
                        .source("ANSI/TIA-568 and the maker's pin-out")
                        .meter("wire-map tester with pair test on "
                                + lead.lead().id() + "; continuity is perfect")
                        .fix("make " + lead.lead().id() + " anew with the conductors of each pair twisted together"));
            }
        } else if (lead.runs().size() == 1 && lead.lead().twisted().isKnown()) {
            out.looked();
        } else {
            gaps.add("twist of the pairs", lead.lead().id());
        }
    }

    /** What is wrong with a pair from contact to contact. */
    private static Optional<String> fault(Wiring wiring, PairLeads.Run run) {
        if (run.plus().isEmpty() || run.minus().isEmpty()) {
            int pin = run.plus().or(run::minus).orElseThrow().fromPin();
            return Optional.of(wiring.name(pin) + " goes without the other half of its pair");
        }
        int plus = run.plus().get().toPin();
        int minus = run.minus().get().toPin();
        String ends = "pair " + wiring.name(run.plus().get().fromPin()) + ", "
                + wiring.pin(run.minus().get().fromPin()).number() + " goes to " + wiring.name(plus) + ", "
                + wiring.pin(minus).number();
        if (!PairLeads.pairOf(wiring, plus).equals(PairLeads.pairOf(wiring, minus))) {
            return Optional.of(ends + " of two pairs");
        }
        boolean right = wiring.is(plus, ringout.model.PinRole.PAIR_P) && wiring.is(minus, ringout.model.PinRole.PAIR_N);
        return right ? Optional.empty() : Optional.of(ends + " with plus and minus crossed");
    }

    private static Optional<String> split(Wiring wiring, PairLeads.Run run, Twists twists) {
        Wire plus = run.plus().orElseThrow();
        Wire minus = run.minus().orElseThrow();
        String a = wiring.pin(plus.fromPin()).number();
        String b = wiring.pin(minus.fromPin()).number();
        return twists.together(a, b)
                ? Optional.empty()
                : Optional.of(a + " and " + b + " of "
                        + wiring.plugName(run.from().unit(), run.from().plug())
                        + " are a pair but not twisted together");
    }

    private static void length(Situation at, Outcomes out, PairLeads.PairLead lead, Gaps gaps) {
        PairLeads.Run run = lead.runs().get(0);
        Wire wire = run.plus().or(run::minus).orElseThrow();
        Datum<Double> here = most(at, wire.fromPin());
        Datum<Double> there = most(at, wire.toPin());
        Datum<Double> length = lead.lead().lengthMm();
        if (here.isMissing() && there.isMissing()) {
            gaps.add(LONGEST, at.wiring().unit(wire.fromPin()).type());
            gaps.add(LONGEST, at.wiring().unit(wire.toPin()).type());
        }
        if (!length.isKnown()) {
            gaps.add(LENGTH, lead.lead().id());
        }
        double limit = Math.min(here.or(Double.POSITIVE_INFINITY), there.or(Double.POSITIVE_INFINITY));
        if (length.isKnown() && (here.isKnown() || there.isKnown())) {
            out.looked();
            if (length.or(0.0) > limit) {
                String words = Figures.of(length.or(0.0)) + " mm, the ports allow " + Figures.of(limit) + " mm";
                out.finding(draft(lead.lead(), "length", words)
                        .judged(length.or(0.0), limit, "mm", "maker's data of the port")
                        .input(length)
                        .fix("shorten " + lead.lead().id() + ", or fit a repeater"));
            }
        }
    }

    private static Datum<Double> most(Situation at, int pin) {
        String plug = at.wiring().plug(pin).name();
        return at.directory().type(at.wiring().unitOf(pin)).serials().stream()
                .filter(port -> port.name().equals(plug))
                .findFirst()
                .map(SerialPort::maxLengthMm)
                .orElse(Datum.notAsked());
    }

    private static void plug(Situation at, Outcomes out, Lead lead, Gaps gaps) {
        Threshold limit = at.limit(Thresholds.PAIR_OPEN_AT_PLUG);
        Datum<Double> open = lead.untwistedMm();
        if (open.isMissing()) {
            gaps.add("untwisted length at the plugs", lead.id());
        } else if (open.or(0.0) > limit.value()) {
            String words = "untwisted for " + Figures.of(open.or(0.0)) + " mm at a plug, limit "
                    + Figures.of(limit.value()) + " mm";
            out.finding(draft(lead, "plug", words)
                    .judged(open.or(0.0), limit.value(), "mm", limit.source())
                    .input(open)
                    .fix("cut back the plug of " + lead.id() + " and keep the twist up to the contacts"));
        } else {
            out.looked();
        }
    }

    private static Draft draft(Lead lead, String what, String words) {
        return Draft.of(Severity.S3, "high-speed pair: " + lead.id() + ", " + words)
                .about(lead.id(), what)
                .at(lead)
                .sum(words)
                .why("continuity is perfect, yet the link is slow, loses frames or never comes up");
    }
}
