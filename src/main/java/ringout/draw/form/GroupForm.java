package ringout.draw.form;

import java.util.List;
import java.util.Optional;

/**
 * What goes to one side of a box or splice as a whole: a plug, or one wire end at a splice.
 *
 * @param index its number
 * @param node the box or splice
 * @param id identifier of the plug; of a splice's group, that of the wire
 * @param plug the plug, if it is one
 * @param taps numbers of its taps from top to bottom
 * @param height steps
 */
public record GroupForm(int index, int node, String id, Optional<PlugForm> plug, List<Integer> taps, int height) {
    /** Keeps an unmodifiable copy of the taps. */
    public GroupForm {
        taps = List.copyOf(taps);
    }

    /** {@return its width, mm; a splice has none} */
    public double width() {
        return plug.map(PlugForm::width).orElse(0.0);
    }
}
