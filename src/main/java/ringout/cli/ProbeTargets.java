package ringout.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import ringout.graph.Circuit;
import ringout.graph.Site;
import ringout.graph.Wiring;
import ringout.graph.bus.BusSegment;
import ringout.model.End;
import ringout.model.Event;
import ringout.model.State;
import ringout.solve.ProbePoint;
import ringout.solve.meter.BusQuestion;
import ringout.solve.meter.OhmsQuestion;
import ringout.text.Characters;
import ringout.text.Nearest;

/** Turns the names of a probe call into points, plugs and buses, or refuses the call with the nearest match. */
final class ProbeTargets {
    private static final int LONGEST = 300;

    private final CommandLine line;
    private final Wiring wiring;

    ProbeTargets(CommandLine line, Wiring wiring) {
        this.line = line;
        this.wiring = wiring;
    }

    /** The vertex of a point. */
    int point(String name) {
        ProbePoint.Aim aim = ProbePoint.aim(wiring, name);
        if (aim instanceof ProbePoint.Hit hit) {
            return hit.vertex();
        }
        ProbePoint.Missed missed = (ProbePoint.Missed) aim;
        throw wrong(missed.why(), missed.hint());
    }

    /** The circuit of a state with more plugs pulled. */
    Circuit circuit(State state, List<String> pulls) {
        List<String> plugs = new ArrayList<>();
        pulls.forEach(pull -> plugs.add(plug(pull)));
        return Circuit.of(wiring, OhmsQuestion.pulled(state, plugs));
    }

    private String plug(String name) {
        Site site = wiring.directory().resolve(new End(name));
        if (site instanceof Site.OnPlug on && !wiring.directory().isJoint(on.unit())) {
            return wiring.plugName(on.unit(), on.plug());
        }
        if (site instanceof Site.OnPin on && !wiring.directory().isJoint(on.unit())) {
            String plug = wiring.plugName(on.unit(), on.plug());
            throw wrong("'" + name + "' is a pin", "pull the whole plug: " + plug);
        }
        if (site instanceof Site.Loose loose) {
            throw wrong(loose.why(), loose.hint());
        }
        throw wrong("'" + name + "' is a joint", "only a plug can be pulled");
    }

    /** The wired pieces of a bus, by its name or by a plug on it. */
    List<BusSegment> bus(Circuit circuit, String name) {
        List<BusSegment> found = BusQuestion.named(circuit, name);
        if (!found.isEmpty()) {
            return found;
        }
        Site site = wiring.directory().resolve(new End(name));
        List<BusSegment> here =
                site instanceof Site.OnPlug on ? BusQuestion.at(circuit, on.unit(), on.plug()) : List.of();
        if (!here.isEmpty()) {
            return here;
        }
        if (ProbePoint.aim(wiring, name) instanceof ProbePoint.Hit) {
            throw wrong("'" + name + "' is one point", "name a second one, or a bus");
        }
        List<String> names = BusQuestion.names(circuit);
        String there = names.isEmpty() ? "there is none" : "there is: " + String.join("; ", names);
        String hint = Nearest.hint(name, names);
        String both = hint.isEmpty() ? there : hint + " " + there;
        throw wrong("no bus '" + name + "' in state " + circuit.state().name(), both);
    }

    /** The event of a name; nothing when none is named. */
    Optional<Event> event(String name) {
        if (name.isEmpty()) {
            return Optional.empty();
        }
        List<Event> events = wiring.aircraft().events();
        List<String> names = events.stream().map(Event::name).toList();
        String hint = Nearest.hint(name, names);
        String there = names.isEmpty() ? "there is none" : "there is: " + String.join(", ", names);
        return Optional.of(events.stream()
                .filter(event -> event.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow(() -> wrong("no event '" + name + "'", hint.isEmpty() ? there : hint)));
    }

    private ParameterException wrong(String why, String hint) {
        String words = hint.isEmpty() ? why : why + " (" + hint + ")";
        return new ParameterException(line, Characters.shown(words, LONGEST));
    }
}
