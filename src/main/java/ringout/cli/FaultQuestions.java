package ringout.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import ringout.trace.session.Scene;

/** The questions that come before any tool: what changed last, who else is silent, is it lit. */
final class FaultQuestions {
    private final FaultNames names;
    private final Function<String, Optional<String>> ask;
    private final PrintWriter out;

    FaultQuestions(FaultNames names, Function<String, Optional<String>> ask, PrintWriter out) {
        this.names = names;
        this.ask = ask;
        this.out = out;
    }

    /** Takes an answer into what is seen. */
    private interface Taker {
        Scene take(String answer) throws FaultNames.Unknown;
    }

    /** What is seen, with what the call left open asked for; nothing when the input ends. */
    Optional<Scene> complete(Scene told) {
        Optional<Scene> scene = Optional.of(told);
        if (told.silent().isEmpty() && told.dark().isEmpty()) {
            scene = put("What does not respond? (units) ", answer -> silent(told, answer));
        }
        scene = scene.flatMap(seen -> seen.tellsOfChange() ? Optional.of(seen) : changed(seen));
        scene = scene.flatMap(seen -> seen.others() == Scene.Others.RESPOND ? Optional.of(seen) : others(seen));
        for (String unit : scene.map(seen -> List.copyOf(seen.silent())).orElse(List.of())) {
            scene = scene.flatMap(seen -> lit(seen, unit));
        }
        return scene;
    }

    private Optional<Scene> put(String question, Taker taker) {
        while (true) {
            Optional<String> answer = ask.apply(question);
            if (answer.isEmpty()) {
                return Optional.empty();
            }
            try {
                return Optional.of(taker.take(answer.get().strip()));
            } catch (FaultNames.Unknown wrong) {
                out.println(wrong.getMessage());
            }
        }
    }

    private Scene silent(Scene seen, String answer) throws FaultNames.Unknown {
        List<String> units = names.modules(List.of(answer));
        if (units.isEmpty()) {
            throw new FaultNames.Unknown("name at least one unit");
        }
        return seen.withSilent(units);
    }

    private Optional<Scene> changed(Scene seen) {
        return put("What changed last? (rows, plugs, units; crash; update; Enter: nothing known) ", answer -> {
            List<String> words = new ArrayList<>(List.of(answer.split("[,;\\s]+")));
            boolean crash = words.removeIf("crash"::equalsIgnoreCase);
            boolean update = words.removeIf("update"::equalsIgnoreCase);
            words.removeIf("nothing"::equalsIgnoreCase);
            return seen.changed(names.objects(words), crash, update);
        });
    }

    private Optional<Scene> others(Scene seen) {
        return put("Who else is silent? (units; Enter: nobody, all others respond; ?: not looked) ", answer -> {
            if (answer.equals("?")) {
                return seen.withOthers(Scene.Others.UNKNOWN);
            }
            boolean nobody = answer.isEmpty() || answer.equalsIgnoreCase("nobody") || answer.equalsIgnoreCase("none");
            return nobody
                    ? seen.withOthersAlive()
                    : seen.withSilent(names.modules(List.of(answer))).withOthersAlive();
        });
    }

    private Optional<Scene> lit(Scene seen, String unit) {
        if (seen.lit().contains(unit) || seen.dark().contains(unit)) {
            return Optional.of(seen);
        }
        return put("Is " + unit + " lit? (yes, no, Enter: cannot tell) ", answer -> {
            return switch (answer.toLowerCase(Locale.ROOT)) {
                case "y", "yes", "lit" -> seen.withLit(List.of(unit));
                case "n", "no", "dark" -> seen.withDark(List.of(unit));
                case "", "?" -> seen;
                default -> throw new FaultNames.Unknown("yes, no, or Enter");
            };
        });
    }
}
