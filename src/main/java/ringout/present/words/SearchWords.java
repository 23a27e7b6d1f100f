package ringout.present.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Circumstance;
import ringout.trace.candidate.Opening;
import ringout.trace.session.NextStep;
import ringout.trace.session.Ranked;
import ringout.trace.session.Scene;
import ringout.trace.session.TestReading;

/** Words for what a search for a fault tells. */
public final class SearchWords {
    private static final int PERCENT = 100;
    private static final int MOST_NAMED = 5;

    private SearchWords() {}

    /** A share in whole per cent; below one "under 1 %". */
    public static String share(double share) {
        return share < 0.005 ? "under 1 %" : String.format(Locale.ROOT, "%.0f %%", Math.min(share, 0.99) * PERCENT);
    }

    /** Minutes, to half a minute. */
    public static String minutes(double minutes) {
        double rounded = Math.round(minutes * 2) / 2.0;
        return rounded == Math.rint(rounded)
                ? String.format(Locale.ROOT, "%.0f min", rounded)
                : String.format(Locale.ROOT, "%.1f min", rounded);
    }

    /** What has to come off: "open to the hand", or the lids. */
    public static String lids(List<String> lids) {
        return lids.isEmpty() ? "open to the hand" : "behind " + String.join(", ", lids);
    }

    /** The same of an opening, with its minutes as far as the list tells them. */
    public static String access(Opening opening) {
        if (opening.free()) {
            return "open to the hand";
        }
        return "behind " + String.join(", ", opening.covers())
                + (opening.minutes().isPresent()
                        ? " (" + minutes(opening.minutes().getAsDouble()) + " off and on)"
                        : " (minutes not told, counted as 10)");
    }

    /** What is seen, in one line. */
    public static String scene(Scene scene) {
        List<String> parts = new ArrayList<>();
        add(parts, "silent: ", scene.silent());
        add(parts, "dark: ", scene.dark());
        add(parts, "lit: ", scene.lit());
        add(parts, "responding: ", scene.alive());
        if (scene.others() != Scene.Others.UNKNOWN) {
            parts.add(scene.others() == Scene.Others.ASSUMED ? "all others taken to respond" : "all others respond");
        }
        add(parts, "worked on last: ", scene.touched());
        if (scene.crash()) {
            parts.add("after a crash, surge or water");
        }
        if (scene.update()) {
            parts.add("after an update");
        }
        return String.join("; ", parts);
    }

    private static void add(List<String> parts, String before, Iterable<String> names) {
        String joined = String.join(", ", names);
        if (!joined.isEmpty()) {
            parts.add(before + joined);
        }
    }

    /** Why a fault was weighed higher, and what else it would show; empty when nothing is to tell. */
    public static String because(Ranked ranked) {
        List<String> parts = new ArrayList<>();
        Candidate candidate = ranked.candidate();
        if (!candidate.because().isEmpty()) {
            parts.add(candidate.because().stream().map(Circumstance::words).collect(Collectors.joining(", ")));
        }
        add(parts, "then silent too: ", ranked.alsoSilent());
        add(parts, "then unsteady too: ", ranked.alsoUnsteady());
        if (!ranked.misfits().isEmpty()) {
            parts.add("does not explain "
                    + ranked.misfits().stream().map(SearchWords::reading).collect(Collectors.joining(", ")));
        }
        return String.join("; ", parts);
    }

    /** A reading: the test, its outcome and what was typed. */
    public static String reading(TestReading reading) {
        String typed = reading.value().equalsIgnoreCase(reading.outcome()) ? "" : " (" + reading.value() + ")";
        return reading.test() + " = " + reading.outcome() + typed;
    }

    /** The faults that show an outcome, with what they show where it differs from the outcome's own words. */
    public static String shown(NextStep.Branch branch) {
        List<NextStep.Shown> with = branch.with();
        if (with.isEmpty()) {
            return "no fault thought of shows this: read it again";
        }
        String named = with.stream()
                .limit(MOST_NAMED)
                .map(one -> one.value().equals(branch.outcome()) ? one.fault() : one.fault() + " " + one.value())
                .collect(Collectors.joining(", "));
        return with.size() > MOST_NAMED ? named + " and " + (with.size() - MOST_NAMED) + " more" : named;
    }

    /** A repair with its minutes and lids. */
    public static String job(NextStep.Job job) {
        return job.action() + ", " + minutes(job.minutes()) + ", " + lids(job.lids());
    }
}
