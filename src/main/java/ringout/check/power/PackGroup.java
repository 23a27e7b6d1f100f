package ringout.check.power;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.check.form.Situation;
import ringout.graph.index.UnionFind;
import ringout.graph.power.PlacedLoad;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.power.SourceReach;

/**
 * Packs that empty together: in series, in parallel, or with loads that either may feed.
 *
 * @param packs the packs
 * @param loads what they feed
 */
record PackGroup(List<PowerSource> packs, List<PlacedLoad> loads) {
    /** The groups of a situation in the order of their packs. */
    static List<PackGroup> all(Situation at) {
        PowerGraph power = PowerGraph.of(at.circuit());
        SourceReach reach = SourceReach.of(at.circuit());
        UnionFind sets = new UnionFind(power.sources().size());
        for (PlacedLoad load : power.loads()) {
            int first = -1;
            for (PowerSource above : reach.above(load.plus())) {
                if (above.kind() == PowerSource.Kind.PACK && first >= 0) {
                    sets.union(first, above.index());
                } else if (above.kind() == PowerSource.Kind.PACK) {
                    first = above.index();
                }
            }
        }
        Map<Integer, List<PowerSource>> groups = new LinkedHashMap<>();
        for (PowerSource source : power.sources()) {
            if (source.kind() == PowerSource.Kind.PACK && power.works(source)) {
                groups.computeIfAbsent(sets.find(source.index()), key -> new ArrayList<>())
                        .add(source);
            }
        }
        List<PackGroup> all = new ArrayList<>();
        for (List<PowerSource> packs : groups.values()) {
            BitSet seen = new BitSet();
            List<PlacedLoad> loads = new ArrayList<>();
            for (PowerSource pack : packs) {
                for (PlacedLoad load : reach.loads(pack)) {
                    if (!seen.get(load.index())) {
                        seen.set(load.index());
                        loads.add(load);
                    }
                }
            }
            if (!loads.isEmpty()) {
                all.add(new PackGroup(List.copyOf(packs), List.copyOf(loads)));
            }
        }
        return all;
    }

    /** Names of the packs: {@code BAT1 + BAT2}. */
    String name(Situation at) {
        return String.join(" + ", names(at));
    }

    /** Names of the packs. */
    List<String> names(Situation at) {
        return packs.stream().map(pack -> at.directory().name(pack.unit())).toList();
    }
}
