package ringout.check.address;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Bus;
import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.model.shape.Scalars;

/**
 * Members of one bus set to different bit rates, or to a rate the unit cannot do.
 *
 * <p>Why it matters: a node at the wrong rate sees errors in every frame and says so, which can take the whole bus down.
 *
 * <p>Condition: the rate set at a unit differs from that of its bus as declared, or else from the rate most members have; or it
 * is none of the rates the unit can do. Units that find the rate by themselves fit any.
 *
 * <p>Does not see: sample points, the rate of a faster data phase.
 *
 * <p>Reference: ISO 11898-1 (one rate on a bus).
 */
@CheckInfo(
        code = "A04",
        name = "rate-mismatch",
        severity = Severity.S2,
        since = "0.1",
        needs = {"bit rate of each bus unit"})
public final class RateMismatch implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        for (Members members : Members.all(at)) {
            look(out, members);
        }
    }

    private static void look(Outcomes out, Members members) {
        Map<Double, List<Members.Member>> byRate = new TreeMap<>();
        List<Members.Member> open = new ArrayList<>();
        for (Members.Member node : members.nodes()) {
            boolean auto =
                    members.port(node).filter(port -> port.autoRate().is(true)).isPresent();
            Datum<Double> rate = members.rateKbit(node);
            if (auto) {
                out.looked();
            } else if (rate.isKnown()) {
                byRate.computeIfAbsent(rate.or(0.0), key -> new ArrayList<>()).add(node);
                cannot(members, node, rate.or(0.0)).ifPresent(out::finding);
            } else if (rate.isMissing()) {
                open.add(node);
            }
        }
        Optional<Double> declared = members.buses()
                .declaration(members.segment())
                .map(Bus::rateKbit)
                .flatMap(Datum::known);
        Optional<Double> right = declared.or(() -> most(byRate));
        if (open.isEmpty() && right.isPresent()) {
            out.looked();
        }
        right.ifPresent(kbit -> byRate.forEach((rate, nodes) -> {
            if (Double.compare(rate, kbit) != 0) {
                nodes.forEach(node -> out.finding(draft(members, node, rate, kbit, declared.isPresent())));
            }
        }));
        members.ask(out, "bit rate", "read it from the parameters of the unit", open);
    }

    /** The rate most nodes have; of equal counts the higher one. */
    private static Optional<Double> most(Map<Double, List<Members.Member>> byRate) {
        Optional<Double> best = Optional.empty();
        int count = 0;
        for (Map.Entry<Double, List<Members.Member>> entry : byRate.entrySet()) {
            if (entry.getValue().size() >= count) {
                count = entry.getValue().size();
                best = Optional.of(entry.getKey());
            }
        }
        return best;
    }

    private static Optional<Draft> cannot(Members members, Members.Member node, double rate) {
        List<Double> can = members.port(node).map(BusPort::ratesKbit).orElse(List.of());
        if (can.isEmpty() || can.contains(rate)) {
            return Optional.empty();
        }
        String rates = can.stream().map(Scalars::number).collect(Collectors.joining(", "));
        return Optional.of(Draft.of(
                        Severity.S2,
                        "rate the unit cannot do: " + node.words() + " is listed at " + Scalars.number(rate)
                                + " kbit/s, it does " + rates)
                .about(node.unit().ref(), "rate of " + node.unit().ref())
                .at(node.unit(), "rate")
                .input(members.rateKbit(node))
                .sum(Scalars.number(rate) + " is none of " + rates + " kbit/s")
                .source("ISO 11898-1")
                .why("it runs at another rate than listed, and may take the bus down")
                .fix("set " + node.unit().ref() + " to the rate of its bus"));
    }

    private static Draft draft(Members members, Members.Member node, double rate, double right, boolean declared) {
        String ref = node.unit().ref();
        Draft draft = Draft.of(
                        Severity.S2,
                        "bit rate mismatch: " + node.words() + " is set to " + Scalars.number(rate) + " kbit/s, "
                                + members.name() + " runs at " + Scalars.number(right))
                .about(ref)
                .at(node.unit(), "rate")
                .input(members.rateKbit(node))
                .sum(Scalars.number(rate) + " against " + Scalars.number(right) + " kbit/s"
                        + (declared ? " as declared" : " at most members"))
                .judged(rate, right, "kbit/s", "ISO 11898-1")
                .why("it sees errors in every frame and may take the whole bus down")
                .meter("unplug " + ref + ": the errors stop")
                .fix("set " + ref + " to " + Scalars.number(right) + " kbit/s");
        members.bridges().forEach(draft::cause);
        return draft;
    }
}
