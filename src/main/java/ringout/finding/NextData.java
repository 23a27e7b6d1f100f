package ringout.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * Ranks missing data by what they are worth: the verdicts a datum decides, weighted by severity, over the minutes it takes.
 *
 * <p>A datum that several checks lack counts for all of them, and a thing that waits for several data is decided with the last
 * of them. The first is the one of the highest rate; the next is ranked as if that were known, so that the three
 * together are a plan and not three ways to the same verdict. A line of several data takes its minutes in equal parts, and
 * where two lines ask for one datum the longer time counts.
 */
public final class NextData {
    /** How many are told. */
    public static final int MOST = 3;

    /** One undecided thing: what it waits for and what a verdict on it is worth. */
    private record Line(int number, CannotTell open, Lack lack, List<String> data, int weight) {}

    /** Data that decide something when they are got together. */
    private record Choice(Line asked, List<String> objects, List<Line> decided, double minutes) {
        String words() {
            return asked.lack().words(objects);
        }

        int weight() {
            return decided.stream().mapToInt(Line::weight).sum();
        }

        /** Weight a minute. */
        double rate() {
            return weight() / minutes;
        }
    }

    private static final Comparator<Choice> BEST = Comparator.comparingDouble((Choice choice) -> -choice.rate())
            .thenComparingInt(choice -> -choice.decided().size())
            .thenComparingDouble(Choice::minutes)
            .thenComparing(Choice::words);

    private final List<Line> lines = new ArrayList<>();
    private final Map<String, Double> minutes = new HashMap<>();
    private final Map<String, List<Line>> waiting = new HashMap<>();
    private final Set<String> known = new HashSet<>();

    private NextData() {}

    /**
     * The data to get next, the best first, {@value #MOST} at the most.
     *
     * @param open what could not be decided, in the order of the catalogue
     * @param severity severity of a check by its code
     */
    public static List<NextDatum> of(List<CannotTell> open, Function<String, Severity> severity) {
        NextData data = new NextData();
        open.forEach(one -> data.add(one, weight(severity.apply(one.code()))));
        List<NextDatum> next = new ArrayList<>();
        Optional<Choice> best = data.best();
        while (best.isPresent()) {
            next.add(data.take(best.get()));
            best = next.size() < MOST ? data.best() : Optional.empty();
        }
        return List.copyOf(next);
    }

    /** What a verdict is worth: a class of severity is twice the next one (our choice, no source). */
    static int weight(Severity severity) {
        return switch (severity) {
            case S1 -> 16;
            case S2 -> 8;
            case S3 -> 4;
            case S4 -> 2;
            case S5 -> 1;
        };
    }

    private void add(CannotTell open, int weight) {
        Lack lack = Lack.of(open);
        List<String> data = lack.objects().stream().map(lack::datum).toList();
        Line line = new Line(lines.size(), open, lack, data, weight);
        lines.add(line);
        double each = Math.max(1, open.minutes()) / (double) data.size();
        for (String datum : data) {
            minutes.merge(datum, each, Math::max);
            waiting.computeIfAbsent(datum, key -> new ArrayList<>()).add(line);
        }
    }

    private Optional<Choice> best() {
        Set<Lack> seen = new HashSet<>();
        return lines.stream()
                .filter(line -> seen.add(line.lack()))
                .flatMap(line -> choice(line).stream())
                .min(BEST);
    }

    /** What comes of getting all that a line waits for; nothing where it waits no more. */
    private Optional<Choice> choice(Line line) {
        Set<String> got = new LinkedHashSet<>(line.data());
        got.removeAll(known);
        if (got.isEmpty()) {
            return Optional.empty();
        }
        Map<Integer, Line> decided = new TreeMap<>();
        for (String datum : got) {
            for (Line other : waiting.getOrDefault(datum, List.of())) {
                if (other.data().stream().allMatch(each -> got.contains(each) || known.contains(each))) {
                    decided.put(other.number(), other);
                }
            }
        }
        List<String> objects = line.lack().objects().stream()
                .filter(object -> got.contains(line.lack().datum(object)))
                .toList();
        double cost = got.stream()
                .mapToDouble(datum -> minutes.getOrDefault(datum, 1.0))
                .sum();
        return Optional.of(new Choice(line, objects, List.copyOf(decided.values()), cost));
    }

    private NextDatum take(Choice choice) {
        known.addAll(choice.asked().data());
        List<String> codes = choice.decided().stream()
                .map(line -> line.open().code())
                .distinct()
                .toList();
        return new NextDatum(
                choice.words(),
                choice.asked().open().how(),
                (int) Math.ceil(choice.minutes() - 1e-9),
                choice.decided().size(),
                codes,
                choice.weight());
    }
}
