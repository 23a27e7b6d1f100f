package ringout.check.redundancy;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Site;
import ringout.graph.loss.Item;
import ringout.graph.loss.Items;
import ringout.graph.loss.Pair;
import ringout.graph.loss.SupplyLoss;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;
import ringout.model.AircraftFunction;
import ringout.model.End;
import ringout.model.PlannedTest;

/**
 * A redundant pair of which one may be dead without notice.
 *
 * <p>Why it matters: the first failure hides behind the second way; the second failure is the last.
 *
 * <p>Condition: for one side of a pair no function that runs through it has an indication or a pre-flight step, no unit type lists an
 * indication of it or of an input that only it feeds, and no planned test has a pin on it or at a point that only it feeds.
 *
 * <p>Does not see: how often the test is made.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "R10",
        name = "latent-redundancy",
        severity = Severity.S3,
        since = "0.3",
        needs = {"which units are redundant, unit types of both", "planned tests, indications and pre-flight steps"})
public final class LatentRedundancy implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        List<PlannedTest> tests = at.aircraft().record().tests();
        if (tests.isEmpty() && !Shown.begun(at)) {
            return;
        }
        Pairs.unknown(at, out);
        Set<String> done = new TreeSet<>();
        for (Pair pair : Pairs.known(at)) {
            for (Pair.Side side : List.of(pair.a(), pair.b())) {
                if (done.add(side.name()) && standsIn(at, side)) {
                    if (shown(at, pair, side) || tested(at, tests, pair, side)) {
                        out.looked();
                    } else if (!Shown.unsaid(at).isEmpty()) {
                        String units = String.join(", ", Shown.unsaid(at));
                        out.cannotTell(
                                "what each indication of " + units + " tells",
                                "look it up in the maker's manual",
                                5,
                                Shown.unsaid(at).toArray(new String[0]));
                    } else {
                        out.finding(draft(at, pair, side));
                    }
                }
            }
        }
    }

    /** Whether there is anything the side could do: a regulator that feeds nobody stands in for nothing. */
    private static boolean standsIn(Situation at, Pair.Side side) {
        List<PowerSource> own = PowerGraph.of(at.circuit()).sources().stream()
                .filter(source -> source.unit() == side.unit())
                .toList();
        SourceReach reach = SourceReach.of(at.circuit());
        return own.isEmpty()
                || own.stream().anyMatch(source -> !reach.consumers(source).isEmpty());
    }

    private static boolean shown(Situation at, Pair pair, Pair.Side side) {
        if (Shown.told(at, side.name()) || (!pair.inputs() && fedInput(at, side))) {
            return true;
        }
        for (AircraftFunction function : at.aircraft().functions()) {
            boolean through =
                    !pair.inputs() && function.chain().stream().anyMatch(name -> Shown.same(name, side.name()));
            if (through && (function.preflight().isKnown() || Shown.indicated(at, function))) {
                return true;
            }
        }
        return false;
    }

    /** Whether an indication tells of an input that only this unit feeds. */
    private static boolean fedInput(Situation at, Pair.Side side) {
        int unit = Items.of(at.circuit()).unit(side.unit());
        return Pairs.known(at).stream()
                .filter(Pair::inputs)
                .flatMap(pair -> List.of(pair.a(), pair.b()).stream())
                .filter(input -> Shown.told(at, input.name()))
                .flatMap(input -> input.supplies().stream())
                .anyMatch(consumer ->
                        SupplyLoss.of(at.circuit()).supply(consumer.plus()).contains(unit));
    }

    /** Whether a test has a pin on the side, or at a point that is dead without it. */
    private static boolean tested(Situation at, List<PlannedTest> tests, Pair pair, Pair.Side side) {
        Items items = Items.of(at.circuit());
        SupplyLoss losses = SupplyLoss.of(at.circuit());
        for (PlannedTest test : tests) {
            for (String name : test.pins()) {
                int pin = pin(at, name).orElse(-1);
                boolean on = pin >= 0 && at.wiring().unitOf(pin) == side.unit();
                boolean plug = on && (!pair.inputs() || plug(at, pin).equals(side.name()));
                boolean behind =
                        pin >= 0 && !pair.inputs() && losses.supply(pin).contains(items.unit(side.unit()));
                if (plug || behind || (!pair.inputs() && Shown.same(name, side.name()))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static String plug(Situation at, int pin) {
        return at.wiring().plugName(at.wiring().unitOf(pin), at.wiring().plugIndex(pin));
    }

    private static Optional<Integer> pin(Situation at, String name) {
        Site site = at.directory().resolve(new End(name));
        return site instanceof Site.OnPin on
                ? Optional.of(at.wiring().pinVertex(on.unit(), on.pin()))
                : site instanceof Site.OnPlug on
                        ? Optional.of(at.wiring().firstPin(on.unit(), on.plug()))
                        : Optional.empty();
    }

    private static Draft draft(Situation at, Pair pair, Pair.Side side) {
        String other =
                pair.a().name().equals(side.name()) ? pair.b().name() : pair.a().name();
        Items items = Items.of(at.circuit());
        Optional<Item> lead = side.supplies().stream()
                .flatMap(consumer -> SupplyLoss.of(at.circuit()).supply(consumer.plus()).stream())
                .map(items::item)
                .filter(item -> item.kind() == Item.Kind.LEAD)
                .findFirst();
        Draft draft = Draft.of(
                        Severity.S3,
                        "latent redundancy: " + side.name() + " may be dead without notice, " + other
                                + " stands in for it")
                .about(side.name())
                .sum("indications, pre-flight steps and planned tests of " + side.name() + ": none")
                .why("the first failure hides behind " + other + ", the second is the last")
                .meter(
                        pair.inputs()
                                ? "measure volts at " + side.name() + ", mated, with " + other + " pulled"
                                : "take " + other + " away and see that its functions go on")
                .fix("plan a test that shows " + side.name() + " alone: "
                        + (pair.inputs()
                                ? "volts at " + side.name() + " on every power-up"
                                : "its values without " + other))
                .cause(side.name() + " latent");
        lead.ifPresent(item -> draft.seen(at.aircraft().leads().get(item.number())));
        return draft;
    }
}
