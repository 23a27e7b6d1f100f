package ringout.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.graph.Circuit;
import ringout.present.json.FaultJson;
import ringout.present.text.FaultText;
import ringout.trace.candidate.PriorTable;
import ringout.trace.session.Diagnosis;
import ringout.trace.session.FaultReport;
import ringout.trace.session.NextStep;
import ringout.trace.session.Scene;

/** The search as a dialogue: asks what is seen, then proposes one step after the other and takes what was read. */
final class FaultDialogue {
    private static final String HELP = """
            what you can type:
              a reading           118, 118,2, 1.2k, OL, or one of the outcomes told; two wires: 3.3 0
              TEST=READING        the reading of another test, by its name
              open                the lids told are off
              cured / not cured   after a repair
              skip                this test cannot be made here
              back                take the last step back
              all                 everything that is still possible
              save FILE           keep the search, to take it up again with --resume FILE
              quit                leave
            """;

    private final Circuit circuit;
    private final PriorTable priors;
    private final FaultNames names;
    private final BufferedReader in;
    private final PrintWriter out;
    private final Deque<Diagnosis> before = new ArrayDeque<>();

    FaultDialogue(Circuit circuit, PriorTable priors, BufferedReader in, PrintWriter out) {
        this.circuit = circuit;
        this.priors = priors;
        this.names = new FaultNames(circuit);
        this.in = in;
        this.out = out;
    }

    /** Asks the first questions, as far as the call does not answer them; nothing when the input ends before. */
    Optional<Diagnosis> begin(Scene told) {
        FaultQuestions questions = new FaultQuestions(names, this::ask, out);
        while (true) {
            Optional<Scene> scene = questions.complete(told);
            if (scene.isEmpty()) {
                return Optional.empty();
            }
            Optional<Diagnosis> search = Diagnosis.find(circuit, scene.get(), priors);
            if (search.isPresent()) {
                return search;
            }
            out.println("no fault of the model explains any of this; look again who is silent, then look at the list");
            told = Scene.silent(List.of());
        }
    }

    /** Goes on until the search ends or the input does; where it then stands. */
    Diagnosis run(Diagnosis start) {
        Diagnosis search = start;
        out.print(FaultText.of(FaultReport.of(search)));
        while (true) {
            Optional<String> line = ask("> ");
            if (line.isEmpty() || word(line.get()).equals("quit")) {
                return search;
            }
            if (word(line.get()).equals("cured")) {
                cured(search);
                return search;
            }
            search = turn(search, line.get().strip());
        }
    }

    private Diagnosis turn(Diagnosis search, String line) {
        try {
            Diagnosis next = step(search, line);
            if (next != search) {
                if (!word(line).equals("back")) {
                    before.push(search);
                }
                out.print(FaultText.brief(FaultReport.of(next)));
            }
            return next;
        } catch (FaultNames.Unknown wrong) {
            out.println(wrong.getMessage());
            return search;
        }
    }

    private static String word(String line) {
        return line.strip().toLowerCase(Locale.ROOT);
    }

    private Diagnosis step(Diagnosis search, String line) throws FaultNames.Unknown {
        String word = word(line);
        if (word.isEmpty() || word.equals("?") || word.equals("help")) {
            out.print(HELP);
            return search;
        }
        if (word.equals("all")) {
            out.print(FaultText.of(FaultReport.of(search)));
            return search;
        }
        if (word.startsWith("save")) {
            return save(search, line.substring("save".length()).strip());
        }
        if (word.equals("back")) {
            return back(search);
        }
        return line.contains("=") ? search.with(names.reading(line)) : answer(search, word, line);
    }

    private Diagnosis back(Diagnosis search) {
        if (before.isEmpty()) {
            out.println("this is the beginning");
            return search;
        }
        return before.pop();
    }

    private Diagnosis answer(Diagnosis search, String word, String line) throws FaultNames.Unknown {
        NextStep next = FaultReport.next(search);
        if (word.equals("open") && next instanceof NextStep.GoIn in) {
            return search.open(in.lids());
        }
        if (word.equals("open") && next instanceof NextStep.Test test) {
            return search.open(test.card().opening().covers());
        }
        if (word.equals("not cured")) {
            return notCured(search, next);
        }
        if (next instanceof NextStep.Test test) {
            return word.equals("skip")
                    ? search.skipping(test.card().id())
                    : search.with(names.reading(test.card(), line));
        }
        throw new FaultNames.Unknown(
                "no test is asked for now; type cured, not cured, open, TEST=READING, or ? for help");
    }

    private Diagnosis notCured(Diagnosis search, NextStep next) throws FaultNames.Unknown {
        if (next instanceof NextStep.Do repair) {
            return search.inVain(repair.job().id());
        }
        if (next instanceof NextStep.InTurn turn && !turn.inTurn().isEmpty()) {
            return search.inVain(turn.inTurn().get(0).id());
        }
        if (next instanceof NextStep.GoIn in && !in.bring().isEmpty()) {
            return search.open(in.lids()).inVain(in.bring().get(0).id());
        }
        throw new FaultNames.Unknown("no repair is advised now");
    }

    private void cured(Diagnosis search) {
        out.print(FaultText.retest(FaultReport.of(search)));
    }

    private Diagnosis save(Diagnosis search, String file) throws FaultNames.Unknown {
        if (file.isEmpty()) {
            throw new FaultNames.Unknown("say into which file: save FILE");
        }
        try {
            Files.write(Path.of(file), FaultJson.of(FaultReport.of(search)).getBytes(StandardCharsets.UTF_8));
        } catch (IOException | java.nio.file.InvalidPathException failed) {
            throw new FaultNames.Unknown("cannot write " + file + ": " + failed.getMessage());
        }
        out.println("saved: " + file);
        return search;
    }

    private Optional<String> ask(String prompt) {
        out.print(prompt);
        out.flush();
        try {
            Optional<String> line = Optional.ofNullable(in.readLine());
            if (line.isEmpty()) {
                out.println();
            }
            return line;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
