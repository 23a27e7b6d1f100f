package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.check.form.Outcomes;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.model.Lead;

/** Colours of H and L in the leads of buses, where the project has chosen none: a lead against most others. */
final class BusColours {
    private static final String YELLOW = "YE";

    private final Map<Integer, Pair> byRow = new TreeMap<>();

    /** Colours of H and L of one lead; empty until told. */
    private record Pair(Lead lead, String high, String low) {
        private boolean whole() {
            return !high.isEmpty() && !low.isEmpty();
        }
    }

    void add(Wire wire, Carries carries, String colour) {
        Pair pair = byRow.getOrDefault(wire.leadIndex(), new Pair(wire.lead(), "", ""));
        byRow.put(
                wire.leadIndex(),
                carries == Carries.BUS_HIGH
                        ? new Pair(pair.lead(), colour, pair.low())
                        : new Pair(pair.lead(), pair.high(), colour));
    }

    void tell(Outcomes out) {
        Map<String, List<Pair>> byColours = new TreeMap<>();
        for (Pair pair : byRow.values()) {
            if (pair.whole()) {
                byColours
                        .computeIfAbsent(pair.high() + " " + pair.low(), key -> new ArrayList<>())
                        .add(pair);
            }
        }
        for (List<Pair> pairs : byColours.values()) {
            Pair one = pairs.get(0);
            List<Pair> turned = byColours.getOrDefault(one.low() + " " + one.high(), List.of());
            boolean fewer = turned.size() > pairs.size();
            boolean even = turned.size() == pairs.size() && !usual(one);
            if (fewer || even) {
                pairs.forEach(pair -> out.finding(draft(pair, turned)));
            } else {
                out.looked();
            }
        }
    }

    /** Where as many leads have it either way, H is yellow; in other colours, the first of the alphabet. */
    private static boolean usual(Pair pair) {
        boolean named = pair.high().equals(YELLOW) || pair.low().equals(YELLOW);
        return named ? pair.high().equals(YELLOW) : pair.high().compareTo(pair.low()) <= 0;
    }

    private static Draft draft(Pair pair, List<Pair> others) {
        Pair other = others.get(0);
        return Draft.of(
                        Severity.S4,
                        "bus colours exchanged: " + pair.lead().id() + " has " + pair.high() + " on H and " + pair.low()
                                + " on L, " + other.lead().id() + " the other way round")
                .about(pair.lead().id())
                .at(pair.lead())
                .seen(other.lead())
                .sum(pair.lead().id() + " H " + pair.high() + " L " + pair.low() + "; " + others.size() + " others H "
                        + other.high() + " L " + other.low())
                .source("common practice, no source")
                .why("whoever joins or repairs two of them by colour exchanges the pair")
                .meter("plugs pulled, ring out " + pair.lead().id() + ": the list may be wrong")
                .fix("make " + pair.lead().id() + " with " + other.high() + " on H and " + other.low()
                        + " on L, and enter the choice of the project");
    }
}
