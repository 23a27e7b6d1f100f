package ringout.draw.harness;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.draw.scene.OhmsLine;
import ringout.graph.Circuit;
import ringout.graph.bus.BusSegment;
import ringout.solve.meter.BusQuestion;
import ringout.solve.meter.BusTable;
import ringout.solve.meter.Reading;

/** What a meter reads between the legs at every plug of a bus, mated and pulled, as the lines of a drawing. */
final class BusReadings {
    private static final double KILO = 1000;

    private final Circuit circuit;

    BusReadings(Circuit circuit) {
        this.circuit = circuit;
    }

    /** The readings at the plugs of a bus, along its trunk and then its branches. */
    List<OhmsLine> of(BusSegment segment) {
        BusTable table = BusQuestion.asListed(circuit, segment);
        List<Reading> readings = table.rows().get(0).readings();
        int plugs = readings.size() / BusTable.Side.values().length;
        List<OhmsLine> lines = new ArrayList<>();
        for (int i = 0; i < plugs; i++) {
            lines.add(new OhmsLine(
                    table.spots().get(i).plug(),
                    ohms(readings.get(i)),
                    ohms(readings.get(plugs + i)),
                    ohms(readings.get(2 * plugs + i))));
        }
        return lines;
    }

    private static String ohms(Reading reading) {
        if (!(reading instanceof Reading.Ohms ohms)) {
            return "open";
        }
        return ohms.ohm() < KILO
                ? String.format(Locale.ROOT, "%.0f", ohms.ohm())
                : String.format(Locale.ROOT, "%.1f k", ohms.ohm() / KILO);
    }
}
