package ringout.compare.find;

import java.util.ArrayList;
import java.util.List;
import ringout.compare.difference.Difference;
import ringout.compare.match.Match;
import ringout.graph.Circuit;

/**
 * The differences of two aircraft, and what of one is what of the other.
 *
 * @param match units, contacts and leads
 * @param nets which nets fall apart and which become one
 * @param all the differences: leads, units, types, the rest, each in the order of the base
 */
public record Differences(Match match, NetPartition nets, List<Difference> all) {
    /** Keeps its own copy. */
    public Differences {
        all = List.copyOf(all);
    }

    /**
     * Compares two aircraft. The order of rows, remarks, and how a contact is spelled never differ. Running time: linear in
     * what both lists say.
     *
     * @param base the design, the earlier revision, the first tail
     * @param other what is held against it
     */
    public static Differences of(Circuit base, Circuit other) {
        Scene scene = Scene.of(base, other);
        List<Difference> all = new ArrayList<>(new LeadFinder(scene).find());
        all.addAll(new UnitFinder(scene).find());
        all.addAll(new TypeFinder(scene).find());
        all.addAll(new AircraftFinder(scene).find());
        return new Differences(scene.match(), NetPartition.of(scene.match(), scene.here(), scene.there()), all);
    }
}
