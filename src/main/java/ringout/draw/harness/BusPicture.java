package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.BusLead;
import ringout.draw.scene.BusMember;
import ringout.draw.scene.BusPoint;
import ringout.draw.scene.BusScene;
import ringout.draw.scene.BusStub;
import ringout.draw.scene.BusTee;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.draw.scene.Move;
import ringout.draw.scene.Presence;
import ringout.draw.scene.Terminator;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.finding.Sketch;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.PortSettings;
import ringout.graph.bus.BusHub;
import ringout.graph.bus.BusLink;
import ringout.graph.bus.BusSegment;
import ringout.graph.bus.Buses;
import ringout.graph.bus.TerminatorAt;
import ringout.graph.bus.Trunk;
import ringout.model.Datum;
import ringout.model.Unit;
import ringout.model.shape.Scalars;

/** One bus as a scene: the longest way from end to end as the trunk, one lead at each of its points as a stub. */
final class BusPicture {
    private static final double MM_PER_M = 1000;

    private final Circuit circuit;
    private final Buses buses;
    private final BusSegment segment;
    private final List<Headline> headlines;
    private final TrunkLine trunk;
    private final Ids ids = new Ids();
    private final List<String> notes = new ArrayList<>();
    private final Map<String, BusMember> members = new LinkedHashMap<>();
    private final Set<String> leads = new HashSet<>();

    BusPicture(Circuit circuit, BusSegment segment, List<Headline> headlines) {
        this.circuit = circuit;
        this.buses = Buses.of(circuit);
        this.segment = segment;
        this.headlines = headlines;
        this.trunk = TrunkLine.of(circuit, buses, segment, extraLeads());
    }

    /** Name for the file of this sheet. */
    String fileName(int number) {
        String name = segment.name().isEmpty() ? Integer.toString(number) : segment.name();
        return "bus-" + name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    }

    /** The scene with its title block. */
    BusScene scene(SheetTitle title) {
        Map<Integer, BusStub> stubs = stubs();
        List<BusPoint> points = new ArrayList<>();
        List<BusLead> between = new ArrayList<>();
        List<BusLink> pending = new ArrayList<>();
        for (int i = 0; i < trunk.hubs().size(); i++) {
            BusHub hub = buses.hubs().get(trunk.hubs().get(i));
            boolean drawn = hub.member() || stubs.containsKey(hub.index());
            if (drawn) {
                if (!points.isEmpty()) {
                    between.add(lead(pending));
                    pending.clear();
                }
                points.add(hub.member() ? member(hub) : new BusTee(teeId(hub)));
            }
            if (i < trunk.links().size()) {
                pending.add(buses.links().get(trunk.links().get(i)));
            }
        }
        Optional<BusLead> ring = ring();
        List<Mark> marks = new ArrayList<>();
        List<FindingLine> lines = new ArrayList<>();
        marks(marks, lines);
        return new BusScene(
                title.info(buses.name(segment), "bus diagram", lines.size()),
                segment.name().isEmpty() ? "not named" : segment.name(),
                rate(),
                points,
                between,
                List.copyOf(stubs.values()),
                ring,
                moves(),
                new BusReadings(circuit).of(segment),
                marks,
                lines,
                notes);
    }

    private String teeId(BusHub hub) {
        return ids.of("hub " + hub.index(), buses.name(hub));
    }

    private Map<Integer, BusStub> stubs() {
        Map<Integer, BusStub> stubs = new LinkedHashMap<>();
        for (Trunk.Branch branch : trunk.branches()) {
            BusHub hub = buses.hubs().get(branch.tip());
            BusHub foot = buses.hubs().get(branch.foot());
            if (branch.all().size() == 1 && hub.member() && !stubs.containsKey(branch.foot())) {
                String at = foot.member() ? memberId(foot) : teeId(foot);
                BusLead lead = lead(List.of(buses.links().get(branch.all().get(0))));
                stubs.put(branch.foot(), new BusStub(at, lead, member(hub)));
            } else {
                notes.add(buses.name(hub) + " hangs " + metres(branch.lengthMm()) + " off the trunk at "
                        + buses.name(foot) + ": see the wiring sheet");
            }
        }
        return stubs;
    }

    private BusLead lead(List<BusLink> links) {
        List<String> names = links.stream().map(link -> link.lead().id()).toList();
        leads.addAll(names);
        double total = 0;
        boolean known = true;
        BusLead.Legs legs = BusLead.Legs.BOTH;
        for (BusLink link : links) {
            total += link.lengthMm().or(0.0);
            known &= link.lengthMm().isKnown();
        }
        String label = String.join("+", names);
        OptionalDouble length = known && total > 0 ? OptionalDouble.of(total / MM_PER_M) : OptionalDouble.empty();
        return new BusLead(
                ids.of("lead " + label, label),
                label,
                length,
                legs,
                extraLeads().containsAll(names) ? Presence.EXTRA : Presence.FITTED);
    }

    /** Leads that a finding takes out. */
    private Set<String> extraLeads() {
        Set<String> extra = new TreeSet<>();
        for (Headline headline : headlines) {
            for (Sketch sketch : headline.finding().sketches()) {
                if (sketch instanceof Sketch.Extra wire && wire.what() == Sketch.What.WIRE) {
                    extra.add(wire.at());
                }
            }
        }
        return extra;
    }

    private String memberId(BusHub hub) {
        return ids.of("hub " + hub.index(), buses.name(hub));
    }

    private BusMember member(BusHub hub) {
        Unit unit = circuit.wiring().directory().unit(hub.unit());
        Datum<Integer> address = PortSettings.of(unit, hub.port())
                .map(setting -> setting.address())
                .orElse(Datum.notAsked());
        Optional<TerminatorAt> at = segment.terminators().stream()
                .filter(terminator -> terminator.hub() == hub.index())
                .findFirst();
        boolean fitted = circuit.wiring().parts().stream()
                .anyMatch(part -> part.origin() instanceof Part.Terminator terminator
                        && terminator.unit() == hub.unit()
                        && terminator.port().name().equals(hub.port()));
        Terminator look = terminator(unit.ref(), at, fitted);
        String words =
                at.map(terminator -> terminator.on() ? "on" : "not known").orElse(fitted ? "off" : "");
        BusMember member = new BusMember(
                memberId(hub),
                unit.ref(),
                unit.what().or(unit.type()),
                address.known().map(String::valueOf).orElse(""),
                look,
                look == Terminator.NONE ? "" : words);
        members.put(unit.ref(), member);
        return member;
    }

    private Terminator terminator(String unit, Optional<TerminatorAt> at, boolean fitted) {
        for (Headline headline : headlines) {
            for (Sketch sketch : headline.finding().sketches()) {
                if (sketch instanceof Sketch.Missing missing
                        && missing.what() == Sketch.What.TERMINATOR
                        && missing.from().equals(unit)) {
                    return Terminator.MISSING;
                }
                if (sketch instanceof Sketch.Extra extra
                        && extra.what() == Sketch.What.TERMINATOR
                        && extra.at().equals(unit)) {
                    return Terminator.EXTRA;
                }
            }
        }
        if (at.isPresent() && at.get().on()) {
            return Terminator.ON;
        }
        return fitted ? Terminator.OFF : Terminator.NONE;
    }

    /** The lead that closes a ring; leads of rings that one line cannot show are told in words. */
    private Optional<BusLead> ring() {
        if (!trunk.untold().isEmpty()) {
            String closing = String.join(
                    ", ", trunk.untold().stream().map(link -> link.lead().id()).toList());
            notes.add("the bus closes a ring by " + closing + ": see the wiring sheets");
        }
        return trunk.closing().map(link -> lead(List.of(link)));
    }

    private String rate() {
        return circuit.wiring().aircraft().buses().stream()
                .filter(bus -> bus.name().equals(segment.name()))
                .flatMap(bus -> bus.rateKbit().known().stream())
                .findFirst()
                .map(kbit -> kbit >= 1000 ? Scalars.number(kbit / 1000) + " Mbit/s" : Scalars.number(kbit) + " kbit/s")
                .orElse("");
    }

    private static String metres(double mm) {
        return String.format(Locale.ROOT, "%.2f m", mm / MM_PER_M);
    }

    private List<Move> moves() {
        List<Move> moves = new ArrayList<>();
        for (Headline headline : headlines) {
            for (Sketch sketch : headline.finding().sketches()) {
                if (sketch instanceof Sketch.Misplaced misplaced) {
                    Optional<String> from = resistor(misplaced.from());
                    Optional<String> to = resistor(misplaced.to());
                    if (from.isPresent() && to.isPresent() && !from.equals(to)) {
                        moves.add(new Move(ids.of("move " + misplaced, "move"), from.get(), to.get()));
                    }
                }
            }
        }
        return moves;
    }

    private Optional<String> resistor(String unit) {
        return Optional.ofNullable(members.get(unit))
                .filter(member -> member.terminator() != Terminator.NONE)
                .map(BusMember::terminatorId);
    }

    private void marks(List<Mark> marks, List<FindingLine> lines) {
        for (int i = 0; i < headlines.size(); i++) {
            Finding finding = headlines.get(i).finding();
            Set<String> targets = targets(finding);
            if (!targets.isEmpty() && finding.severity().atLeast(Severity.S4)) {
                BadgeKind kind = BadgeKind.valueOf(finding.severity().name());
                marks.add(new Mark(i + 1, kind, false, List.copyOf(targets)));
                lines.add(new FindingLine(i + 1, kind, false, finding.code(), finding.title()));
            }
        }
    }

    /** Findings of buses (T, A) and whatever names a lead of this bus. */
    private Set<String> targets(Finding finding) {
        Set<String> targets = new LinkedHashSet<>();
        for (Place place : finding.at()) {
            if (leads.contains(place.row()) && finding.causes().contains(place.row())) {
                targets.add(ids.of("lead " + place.row(), place.row()));
            }
        }
        boolean bus = finding.code().startsWith("T") || finding.code().startsWith("A");
        boolean here = finding.objects().contains(buses.name(segment))
                || finding.title().contains(buses.name(segment))
                || !targets.isEmpty();
        if (bus && here) {
            for (Place place : finding.at()) {
                boolean blamed = finding.causes().stream().anyMatch(cause -> cause.startsWith(place.row() + "/"));
                if (members.containsKey(place.row())
                        && (blamed || finding.objects().contains(place.row()))) {
                    targets.add(members.get(place.row()).id());
                }
            }
        }
        return targets;
    }
}
