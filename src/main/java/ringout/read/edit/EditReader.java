package ringout.read.edit;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import ringout.model.edit.Edit;
import ringout.model.edit.EditLine;
import ringout.model.edit.Told;
import ringout.model.shape.Shape;
import ringout.read.bind.Bag;
import ringout.read.bind.Completeness;
import ringout.read.json.JsonReader;
import ringout.text.Problem;
import ringout.text.Problems;
import ringout.text.Span;

/**
 * Reads edits, one a line; blank lines and lines that start with # are skipped.
 *
 * <pre>
 * set leads[W41].pins 1&gt;1 2&gt;3 3&gt;2
 * set units[LOG].ports[CAN2].terminator on
 * set types[GIMCTL].loads[12].peakA 6.5
 * clear units[LOG].zone
 * remove leads[W63]
 * add leads {"id":"W99","from":"A-1","to":"B-1"}
 * </pre>
 */
public final class EditReader {
    /**
     * What came of reading.
     *
     * @param edits the edits that could be read, in order
     * @param problems the lines that could not
     */
    public record Result(List<Edit> edits, List<Problem> problems) {}

    private EditReader() {}

    /** Reads the edits of a text. */
    public static Result read(String file, String text) {
        List<Edit> edits = new ArrayList<>();
        Problems problems = new Problems();
        List<String> lines = text.lines().toList();
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                Span at = Span.at(file, i + 1, 1);
                Told<Edit> told = EditLine.parse(line, at, (shape, json) -> record(shape, json, at));
                if (told instanceof Told.Right<Edit> right) {
                    edits.add(right.value());
                } else {
                    Told.Wrong<Edit> wrong = (Told.Wrong<Edit>) told;
                    problems.add(at, wrong.why(), wrong.hint());
                }
            }
        }
        return new Result(List.copyOf(edits), problems.sorted());
    }

    private static Told<Object> record(Shape<?> shape, String json, Span at) {
        Problems problems = new Problems();
        Bag bag = JsonReader.read(at.file(), json.getBytes(StandardCharsets.UTF_8), shape, problems);
        bag.at(at);
        Completeness.check(bag, problems);
        if (problems.isEmpty()) {
            return Told.right(bag.build());
        }
        return Told.wrong(
                problems.sorted().stream().map(Problem::message).collect(Collectors.joining("; ")),
                problems.sorted().get(0).hint());
    }
}
