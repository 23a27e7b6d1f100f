package ringout.present.lines;

import com.github.difflib.DiffUtils;
import com.github.difflib.patch.AbstractDelta;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Some lines of a file replaced by others.
 *
 * @param file name of the file
 * @param line 1-based number of the first line taken out; where nothing is taken out, of the line the new ones come before
 * @param out lines taken out
 * @param in lines put in
 */
public record LineChange(String file, int line, List<String> out, List<String> in) {
    /** Keeps its own copies. */
    public LineChange {
        out = List.copyOf(out);
        in = List.copyOf(in);
    }

    /** What changed in files of equal name; a file that is only on one side counts as empty on the other. */
    public static List<LineChange> between(Map<String, String> before, Map<String, String> after) {
        Map<String, String> names = new TreeMap<>(before);
        names.putAll(after);
        List<LineChange> changes = new ArrayList<>();
        for (String file : names.keySet()) {
            List<String> old = before.getOrDefault(file, "").lines().toList();
            List<String> now = after.getOrDefault(file, "").lines().toList();
            for (AbstractDelta<String> delta : DiffUtils.diff(old, now).getDeltas()) {
                changes.add(new LineChange(
                        file,
                        delta.getSource().getPosition() + 1,
                        delta.getSource().getLines(),
                        delta.getTarget().getLines()));
            }
        }
        return List.copyOf(changes);
    }
}
