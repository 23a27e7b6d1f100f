package ringout.trace.campaign;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** What came of many searches. */
public final class Tally {
    private final List<Run> runs = new ArrayList<>();
    private int same;

    void add(Run run, boolean sameUnderOtherPriors) {
        runs.add(run);
        same += sameUnderOtherPriors ? 1 : 0;
    }

    /** Puts another tally to this one. */
    public void addAll(Tally other) {
        runs.addAll(other.runs);
        same += other.same;
    }

    List<Run> runs() {
        return runs;
    }

    private List<Run> listed() {
        return runs.stream().filter(Run::listed).toList();
    }

    private static double share(List<Run> of, Predicate<Run> what) {
        return of.isEmpty() ? Double.NaN : (double) of.stream().filter(what).count() / of.size();
    }

    private static double mean(List<Run> of, ToDoubleFunction<Run> what) {
        return of.stream().mapToDouble(what).average().orElse(Double.NaN);
    }

    private static double quantile(List<Run> of, ToDoubleFunction<Run> what, double share) {
        double[] sorted = of.stream().mapToDouble(what).sorted().toArray();
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.ceil(share * sorted.length) - 1];
    }

    /** Of the faults in the list, the share in which the stop puts the right repair action in the first place. */
    public double rightAtStop() {
        return share(listed(), Run::right);
    }

    /** Mean share claimed less share right, over all stops that name an action, faults that are not in the list included. */
    public double overclaim() {
        List<Run> claims = runs.stream().filter(run -> run.claimed() > 0).toList();
        return mean(claims, Run::claimed) - share(claims, Run::right);
    }

    /** Of the faults in the list, the share in which the first repair stays the same with other priors. */
    public double stable() {
        return (double) same / listed().size();
    }

    /** Of the faults in the list, the share in which the technician got to the right repair in the end. */
    public double cured() {
        return share(listed(), Run::cured);
    }

    /** Searches that ended by each stop. */
    Map<Run.Stop, Long> stops() {
        Map<Run.Stop, Long> stops = new EnumMap<>(Run.Stop.class);
        runs.forEach(run -> stops.merge(run.stop(), 1L, Long::sum));
        return stops;
    }

    @Override
    public String toString() {
        List<Run> in = listed();
        List<Run> out = runs.stream().filter(run -> !run.listed()).toList();
        StringBuilder text = new StringBuilder();
        line(text, "faults %d, of them not in the list %d", runs.size(), out.size());
        line(
                text,
                "right action first at the stop %.3f, first repair done at all right %.3f, cured in the end %.3f",
                rightAtStop(),
                share(in, Run::firstRepairRight),
                cured());
        stops().forEach((stop, count) -> {
            List<Run> some = in.stream().filter(run -> run.stop() == stop).toList();
            line(
                    text,
                    "  %s: %d, listed %d, claimed %.3f, right %.3f",
                    stop,
                    count,
                    some.size(),
                    mean(some, Run::claimed),
                    share(some, Run::right));
        });
        line(
                text,
                "rank of the fault: first %.3f, within three %.3f, mean %.2f; of its repair: first %.3f, within three %.3f",
                share(in, run -> run.rank() == 1),
                share(in, run -> run.rank() <= 3),
                mean(in, Run::rank),
                share(in, run -> run.repairRank() == 1),
                share(in, run -> run.repairRank() <= 3));
        line(
                text,
                "minutes to the stop: mean %.1f, p95 %.1f; to the cure: mean %.1f, p95 %.1f; readings mean %.1f; repairs in vain mean %.2f",
                mean(in, Run::toStop),
                quantile(in, Run::toStop, 0.95),
                mean(in, Run::minutes),
                quantile(in, Run::minutes, 0.95),
                mean(in, Run::readings),
                mean(in, Run::vain));
        line(text, "claimed less right %.3f over all; same first repair with other priors %.3f", overclaim(), stable());
        line(
                text,
                "not in the list: told that nothing fits %.3f, repairs in vain mean %.2f, minutes mean %.1f",
                share(out, run -> run.stop() == Run.Stop.NOTHING_FITS),
                mean(out, Run::vain),
                mean(out, Run::minutes));
        return text.toString();
    }

    private static void line(StringBuilder text, String format, Object... values) {
        text.append(String.format(Locale.ROOT, format, values)).append('\n');
    }
}
