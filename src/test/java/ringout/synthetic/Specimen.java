package ringout.synthetic;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/**
 * A valid aircraft with what its leads are for.
 *
 * @param json text of the aircraft's file
 * @param leads its leads with a plug at both ends, in the order made
 */
public record Specimen(String json, List<Joined> leads) {
    /**
     * A lead.
     *
     * @param id its identity
     * @param tag what it is for, such as "chain" or "phases"
     * @param from unit at the from end
     * @param fromPlug plug there
     * @param to unit at the to end
     * @param toPlug plug there
     * @param wires its conductors in the order of the contacts at the from end
     */
    public record Joined(
            String id, String tag, String from, String fromPlug, String to, String toPlug, List<Wire> wires) {
        /** The conductor of a function, as named at the from end. */
        public Wire wire(String function) {
            return wires.stream()
                    .filter(wire -> wire.function().equals(function))
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no " + function + " in " + id));
        }
    }

    /**
     * A conductor.
     *
     * @param function what it carries at the from end: V, 0, H, L, TX, RX, S1
     * @param fromPin number of its contact there
     * @param toPin number of its contact at the to end
     */
    public record Wire(String function, String fromPin, String toPin) {
        @Override
        public String toString() {
            return fromPin + ">" + toPin;
        }
    }

    /** The aircraft of a seed, of about so many conductors. */
    public static Specimen of(long seed, int conductors) {
        List<Joined> leads = new ArrayList<>();
        JsonSink sink = new JsonSink() {
            @Override
            public void made(Made made) {
                leads.add(joined(made));
            }
        };
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        SyntheticAircraft.write(seed, conductors, sink, out);
        return new Specimen(out.toString(StandardCharsets.UTF_8), List.copyOf(leads));
    }

    private static Joined joined(Made made) {
        return new Joined(
                made.id(),
                made.tag(),
                made.from().ref(),
                made.from().type().plug(made.fromPlug()).name(),
                made.to().ref(),
                made.to().type().plug(made.toPlug()).name(),
                made.wires().stream()
                        .map(wire -> new Wire(wire.function(), wire.fromPin(), wire.toPin()))
                        .toList());
    }
}
