package ringout.check.power;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.returns.ReturnGraph;
import ringout.model.Lead;
import ringout.model.PinRole;

/**
 * A unit with a connected supply and no way back for the current.
 *
 * <p>Why it matters: the unit is dead, or its current goes back through a signal pin and burns it, or through the first plug that is
 * made later.
 *
 * <p>Condition: a supply pin of the unit is connected and fed, and no way over 0V leads from the 0V of that rail to the 0V of the
 * source: to the minus of the lowest pack, or to the 0V of the regulator. A return through another plug of the unit, over a
 * sense resistor, a diode in the return or a frame joint is a return; whether it is enough of one is P10.
 *
 * <p>Does not see: a contact that is open or a screw that is loose.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P09",
        name = "return-missing",
        severity = Severity.S1,
        since = "0.1",
        needs = {"0V pins of each unit"})
public final class ReturnMissing implements Sound {
    /** An island of 0V that has no way to a source, and that source's 0V. */
    private record Cut(int island, int home) {}

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        ReturnGraph returns = ReturnGraph.of(at.circuit());
        Gaps gaps = new Gaps();
        Map<Cut, List<Consumer>> cut = new LinkedHashMap<>();
        for (Consumer consumer : power.consumers()) {
            if (!connected(at, power, consumer)) {
                continue;
            }
            if (consumer.zero() < 0) {
                if (!consumer.frameReturn()) {
                    gaps.add(PowerData.ZERO_PIN, at.directory().name(consumer.unit()));
                }
                continue;
            }
            Set<Integer> homes = Returns.homes(power, consumer.plus());
            if (homes.stream().anyMatch(home -> returns.reaches(consumer.zero(), home))) {
                out.looked();
            } else if (!homes.isEmpty() && !power.ties().same(consumer.plus(), consumer.zero())) {
                int home = homes.iterator().next();
                cut.computeIfAbsent(new Cut(returns.island(consumer.zero()), home), key -> new ArrayList<>())
                        .add(consumer);
            }
        }
        cut.forEach((where, units) -> out.finding(draft(at, where.home(), units)));
        gaps.tell(out, PowerData::way);
    }

    private static boolean connected(Situation at, PowerGraph power, Consumer consumer) {
        return at.circuit().aboard(consumer.unit())
                && power.fed(consumer.plus())
                && consumer.inputs().stream().anyMatch(pin -> Supplies.wired(at, pin));
    }

    private static Draft draft(Situation at, int home, List<Consumer> units) {
        Consumer first = nearest(at, units);
        String ref = at.directory().name(first.unit());
        int pin = first.inputs().stream()
                .filter(p -> Supplies.wired(at, p))
                .findFirst()
                .orElse(first.plus());
        List<Integer> zeros = Supplies.zeroPins(at, first.unit(), first.zero());
        List<String> open = openPlugs(at, zeros);
        List<String> others = units.stream()
                .filter(c -> c.unit() != first.unit())
                .map(c -> at.directory().name(c.unit()))
                .distinct()
                .toList();
        String homeName = at.wiring().name(home);
        Draft draft = Draft.of(
                        Severity.S1,
                        "return missing: " + ref + " is fed at " + at.wiring().name(pin)
                                + ", but no 0V way leads from it to " + homeName)
                .about(units.stream()
                        .map(c -> at.directory().name(c.unit()))
                        .distinct()
                        .toList())
                .path(PowerGraph.of(at.circuit()).tree().trailTo(pin).orElse(ringout.graph.Trail.NONE))
                .sum(sum(at, zeros, open, others, homeName))
                .why("the unit is dead, or its current finds a way back through a signal pin")
                .meter("power off: open from "
                        + (zeros.isEmpty() ? ref + " 0V" : at.wiring().name(zeros.get(0))) + " to " + homeName
                        + ", under 1 ohm when right")
                .fix("connect 0V of " + ref + (open.isEmpty() ? "" : " at " + String.join(" or ", open)) + " to "
                        + homeName)
                .explains("P10", "S04", "S05", "T02", "T13", "T14", "T15", "M16", "P11", "P13");
        open.forEach(plug -> draft.cause(plug + " open"));
        if (open.isEmpty() || zeros.stream().noneMatch(zero -> Supplies.wired(at, zero))) {
            Supplies.leadsAt(at, zeros).forEach(draft::seen);
        }
        openReturns(at, Set.of(home, first.zero())).forEach(plug -> draft.cause(plug + " open"));
        PowerGraph power = PowerGraph.of(at.circuit());
        for (Consumer unit : units) {
            draft.cause(at.directory().name(unit.unit()) + "/0V");
            power.feeding(unit.plus()).stream()
                    .filter(source -> source.kind() == PowerSource.Kind.REGULATOR)
                    .forEach(source -> draft.cause(at.directory().name(source.unit()) + "/0V"));
        }
        Supplies.leadsAt(at, List.of(pin)).forEach(draft::seen);
        draft.seen(at.directory().unit(first.unit()));
        return draft;
    }

    /** Plugs of 0V alone, on either side of the cut, that no lead reaches: the lead that is missing may end there. */
    private static List<String> openReturns(Situation at, Set<Integer> sides) {
        ReturnGraph returns = ReturnGraph.of(at.circuit());
        Set<Integer> islands = sides.stream().map(returns::island).collect(Collectors.toSet());
        List<String> open = new ArrayList<>();
        for (int pin = 0; pin < at.wiring().pinCount(); pin++) {
            boolean zero = at.wiring().is(pin, PinRole.ZERO_V) || at.wiring().is(pin, PinRole.PACK_MINUS);
            boolean bare = zero
                    && at.wiring().plug(pin).pins().size() == 1
                    && at.wiring().wiresAt(pin).length == 0;
            if (bare && islands.contains(returns.island(pin))) {
                open.add(at.wiring()
                        .plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin)));
            }
        }
        return open;
    }

    /** The unit with the fewest steps of supply to it: where the cut is, rather than behind it. */
    private static Consumer nearest(Situation at, List<Consumer> units) {
        PowerGraph power = PowerGraph.of(at.circuit());
        return units.stream()
                .min(Comparator.comparingInt(c -> power.tree()
                        .trailTo(c.plus())
                        .map(trail -> trail.steps().size())
                        .orElse(Integer.MAX_VALUE)))
                .orElseThrow();
    }

    /** Plugs whose 0V has no conductor; those that carry power only, where there are such. */
    private static List<String> openPlugs(Situation at, List<Integer> zeros) {
        List<Integer> open =
                zeros.stream().filter(pin -> !Supplies.wired(at, pin)).toList();
        boolean anyPower = open.stream().anyMatch(pin -> carriesPower(at, pin));
        return open.stream()
                .filter(pin -> !anyPower || carriesPower(at, pin))
                .map(pin -> at.wiring()
                        .plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin)))
                .distinct()
                .toList();
    }

    private static boolean carriesPower(Situation at, int pin) {
        return at.wiring().plug(pin).pins().stream()
                .map(own -> own.role().or(PinRole.NONE))
                .allMatch(role -> PowerGraph.isSupply(role) || role == PinRole.ZERO_V || role == PinRole.PACK_MINUS);
    }

    private static String sum(Situation at, List<Integer> zeros, List<String> open, List<String> others, String home) {
        String by = String.join(
                ", ", Supplies.leadsAt(at, zeros).stream().map(Lead::id).toList());
        long made = zeros.stream().filter(pin -> Supplies.wired(at, pin)).count();
        return "0V pins with a conductor: " + made + " of " + zeros.size()
                + (open.isEmpty()
                        ? ", " + by + " leads elsewhere than to " + home
                        : ", none at " + String.join(", ", open))
                + (others.isEmpty() ? "" : "; behind it also " + String.join(", ", others));
    }
}
