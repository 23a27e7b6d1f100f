package ringout.check.topology;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.Trunk;
import ringout.model.BusPort;
import ringout.model.Datum;

/**
 * A branch off the trunk of a bus that is longer than the limit, or branches that are too long together.
 *
 * <p>Why it matters: the open end of a branch reflects; the errors come with the rate and with the temperature.
 *
 * <p>Formula: lead from the trunk to the farthest unit of the branch, 20 mm for each T-adapter on the way, and the branch inside
 * that unit, in m, against the limit for one; at 1 Mbit/s the sum of all branches against the limit for all. The trunk is
 * the path between the two terminators, or with another number of them the longest path. S2 when flight depends on a unit
 * of that bus, else S3.
 *
 * <p>Does not see: what hangs beyond an end of the terminated trunk (T07), a ring, which has no trunk (T09).
 *
 * <p>Reference: DroneCAN specification, section 8 (0.3 m each at any rate); sum and T-adapter: judgement.
 */
@CheckInfo(
        code = "T08",
        name = "stub-too-long",
        severity = Severity.S2,
        since = "0.1",
        needs = {"length of each bus lead", "branch inside each bus unit"})
public final class StubTooLong implements Check {
    private static final double FULL_RATE_KBIT = 1000;

    @Override
    public void look(Situation at, Outcomes out) {
        Buses buses = Buses.of(at.circuit());
        for (BusSegment segment : buses.segments()) {
            boolean right = buses.trunk(segment).terminated();
            if (segment.wired() && segment.rings() == 0 && (right || !Removals.judgedElsewhere(at))) {
                new Segment(at, out, buses, segment).look();
            }
        }
    }

    /** Looks at one segment. */
    private static final class Segment {
        private final Situation at;
        private final Outcomes out;
        private final Buses buses;
        private final BusSegment segment;
        private final Trunk trunk;
        private final Threshold limit;
        private final List<String> unknownInside = new ArrayList<>();
        private final List<StubLength> stubs = new ArrayList<>();

        private Segment(Situation at, Outcomes out, Buses buses, BusSegment segment) {
            this.at = at;
            this.out = out;
            this.buses = buses;
            this.segment = segment;
            this.trunk = buses.trunk(segment);
            this.limit = at.limit(Thresholds.BUS_STUB);
        }

        private void look() {
            for (Trunk.Branch branch : trunk.branches()) {
                if (!(trunk.terminated() && branch.atEnd())) {
                    branch.hubs().forEach(this::inside);
                    stubs.add(StubLength.of(buses, branch, inside(branch.tip())));
                }
            }
            for (int index : trunk.hubs()) {
                double inside = inside(index);
                if (inside > 0) {
                    stubs.add(StubLength.inside(buses.hubs().get(index), inside));
                }
            }
            boolean unsureTrunk = !trunk.terminated()
                    && !trunk.line()
                    && !trunk.withoutLength().isEmpty();
            List<StubLength> tooLong =
                    stubs.stream().filter(stub -> stub.mm() > limit.value()).toList();
            if (unsureTrunk) {
                Metres.ask(out, trunk.withoutLength());
                return;
            }
            tooLong.forEach(stub -> out.finding(draft(stub)));
            if (known(stubs.stream().filter(stub -> !tooLong.contains(stub)).toList()) && tooLong.isEmpty()) {
                sum();
            }
        }

        /** The branch inside a unit in mm; nothing inside a passive point. */
        private double inside(int index) {
            BusHub hub = buses.hubs().get(index);
            if (!hub.member()) {
                return 0;
            }
            Datum<Double> stub = buses.port(hub).map(BusPort::stubMm).orElse(Datum.notAsked());
            if (stub.isMissing()) {
                unknownInside.add(buses.name(hub));
            }
            return stub.or(0.0);
        }

        /** Whether all lengths of some branches are known; asks for those that are not. */
        private boolean known(List<StubLength> within) {
            List<Integer> open = within.stream()
                    .flatMap(stub -> stub.all().stream())
                    .filter(link -> !buses.lengthMm(link).isKnown())
                    .toList();
            if (!open.isEmpty()) {
                Metres.ask(out, trunk.withoutLength(open));
            }
            List<String> units = unknownInside.stream().distinct().sorted().toList();
            if (!units.isEmpty()) {
                out.cannotTell(
                        "branch inside " + String.join(", ", units),
                        "ask the maker, or open the unit and measure from its socket to the bus driver",
                        5,
                        units.toArray(new String[0]));
            }
            return open.isEmpty() && units.isEmpty();
        }

        private void sum() {
            Threshold all = at.limit(Thresholds.BUS_STUB_SUM);
            double total = stubs.stream().mapToDouble(StubLength::totalMm).sum();
            Datum<Double> rate = buses.rateKbit(segment);
            if (total > all.value() && !rate.isKnown()) {
                out.cannotTell(
                        "bit rate of " + buses.name(segment),
                        "read it from the parameters of a member",
                        3,
                        buses.name(segment));
                return;
            }
            out.looked();
            if (total > all.value() && rate.or(0.0) >= FULL_RATE_KBIT) {
                out.finding(sumDraft(total, all));
            }
        }

        private Draft sumDraft(double total, Threshold all) {
            List<String> parts = stubs.stream()
                    .map(stub -> buses.name(stub.tip()) + " " + Metres.words(stub.totalMm()))
                    .toList();
            Draft draft = Draft.of(
                            Severity.S3,
                            "stubs too long together: " + Metres.words(total) + " m hang off " + buses.name(segment)
                                    + ", limit " + Metres.words(all.value()) + " m at 1 Mbit/s")
                    .about(buses.name(segment))
                    .sum(String.join(" + ", parts) + " = " + Metres.words(total) + " m, limit "
                            + Metres.words(all.value()) + " m")
                    .judged(Metres.of(total), Metres.of(all.value()), "m", all.source())
                    .why("many short branches load the edges like one long one")
                    .fix("bring the trunk to the units: through their second sockets instead of branches");
            stubs.forEach(stub -> stub.links()
                    .forEach(link -> draft.at(buses.links().get(link).lead())));
            return draft;
        }

        private Draft draft(StubLength stub) {
            String tip = buses.name(stub.tip());
            boolean grave = buses.nodes(segment).stream().anyMatch(hub -> at.flightCritical(buses.name(hub)));
            String where = stub.links().isEmpty()
                    ? tip + " has " + Metres.words(stub.mm()) + " m of " + buses.name(segment) + " inside"
                    : tip + " hangs " + Metres.words(stub.leadMm()) + " m off the trunk of " + buses.name(segment);
            Draft draft = Draft.of(grave ? Severity.S2 : Severity.S3, "stub too long: " + where)
                    .about(tip, buses.name(segment))
                    .path(at.circuit()
                            .trail(stub.foot().leg(), stub.tip().leg())
                            .orElse(Trail.NONE))
                    .sum(stub.sum() + ", limit " + Metres.words(limit.value()) + " m")
                    .judged(Metres.of(stub.mm()), Metres.of(limit.value()), "m", limit.source())
                    .why("the open end reflects: errors at full rate, first at " + tip)
                    .meter("tape along the branch to " + tip + ": " + Metres.words(limit.value())
                            + " m at most when right, " + Metres.words(stub.mm()) + " m by the list")
                    .fix(
                            stub.links().isEmpty()
                                    ? "put " + tip + " at an end of the bus with its terminator on"
                                    : "lead the trunk through " + tip + ", or shorten the branch to "
                                            + Metres.words(limit.value()) + " m")
                    .explains("T10");
            stub.links()
                    .forEach(link -> buses.links()
                            .get(link)
                            .leads()
                            .forEach(lead -> draft.at(lead).input(lead.lengthMm())));
            if (stub.links().isEmpty()) {
                draft.at(buses.unit(stub.tip()), "stub");
            }
            return draft;
        }
    }
}
