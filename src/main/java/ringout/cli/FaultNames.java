package ringout.cli;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Lead;
import ringout.text.Nearest;
import ringout.trace.predict.Behaviour;
import ringout.trace.predict.TestCard;
import ringout.trace.predict.TestDeck;
import ringout.trace.predict.TypedReading;
import ringout.trace.session.TestReading;

/** Names a technician types for units, rows and tests; a wrong one is refused with the nearest right one. */
final class FaultNames {
    private final Circuit circuit;
    private final Set<String> units = new TreeSet<>();
    private final Set<String> objects = new TreeSet<>();

    FaultNames(Circuit circuit) {
        this.circuit = circuit;
        Wiring wiring = circuit.wiring();
        for (int unit = 0; unit < wiring.aircraft().units().size(); unit++) {
            if (circuit.aboard(unit)) {
                units.add(wiring.directory().name(unit));
                int plugs = wiring.directory().type(unit).plugs().size();
                for (int plug = 0; plug < plugs; plug++) {
                    objects.add(wiring.plugName(unit, plug));
                }
            }
        }
        objects.addAll(units);
        wiring.aircraft().leads().stream().map(Lead::id).forEach(objects::add);
    }

    /** A name cannot be used as it was typed. */
    static final class Unknown extends Exception {
        private static final long serialVersionUID = 1;

        Unknown(String message) {
            super(message);
        }
    }

    /** The units some words name. */
    List<String> units(Collection<String> words) throws Unknown {
        return all(words, units, "unit");
    }

    /** The units some words name, each of which must be heard when nothing is wrong. */
    List<String> modules(Collection<String> words) throws Unknown {
        List<String> found = units(words);
        Set<String> modules = Behaviour.of(circuit).modules();
        for (String unit : found) {
            if (!modules.contains(unit)) {
                throw new Unknown("by the list nothing hears or commands " + unit + " in state "
                        + circuit.state().name() + ", so its silence tells nothing; say --dark " + unit
                        + " when its lights are out");
            }
        }
        return found;
    }

    /** The rows, plugs and units some words name. */
    List<String> objects(Collection<String> words) throws Unknown {
        return all(words, objects, "row, plug or unit");
    }

    private static List<String> all(Collection<String> words, Set<String> names, String what) throws Unknown {
        List<String> found = new ArrayList<>();
        for (String word : words) {
            for (String one : word.split("[,;\\s]+")) {
                if (!one.isEmpty()) {
                    found.add(one(one, names, what));
                }
            }
        }
        return found;
    }

    private static String one(String word, Collection<String> names, String what) throws Unknown {
        Optional<String> found = names.stream().filter(name -> same(name, word)).findFirst();
        if (found.isEmpty()) {
            String hint = Nearest.hint(word, names);
            throw new Unknown("no " + what + " is called '" + word + "'" + (hint.isEmpty() ? "" : ": " + hint));
        }
        return found.get();
    }

    private static boolean same(String name, String word) {
        return plain(name).equals(plain(word));
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[.:/\\s]+", "-");
    }

    /** A reading written as TEST=VALUE. */
    TestReading reading(String text) throws Unknown {
        int equal = text.lastIndexOf('=');
        if (equal < 0) {
            throw new Unknown("a reading is written TEST=VALUE, such as \"ohms H-L FC-C2 mated=118\": '" + text + "'");
        }
        return reading(test(text.substring(0, equal)), text.substring(equal + 1));
    }

    /** What was read with a test. */
    TestReading reading(TestCard card, String value) throws Unknown {
        Optional<String> outcome = TypedReading.outcome(circuit, card, value);
        if (outcome.isEmpty()) {
            String hint = Nearest.hint(value, card.outcomes());
            throw new Unknown("'" + value.strip() + "' is no reading of \"" + card.id() + "\""
                    + (hint.isEmpty() ? "; it shows: " + String.join(" | ", card.outcomes()) : ": " + hint));
        }
        return new TestReading(card.id(), outcome.get(), value.strip());
    }

    /** The test of an identity. */
    TestCard test(String id) throws Unknown {
        List<TestCard> deck = TestDeck.of(circuit);
        List<String> ids = deck.stream().map(TestCard::id).toList();
        String found = one(id, ids, "test");
        return deck.get(ids.indexOf(found));
    }
}
