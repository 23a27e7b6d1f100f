package ringout.draw.verify;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import ringout.draw.paper.Point;
import ringout.draw.verify.Flaw.Kind;
import ringout.draw.verify.Seen.Group;
import ringout.draw.verify.Seen.Patch;

/** Every promised thing there once, no other, and no disc on another. */
final class ThingChecks {
    private static final String THING = "thing";

    private final Seen seen;
    private final List<Flaw> flaws;

    ThingChecks(Seen seen, List<Flaw> flaws) {
        this.seen = seen;
        this.flaws = flaws;
    }

    void run(List<String> promised) {
        checkDiscs();
        if (promised.isEmpty()) {
            return;
        }
        Map<String, Set<Integer>> found = found();
        for (String thing : new TreeSet<>(promised)) {
            int times = found.getOrDefault(thing, Set.of()).size();
            if (times != 1) {
                flaw(times == 0 ? Kind.THING_ABSENT : Kind.THING_TWICE, thing + " is there " + times + " times");
            }
        }
        Set<String> others = new TreeSet<>(found.keySet());
        others.removeAll(new HashSet<>(promised));
        others.forEach(thing -> flaw(Kind.THING_UNPROMISED, thing + " is not of this sheet"));
    }

    private void flaw(Kind kind, String words) {
        flaws.add(new Flaw(kind, words, new Point(0, 0)));
    }

    /** The elements that say which thing they are and hold something that is drawn. */
    private Map<String, Set<Integer>> found() {
        Map<String, Set<Integer>> found = new HashMap<>();
        Stream.of(
                        seen.texts.stream().map(Seen.Text::group),
                        seen.patches.stream().map(Patch::group),
                        seen.lines.stream().map(Seen.Line::group))
                .flatMap(groups -> groups)
                .forEach(group -> note(group, found));
        return found;
    }

    private static void note(Group group, Map<String, Set<Integer>> found) {
        for (Optional<Group> at = Optional.of(group);
                at.isPresent();
                at = at.get().parent()) {
            if (!at.get().datum(THING).isEmpty()) {
                found.computeIfAbsent(at.get().datum(THING), key -> new HashSet<>())
                        .add(at.get().number());
            }
        }
    }

    private void checkDiscs() {
        List<Patch> discs =
                seen.patches.stream().filter(patch -> patch.group().is("disc")).toList();
        for (int i = 0; i < discs.size(); i++) {
            Patch disc = discs.get(i);
            for (Patch other : discs.subList(i + 1, discs.size())) {
                double apart = disc.area().centre().distance(other.area().centre());
                if (apart < (disc.area().width() + other.area().width()) / 2) {
                    Point at = disc.area().centre();
                    flaws.add(new Flaw(Kind.DISC_ON_DISC, "two discs overlap", at));
                }
            }
        }
    }
}
