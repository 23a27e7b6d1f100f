package ringout.draw.harness;

import java.util.List;
import java.util.Map;
import ringout.draw.scene.Remark;

/**
 * What a sheet is about: all that is on it, or one finding.
 *
 * @param finding number of the finding; 0 for all of them
 * @param steps number of the step of its path at each pin, such as {@code 3}
 * @param remarks paragraphs below the drawing
 */
record Focus(int finding, Map<String, String> steps, List<Remark> remarks) {
    /** Everything. */
    static final Focus NONE = new Focus(0, Map.of(), List.of());

    /** Keeps unmodifiable copies. */
    Focus {
        steps = Map.copyOf(steps);
        remarks = List.copyOf(remarks);
    }

    /** Whether the badges of a finding are drawn. */
    boolean shows(int number) {
        return finding == 0 || finding == number;
    }

    /** What is printed beside a contact: the number of the step in brackets, then its signal. */
    String signal(String pin, String signal) {
        String step = steps.get(pin);
        return step == null ? signal : "(" + step + ") " + signal;
    }
}
