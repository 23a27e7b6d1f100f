package ringout.compare.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import ringout.compare.difference.Difference;
import ringout.compare.find.Differences;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.finding.Report;
import ringout.graph.Circuit;

/**
 * The differences of two aircraft with what they mean, dangerous ones first.
 *
 * @param differences as found
 * @param all judged, the worst first; of equal gravity in the order they were found
 * @param otherwise findings that come although no difference is at their rows
 * @param blind what could be told of the base and cannot be told of the other aircraft
 */
public record Judgement(Differences differences, List<Judged> all, List<Finding> otherwise, List<CannotTell> blind) {
    /** Keeps its own copies. */
    public Judgement {
        all = List.copyOf(all);
        otherwise = List.copyOf(otherwise);
        blind = List.copyOf(blind);
    }

    /**
     * Compares and judges two aircraft.
     *
     * @param base the base in its first state
     * @param before what the checks say of the base
     * @param other the other aircraft in its first state
     * @param after what the checks say of it
     */
    public static Judgement of(Circuit base, Report before, Circuit other, Report after) {
        Differences differences = Differences.of(base, other);
        ComingGoing findings = new ComingGoing(differences.match(), before, after);
        Attribution attribution = new Attribution(differences.all(), findings.groups());
        Consequences consequences = new Consequences(differences.match(), base, other);
        List<Judged> all = new ArrayList<>();
        for (Difference difference : differences.all()) {
            all.add(consequences.judge(
                    difference,
                    attribution.of(difference, findings.appear()),
                    attribution.of(difference, findings.vanish())));
        }
        all.sort(Comparator.comparing(Judged::severity));
        return new Judgement(differences, all, attribution.without(findings.appear()), findings.blind());
    }

    /** The differences that make it wrong to power or fly the aircraft. */
    public List<Judged> dangerous() {
        return all.stream().filter(Judged::dangerous).toList();
    }
}
