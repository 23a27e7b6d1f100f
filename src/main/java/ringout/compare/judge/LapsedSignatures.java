package ringout.compare.judge;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import ringout.compare.difference.Difference;
import ringout.compare.match.Match;
import ringout.model.AsBuilt;
import ringout.model.Signature;
import ringout.model.Step;

/**
 * Signatures of either record that no longer hold: of a thing that differs, of a step that touches it, of the hold point of the
 * stage of such a step, and the release of the whole aircraft.
 */
final class LapsedSignatures {
    private final Match match;

    LapsedSignatures(Match match) {
        this.match = match;
    }

    List<String> of(Difference difference) {
        if (difference.kind().ofRecord()) {
            return List.of();
        }
        Set<String> lapsed = new TreeSet<>();
        Set<String> here = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        here.addAll(difference.touched().units());
        here.addAll(difference.touched().leads());
        lapse(match.base().aircraft().record(), here, lapsed);
        Set<String> there = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        there.addAll(difference.touched().unitsThere());
        there.addAll(difference.touched().leadsThere());
        lapse(match.other().aircraft().record(), there, lapsed);
        return List.copyOf(lapsed);
    }

    private static void lapse(AsBuilt record, Set<String> names, Set<String> lapsed) {
        if (names.isEmpty() || record.signatures().isEmpty()) {
            return;
        }
        Set<String> items = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        items.addAll(names);
        Set<String> stages = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        for (Step step : record.steps()) {
            if (step.objects().stream().anyMatch(object -> touches(object, names))) {
                items.add(step.id());
                step.stage().known().ifPresent(stages::add);
            }
        }
        items.addAll(stages);
        for (Step step : record.steps()) {
            if (step.action().is("sign") && stages.contains(step.stage().or(""))) {
                items.addAll(step.objects());
                items.add(step.id());
            }
        }
        for (Signature signature : record.signatures()) {
            boolean release = signature.role().or("").toLowerCase(Locale.ROOT).startsWith("release");
            if (release || items.contains(signature.item().strip())) {
                lapsed.add(words(signature));
            }
        }
    }

    private static boolean touches(String object, Set<String> names) {
        int end = object.indexOf('-');
        return names.contains(object) || (end > 0 && names.contains(object.substring(0, end)));
    }

    private static String words(Signature signature) {
        List<String> words = new ArrayList<>();
        words.add(signature.item());
        signature.role().known().ifPresent(words::add);
        signature.by().known().ifPresent(words::add);
        signature.date().known().ifPresent(words::add);
        return String.join(" ", words);
    }
}
