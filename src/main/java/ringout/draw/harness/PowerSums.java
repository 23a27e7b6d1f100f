package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import ringout.draw.tree.TreeLink;

/** What goes through the boards of a tree at average and at peak: the sum of what loads and regulators below take. */
final class PowerSums {
    private final Map<String, double[]> takes = new HashMap<>();
    private final Map<String, List<String>> below = new HashMap<>();

    /** A load or the input of a regulator; what hangs on a regulator is in its input. */
    void takes(String id, double usual, OptionalDouble most) {
        takes.put(id, new double[] {usual, most.orElse(Double.NaN)});
    }

    String words(String id, List<TreeLink> links) {
        below.clear();
        links.forEach(link ->
                below.computeIfAbsent(link.from(), key -> new ArrayList<>()).add(link.to()));
        double[] sum = sum(id, new HashSet<>());
        return TreeFigures.both(sum[0], Double.isNaN(sum[1]) ? OptionalDouble.empty() : OptionalDouble.of(sum[1]));
    }

    /** A thing on the way to itself counts nothing: boards that feed each other would be counted without end. */
    private double[] sum(String id, Set<String> passed) {
        double[] own = takes.get(id);
        if (own != null) {
            return own;
        }
        double[] sum = {0, 0};
        if (!passed.add(id)) {
            return sum;
        }
        for (String child : below.getOrDefault(id, List.of())) {
            double[] more = sum(child, passed);
            sum[0] += more[0];
            sum[1] += more[1];
        }
        passed.remove(id);
        return sum;
    }
}
