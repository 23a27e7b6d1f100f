package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Trail;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.model.Lead;
import ringout.model.State;
import ringout.model.shape.Shape;

/**
 * A load that stays powered with the main isolator open.
 *
 * <p>Why it matters: everybody believes the aircraft is dead; a motor, an ejector or a heater is not, and a pack is emptied in the store.
 *
 * <p>Condition: with the isolating switches open and the isolating plugs pulled, a load still has a supply and its return. A type
 * declared always on is meant so. States on the bench are not looked at: there another supply is plugged in on purpose.
 *
 * <p>Does not see: charge left in capacitors.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "P34",
        name = "isolator-bypassed",
        severity = Severity.S3,
        since = "0.1",
        needs = {"main isolator"})
public final class IsolatorBypassed implements Sound {
    @Override
    public void look(Situation at, Outcomes out) {
        List<String> isolator = at.aircraft().airframe().isolator();
        if (at.bench() || Pack.stacks(at).isEmpty()) {
            return;
        }
        if (isolator.isEmpty()) {
            out.cannotTell(
                    "main isolator",
                    "name the switch or the plug that takes the packs off",
                    1,
                    Pack.stacks(at).stream()
                            .flatMap(List::stream)
                            .map(Pack::name)
                            .toArray(String[]::new));
            return;
        }
        out.looked();
        Circuit opened = Circuit.of(at.wiring(), opened(at.circuit().state(), isolator));
        PowerGraph power = PowerGraph.of(opened);
        Map<Integer, Consumer> alive = new LinkedHashMap<>();
        for (Consumer consumer : power.consumers()) {
            boolean on = opened.aboard(consumer.unit())
                    && !consumer.loads().isEmpty()
                    && power.fed(consumer.plus())
                    && power.between(consumer.plus(), consumer.zero()).isPresent();
            if (on && !at.directory().type(consumer.unit()).alwaysOn().is(true)) {
                alive.putIfAbsent(consumer.unit(), consumer);
            }
        }
        alive.values().forEach(consumer -> out.finding(draft(at, power, isolator, consumer)));
    }

    private static State opened(State state, List<String> isolator) {
        Shape<State> shape = Shape.of(State.class);
        Set<String> pulled = new LinkedHashSet<>(state.pulled());
        pulled.addAll(isolator);
        Set<String> open = new LinkedHashSet<>(state.open());
        open.addAll(isolator);
        State with = shape.with(state, "pulled", List.copyOf(pulled));
        return shape.with(with, "open", List.copyOf(open));
    }

    private static Draft draft(Situation at, PowerGraph power, List<String> isolator, Consumer consumer) {
        String ref = at.directory().name(consumer.unit());
        boolean ejector = at.directory().type(consumer.unit()).ejector().is(true);
        List<String> sources = new ArrayList<>();
        for (PowerSource source : power.feeding(consumer.plus())) {
            sources.add(at.directory().name(source.unit()));
        }
        String open = String.join(" and ", isolator);
        Trail way = power.tree().trailTo(consumer.plus()).orElse(Trail.NONE);
        Draft draft = Draft.of(
                        ejector ? Severity.S2 : Severity.S3,
                        "isolator bypassed: with " + open + " open " + ref + " stays powered from "
                                + String.join(", ", sources))
                .about(ref)
                .path(way)
                .sum(open + " open, " + ref + " still fed by " + String.join(", ", sources))
                .why("everybody takes the aircraft for dead, " + ref + " is not")
                .meter(open + " open: volts at "
                        + at.wiring()
                                .name(
                                        consumer.inputs().isEmpty()
                                                ? consumer.plus()
                                                : consumer.inputs().get(0)) + " to 0V, 0 V when right")
                .fix("feed " + ref + " from behind " + open + ", or declare its type always on");
        List<Lead> along = Supplies.along(at, way);
        if (!along.isEmpty()) {
            // what passes the isolator by one lead is one mistake, however many units hang behind
            draft.at(along.get(along.size() - 1))
                    .cause("isolator passed by " + along.get(0).id());
        }
        return draft.seen(at.directory().unit(consumer.unit()));
    }
}
