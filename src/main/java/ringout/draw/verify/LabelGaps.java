package ringout.draw.verify;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.draw.paper.Point;
import ringout.draw.verify.Seen.Text;
import ringout.draw.verify.Seen.Way;

/** The longest piece of wire between two labels of it. */
final class LabelGaps {
    private LabelGaps() {}

    static double longest(Seen seen) {
        Map<String, List<Point>> labels = new HashMap<>();
        for (Text text : seen.texts) {
            text.group()
                    .within("label")
                    .ifPresent(g -> labels.computeIfAbsent(g.datum("wire"), w -> new ArrayList<>())
                            .add(text.area().centre()));
        }
        double longest = 0;
        for (Way wire : seen.wires()) {
            longest = Math.max(longest, longestOf(wire, labels.getOrDefault(wire.id(), List.of())));
        }
        return longest;
    }

    private static double longestOf(Way wire, List<Point> labels) {
        List<Double> places = new ArrayList<>();
        double passed = 0;
        for (Segment piece : Segment.of(List.of(wire))) {
            for (Point label : labels) {
                if (piece.distance(label) < 1.5) {
                    places.add(passed + piece.a().distance(label));
                }
            }
            passed += piece.length();
        }
        Collections.sort(places);
        double longest = 0;
        double last = 0;
        for (double place : places) {
            longest = Math.max(longest, place - last);
            last = place;
        }
        return Math.max(longest, passed - last);
    }
}
