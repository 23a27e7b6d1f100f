package ringout.check.redundancy;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Weight;

/** Writes what is said of rotors that stop together. */
final class StoppedRotors {
    /** What findings of the loss tables share. */
    static final String TABLE = "loss table";

    private static final int FEW = 4;

    private StoppedRotors() {}

    /** One finding for each set of rotors of a family that leaves less than another sharing would. */
    static Map<BitSet, Draft> of(RotorsLost lost, Siblings family, List<BitSet> better, String caution) {
        Map<BitSet, Draft> drafts = new LinkedHashMap<>();
        if (better.isEmpty()) {
            return drafts;
        }
        RotorsLost.Left least =
                better.stream().map(lost::left).min(Comparator.naturalOrder()).orElse(RotorsLost.Left.ENOUGH);
        for (Siblings.Share share : family.shares()) {
            if (lost.left(share.rotors()).compareTo(least) < 0) {
                drafts.put(share.rotors(), draft(lost, family, share, better, caution));
            }
        }
        return drafts;
    }

    private static Draft draft(
            RotorsLost lost, Siblings family, Siblings.Share share, List<BitSet> better, String caution) {
        BitSet stopped = share.rotors();
        boolean none = lost.left(stopped) == RotorsLost.Left.NONE;
        Draft draft = Draft.of(
                        Severity.S3,
                        "rotors stop together: without " + share.name() + " "
                                + lost.names(stopped, ", ") + " stop, "
                                + (none ? "no hover is left" : "hardly a hover is left"))
                .about(share.name())
                .sum("margin without " + lost.names(stopped, ", ") + ": " + lost.margin(stopped) + "; shared as "
                        + groups(lost, better) + " at least " + worst(lost, better) + " of " + weights(lost) + "; "
                        + caution)
                .judged(
                        lost.hover.without(stopped).orElse(0),
                        lost.enoughKgf(),
                        "kgf",
                        lost.at.limit(Thresholds.ROTOR_MARGIN).source())
                .why("one thing that lets go takes rotors that the others cannot stand in for")
                .meter("propellers off: open or pull " + share.name()
                        + " and see which motors no longer turn; look at the list" + " when it is not "
                        + lost.names(stopped, ", "))
                .fix("share the motors over the " + family.what() + " as " + groups(lost, better));
        if (share.leads().isEmpty()) {
            draft.cause(share.name() + " members");
        }
        share.leads().forEach(draft::at);
        return draft;
    }

    private static String groups(RotorsLost lost, List<BitSet> groups) {
        return groups.stream().map(group -> lost.names(group, "+")).sorted().collect(Collectors.joining(", "));
    }

    private static String worst(RotorsLost lost, List<BitSet> groups) {
        return groups.stream()
                .min(Comparator.comparingDouble(lost::value))
                .map(lost::margin)
                .orElse("none");
    }

    private static String weights(RotorsLost lost) {
        return lost.at.aircraft().airframe().weights().stream()
                .map(Weight::name)
                .collect(Collectors.joining(", "));
    }

    /** Not even all rotors carry it. */
    static Draft never(RotorsLost lost) {
        return Draft.of(Severity.S2, "no hover: all rotors together do not carry the aircraft in balance")
                .about("rotors")
                .sum("with all " + lost.all().cardinality() + " rotors turning: " + lost.margin(new BitSet())
                        + "; weights " + weights(lost))
                .source("statics")
                .why("it does not leave the ground, or turns over, or one of the figures is wrong")
                .fix("check weight, centre of gravity, bearings, distances and largest thrust")
                .cause("rotor table");
    }

    /** One line for all sets of two and more, but not all rotors, that no free sharing cures. */
    static Optional<Draft> note(RotorsLost lost, Map<BitSet, List<String>> sets, String caution) {
        List<String> words = new ArrayList<>();
        sets.entrySet().stream()
                .filter(entry ->
                        entry.getKey().cardinality() > 1 && !entry.getKey().equals(lost.all()))
                .filter(entry -> lost.left(entry.getKey()) == RotorsLost.Left.NONE)
                .sorted(Comparator.comparing((Map.Entry<BitSet, List<String>> entry) ->
                                entry.getKey().cardinality())
                        .thenComparing(entry -> lost.names(entry.getKey(), " ")))
                .forEach(entry -> words.add(lost.names(entry.getKey(), " ") + " with " + few(entry.getValue())));
        if (words.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(Draft.of(
                        Severity.S5,
                        "rotor groups: " + words.size() + (words.size() == 1 ? " set" : " sets")
                                + " of rotors can stop together and leave no hover, no free cure known")
                .about("rotor groups")
                .sum(String.join("; ", words) + "; " + caution)
                .source("statics")
                .why("single by design: inspect these before each flight")
                .cause(TABLE));
    }

    private static String few(List<String> names) {
        return names.size() <= FEW
                ? String.join(", ", names)
                : String.join(", ", names.subList(0, FEW)) + " and " + (names.size() - FEW) + " more";
    }
}
