package ringout.check.power;

import java.util.List;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.model.Lead;
import ringout.model.PinRole;
import ringout.model.Unit;

/** A unit whose leads bring no supply conductor to any of its supply contacts. */
final class OpenSupply {
    private OpenSupply() {}

    /** Whether a plug of the supply has a lead, and yet no supply contact of the unit has a conductor and nothing feeds it. */
    static boolean is(Situation at, Consumer consumer) {
        if (!at.circuit().aboard(consumer.unit())) {
            return false;
        }
        Unit unit = at.directory().unit(consumer.unit());
        boolean alone = unit.stowed().is(true) || unit.standAlone().is(true);
        List<Consumer> all = PowerGraph.of(at.circuit()).consumersOf(consumer.unit());
        return !alone
                && all.get(0).equals(consumer)
                && all.stream().noneMatch(one -> PowerGraph.of(at.circuit()).fed(one.plus()) || wired(at, one))
                && all.stream().anyMatch(one -> !leads(at, one).isEmpty());
    }

    private static boolean wired(Situation at, Consumer consumer) {
        return consumer.inputs().stream().anyMatch(pin -> at.wiring().wiresAt(pin).length > 0);
    }

    /** Leads at plugs that have a supply input of the consumer. */
    private static List<Lead> leads(Situation at, Consumer consumer) {
        return consumer.inputs().stream()
                .filter(pin -> at.wiring().is(pin, PinRole.SUPPLY_IN))
                .flatMap(pin -> Supplies.leadsAt(at, plugPins(at, pin)).stream())
                .distinct()
                .toList();
    }

    private static List<Integer> plugPins(Situation at, int pin) {
        int unit = at.wiring().unitOf(pin);
        int plug = at.wiring().plugIndex(pin);
        return java.util.stream.IntStream.range(
                        at.wiring().firstPin(unit, plug), at.wiring().endPin(unit, plug))
                .boxed()
                .toList();
    }

    static Draft draft(Situation at, Consumer first) {
        String ref = at.directory().name(first.unit());
        Consumer consumer = PowerGraph.of(at.circuit()).consumersOf(first.unit()).stream()
                .filter(one -> !leads(at, one).isEmpty())
                .findFirst()
                .orElse(first);
        int pin = consumer.inputs().stream()
                .filter(input -> !Supplies.leadsAt(at, plugPins(at, input)).isEmpty())
                .findFirst()
                .orElse(consumer.plus());
        List<Lead> leads = leads(at, consumer);
        String ids = String.join(", ", leads.stream().map(Lead::id).toList());
        Draft draft = Draft.of(
                        Severity.S2,
                        "no source: no conductor at the supply input "
                                + at.wiring().name(pin))
                .about(ref)
                .sum("0 conductors at the supply inputs of " + ref + ", one is right; " + ids + " ends at "
                        + at.wiring().plugName(first.unit(), at.wiring().plugIndex(pin)) + " without one for it")
                .why("the unit is dark")
                .meter("power on: 0 V at " + at.wiring().name(pin))
                .fix("fit the supply conductor of " + ids + " at " + at.wiring().name(pin))
                .explains("T21", "S02", "P09")
                .cause(ref + " unfed");
        leads.forEach(draft::at);
        return draft.seen(at.directory().unit(first.unit()));
    }
}
