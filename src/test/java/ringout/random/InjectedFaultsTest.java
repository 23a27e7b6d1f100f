package ringout.random;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;

/**
 * One mistake of each kind, put into a random valid aircraft, is the headline, names what it was put into, and nothing else
 * is said of weight. What must come of a mistake is told by whoever puts it there, not by the checks.
 */
class InjectedFaultsTest {
    private static final long SEED = 20261125;

    /** {@code -Dfaults=all} makes every mistake in every aircraft; without it each aircraft takes every third, in turn. */
    private static final boolean ALL = System.getProperty("faults", "").equals("all");

    private static final int TURNS = 3;

    /** Checks that these mistakes cannot raise: they need what the aircraft have not, or only ask. */
    private static final Set<String> ELSEWHERE = Set.of(
            ("T10 T16 T18 S04 S11 S16 S17 S18 S19 S21 S23 S24 S25 X01 X14 P07 P08 P11 P12 P13 P14 P15 P20 P21 P24 P25 P35 "
                            + "P36 P37 P38")
                    .split(" "));

    @Property(seed = "20261125", tries = 200, shrinking = ShrinkingMode.OFF)
    void isTheHeadlineAndNothingElseIs(@ForAll Random random) {
        Craft craft = Craft.of(random.nextLong());
        List<String> wrong = new ArrayList<>();
        int turn = random.nextInt(TURNS);
        for (Kind kind : Kinds.all()) {
            if (!ALL && turn++ % TURNS != 0) {
                continue;
            }
            kind.in(craft).ifPresent(fault -> {
                List<String> lines = Verdict.of(craft, fault);
                if (!lines.isEmpty()) {
                    wrong.add(craft + ", " + kind.name() + " " + fault.edits() + Verdict.told(lines));
                }
            });
        }
        assertEquals(List.of(), wrong);
    }

    /** Every kind finds its place in some aircraft, and every check has a kind. */
    @Test
    void everyKindHasItsPlaceAndEveryCheckItsKind() {
        Random random = new Random(SEED);
        List<Craft> crafts =
                Stream.generate(() -> Craft.of(random.nextLong())).limit(40).toList();
        Map<String, Integer> places = new TreeMap<>();
        Set<String> codes = new TreeSet<>();
        for (Kind kind : Kinds.all()) {
            List<Fault> faults =
                    crafts.stream().map(kind::in).flatMap(Optional::stream).toList();
            places.put(kind.name(), faults.size());
            faults.forEach(fault -> codes.addAll(fault.codes()));
        }
        assertEquals(Kinds.all().size(), places.size(), "kinds of one name");
        assertTrue(places.values().stream().allMatch(count -> count > 0), places.toString());
        Set<String> checks = new TreeSet<>(Told.HELD);
        checks.removeAll(codes);
        checks.removeAll(ELSEWHERE);
        assertEquals(Set.of(), checks, "checks without a kind of mistake");
    }
}
