package ringout.graph.wire;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.graph.Circuit;
import ringout.model.Beside;
import ringout.model.Lead;

/** Which leads run along which other leads, as either of the two rows says. */
public final class PowerBeside {
    private final Map<String, List<Run>> byLead = new HashMap<>();

    /** A stretch along another lead. */
    private record Run(Lead other, double lengthMm) {}

    private PowerBeside(Circuit circuit) {
        List<Lead> leads = circuit.wiring().aircraft().leads();
        Map<String, Lead> byId = new HashMap<>();
        leads.forEach(lead -> byId.putIfAbsent(lead.id(), lead));
        for (Lead lead : leads) {
            for (Beside run : lead.beside()) {
                Lead other = byId.get(run.lead());
                if (other != null) {
                    add(lead.id(), other, run);
                    add(other.id(), lead, run);
                }
            }
        }
    }

    private void add(String lead, Lead other, Beside run) {
        byLead.computeIfAbsent(lead, key -> new ArrayList<>())
                .add(new Run(other, run.lengthMm().or(0.0)));
    }

    /** The neighbours of an aircraft, found once. */
    public static PowerBeside of(Circuit circuit) {
        return circuit.know(PowerBeside.class, PowerBeside::new);
    }

    /** Leads of more than a current in A that a lead lies beside for more than a length in mm, with their currents, by id. */
    public Map<String, Double> of(Lead lead, double moreThanMm, double moreThanA) {
        Map<String, Double> found = new TreeMap<>();
        for (Run run : byLead.getOrDefault(lead.id(), List.of())) {
            double amps =
                    Math.max(run.other().averageA().or(0.0), run.other().peakA().or(0.0));
            if (run.lengthMm() > moreThanMm && amps > moreThanA) {
                found.put(run.other().id(), amps);
            }
        }
        return found;
    }
}
