package ringout.check.power;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Part;
import ringout.graph.Trail;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * A connected supply input that nothing feeds.
 *
 * <p>Why it matters: the unit is dark, and all behind it.
 *
 * <p>Condition: a conductor is mated at a supply input, and no working pack, regulator or output reaches its net, also not through
 * diodes, links, fuses or closed switches. A regulator works when its own input is fed; a cell inside the unit or a USB
 * supply that is plugged counts as a source. What the declared state itself takes away is not reported. Or the plug of the
 * supply has its lead, but none of the supply contacts of the unit has a conductor.
 *
 * <p>Does not see: a blown fuse, a pack that is flat, too low a voltage (P04).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P05",
        name = "no-source",
        severity = Severity.S2,
        since = "0.1",
        needs = {"role of each supply contact"})
public final class NoSource implements Check {
    /** So many rows are shown; with more, none of them is at fault by itself. */
    private static final int ROWS = 3;

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Map<Integer, List<PowerSource>> idle = idle(power);
        Map<Integer, List<Consumer>> byRoot = new LinkedHashMap<>();
        Set<String> unknown = new LinkedHashSet<>();
        for (Consumer consumer : power.consumers()) {
            Optional<Integer> input = input(at, consumer);
            if (input.isEmpty()) {
                if (OpenSupply.is(at, consumer)) {
                    out.finding(OpenSupply.draft(at, consumer));
                }
                continue;
            }
            if (power.fed(consumer.plus())) {
                out.looked();
            } else if (!takenAway(at, consumer)) {
                int root = root(power, idle, power.ties().of(consumer.plus()));
                if (hidden(at, root).isPresent()) {
                    unknown.add(at.wiring().name(hidden(at, root).orElse(0)));
                } else {
                    byRoot.computeIfAbsent(root, key -> new ArrayList<>()).add(consumer);
                }
            }
        }
        byRoot.forEach((root, dark) -> out.finding(draft(at, idle, root, dark)));
        askKinds(at, out);
        if (!unknown.isEmpty()) {
            out.cannotTell(
                    "role of " + String.join(", ", unknown),
                    "look it up in the maker's pin-out",
                    5 * unknown.size(),
                    unknown.toArray(new String[0]));
        }
    }

    /** A part of which nobody said what it is may be a source, pass what comes, or neither. */
    private static void askKinds(Situation at, Outcomes out) {
        Map<String, Set<String>> open = new TreeMap<>();
        for (Part part : at.wiring().parts()) {
            if (part.origin() instanceof Part.Inner inner
                    && inner.part().kind().isMissing()
                    && at.circuit().aboard(inner.unit())) {
                open.computeIfAbsent(
                                "kind of part " + inner.part().name() + " of "
                                        + at.directory().type(inner.unit()).name(),
                                key -> new TreeSet<>())
                        .add(at.directory().name(inner.unit()));
            }
        }
        open.forEach((datum, units) ->
                out.cannotTell(datum, "look it up in the maker's data", 5, units.toArray(new String[0])));
    }

    /** A supply input of a consumer at which a conductor is mated. */
    private static Optional<Integer> input(Situation at, Consumer consumer) {
        if (!at.circuit().aboard(consumer.unit())) {
            return Optional.empty();
        }
        return consumer.inputs().stream()
                .filter(pin -> at.wiring().is(pin, PinRole.SUPPLY_IN) && Supplies.wired(at, pin))
                .findFirst();
    }

    /** Sources that do not work, by the tie they would lift. */
    private static Map<Integer, List<PowerSource>> idle(PowerGraph power) {
        Map<Integer, List<PowerSource>> idle = new HashMap<>();
        for (PowerSource source : power.sources()) {
            if (!power.works(source)) {
                idle.computeIfAbsent(power.ties().of(source.plus()), key -> new ArrayList<>())
                        .add(source);
            }
        }
        return idle;
    }

    /** The first dark tie on the way up: the input of the regulator that has none, and so on. */
    private static int root(PowerGraph power, Map<Integer, List<PowerSource>> idle, int tie) {
        List<PowerSource> chain = chain(power, idle, tie);
        return chain.isEmpty()
                ? tie
                : power.ties().of(chain.get(chain.size() - 1).inputs().get(0));
    }

    /** The regulators on the way up that do not work for want of an input, the nearest first. */
    private static List<PowerSource> chain(PowerGraph power, Map<Integer, List<PowerSource>> idle, int tie) {
        Set<PowerSource> chain = new LinkedHashSet<>();
        int next = tie;
        while (true) {
            List<PowerSource> sources = idle.getOrDefault(next, List.of());
            if (sources.isEmpty() || sources.get(0).inputs().isEmpty() || !chain.add(sources.get(0))) {
                return List.copyOf(chain);
            }
            next = power.ties().of(sources.get(0).inputs().get(0));
        }
    }

    /** Whether it is the state that takes the source away: with everything made and aboard there is one. */
    private static boolean takenAway(Situation at, Consumer consumer) {
        return PowerGraph.of(at.whole()).fed(consumer.plus());
    }

    /** A mated contact of unknown role on a dark tie: it may be the source. */
    private static Optional<Integer> hidden(Situation at, int tie) {
        PowerGraph power = PowerGraph.of(at.circuit());
        for (int pin = 0; pin < at.wiring().pinCount(); pin++) {
            if (at.wiring().pin(pin).role().isMissing() && power.ties().of(pin) == tie && Supplies.wired(at, pin)) {
                return Optional.of(pin);
            }
        }
        return Optional.empty();
    }

    private static Draft draft(Situation at, Map<Integer, List<PowerSource>> idle, int root, List<Consumer> dark) {
        List<String> names =
                dark.stream().map(c -> Supplies.name(at, c)).distinct().toList();
        Consumer first = dark.get(0);
        int pin = input(at, first).orElse(first.plus());
        List<Integer> supply = supplyPins(at, root);
        List<Lead> leads = Supplies.leadsAt(at, supply);
        List<String> open = openPlugs(at, supply);
        Draft draft = Draft.of(
                        Severity.S2,
                        "no source: nothing feeds "
                                + (names.size() == 1
                                        ? at.wiring().name(pin)
                                        : names.size() + " units (" + String.join(", ", names) + ")"))
                .about(names)
                .path(way(at, supply, pin))
                .sum(reason(at, idle.getOrDefault(root, List.of()), behind(at, idle, first), leads, open))
                .why(names.size() == 1 ? "the unit is dark" : "the units are dark")
                .meter("power on: 0 V at " + at.wiring().name(pin))
                .fix(
                        open.isEmpty()
                                ? "feed the net of " + at.wiring().name(pin) + " from a supply output"
                                : "feed " + String.join(" or ", open) + " from a pack or a supply output")
                .explains("T01", "T02", "S02", "S22", "T21", "P04");
        leads.stream().limit(ROWS).forEach(leads.size() > ROWS ? draft::seen : draft::at);
        open.forEach(plug -> draft.cause(plug + " open"));
        Supplies.leadsAt(at, List.of(pin)).forEach(draft::seen);
        openPassive(at, root).forEach(plug -> draft.cause(plug + " open"));
        openPacks(at).forEach(plug -> draft.cause(plug + " open"));
        names.forEach(name -> draft.cause(name + " unfed"));
        draft.cause("supply of " + at.wiring().name(supply.isEmpty() ? pin : supply.get(0)));
        dark.stream()
                .map(c -> at.directory().unit(c.unit()))
                .distinct()
                .limit(ROWS)
                .forEach(draft::seen);
        return draft;
    }

    private static List<Integer> supplyPins(Situation at, int tie) {
        PowerGraph power = PowerGraph.of(at.circuit());
        List<Integer> pins = new ArrayList<>();
        for (int pin = 0; pin < at.wiring().pinCount(); pin++) {
            boolean supply = PowerGraph.isSupply(at.wiring().pin(pin).role().or(PinRole.NONE));
            if (supply
                    && power.ties().of(pin) == tie
                    && at.circuit().aboard(at.wiring().unitOf(pin))) {
                pins.add(pin);
            }
        }
        return pins;
    }

    private static Trail way(Situation at, List<Integer> supply, int pin) {
        return supply.stream()
                .filter(from -> from != pin)
                .flatMap(from -> at.circuit().trail(from, pin).stream())
                .findFirst()
                .orElse(Trail.NONE);
    }

    /** Plugs of the dark tie that no lead reaches: where the supply should come in. */
    private static List<String> openPlugs(Situation at, List<Integer> pins) {
        return pins.stream()
                .filter(pin -> !at.wiring().is(pin, PinRole.SUPPLY_OUT))
                .filter(pin -> at.wiring().wiresAt(pin).length == 0)
                .map(pin -> at.wiring()
                        .plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin)))
                .distinct()
                .toList();
    }

    /** Sockets of boards and splices on the dark tie that no lead reaches. */
    private static List<String> openPassive(Situation at, int tie) {
        List<Integer> pins = new ArrayList<>();
        for (int pin = 0; pin < at.wiring().pinCount(); pin++) {
            if (at.wiring().is(pin, PinRole.PASSIVE)
                    && PowerGraph.of(at.circuit()).ties().of(pin) == tie) {
                pins.add(pin);
            }
        }
        return openPlugs(at, pins);
    }

    /** The regulators between that give nothing for want of an input. */
    private static String behind(Situation at, Map<Integer, List<PowerSource>> idle, Consumer first) {
        PowerGraph power = PowerGraph.of(at.circuit());
        return chain(power, idle, power.ties().of(first.plus())).stream()
                .map(source -> Supplies.name(at, source) + " gives nothing without its input; ")
                .collect(Collectors.joining());
    }

    /** Plus contacts of packs aboard that no lead reaches. */
    private static List<String> openPacks(Situation at) {
        List<String> open = new ArrayList<>();
        for (int pin = 0; pin < at.wiring().pinCount(); pin++) {
            if (at.wiring().is(pin, PinRole.PACK_PLUS)
                    && at.wiring().wiresAt(pin).length == 0
                    && at.circuit().aboard(at.wiring().unitOf(pin))) {
                open.add(at.wiring()
                        .plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin)));
            }
        }
        return open;
    }

    private static String reason(
            Situation at, List<PowerSource> idle, String behind, List<Lead> leads, List<String> open) {
        String none = idle.isEmpty()
                ? behind + "no pack, regulator or supply output " + (behind.isEmpty() ? "on this net" : "comes there")
                : String.join(", ", idle.stream().map(s -> Supplies.name(at, s)).toList()) + " does not work here";
        String by = leads.isEmpty()
                ? ""
                : ", only " + String.join(", ", leads.stream().map(Lead::id).toList());
        List<String> bare = new ArrayList<>(open);
        bare.addAll(openPacks(at));
        return none + by + (bare.isEmpty() ? "" : "; no lead at " + String.join(", ", bare));
    }
}
