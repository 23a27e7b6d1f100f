package ringout.graph.wire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.model.Awg;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.shape.Scalars;

/**
 * The current a conductor carries all day in A: free air, times 1.4 for silicone of 200 degrees in moving air, times the
 * factor of its bundle (common practice, no source; the factor from 7 wires on is that of MIL-STD-975, from memory). A lead
 * of which neither insulation nor air is told gets no bonus; a bundle that is not told leaves a band from the fullest to none.
 *
 * @param low the least it carries, whatever the missing data are; 0 when its size is not known
 * @param high the most it carries; infinite when its size is not known
 */
public record Ampacity(double low, double high) {
    private static final double SILICONE_C = 200;
    private static final double MOVING_AIR = 1.4;
    private static final double FULLEST_BUNDLE = 0.5;
    private static final double SMALL_BUNDLE = 0.8;
    private static final int ALONE = 3;
    private static final int SMALL = 6;
    private static final int LARGE = 15;
    private static final Ampacity UNKNOWN = new Ampacity(0, Double.POSITIVE_INFINITY);

    /** The ampacity of a conductor. */
    public static Ampacity of(Wire wire) {
        Ampacity free = freeAir(wire);
        Lead lead = wire.lead();
        Datum<Integer> loaded = lead.loadedInBundle();
        double bundle = bundle(loaded.or(1));
        double air = cooled(lead) ? MOVING_AIR : 1;
        return new Ampacity(free.low * air * (loaded.isMissing() ? FULLEST_BUNDLE : bundle), free.high * air * bundle);
    }

    /** The table's value; beyond its ends only that it is more than the last row, or less than the first. */
    private static Ampacity freeAir(Wire wire) {
        Optional<Awg> gauge = wire.awg().known();
        Optional<Double> listed = gauge.flatMap(WireTable::row).map(WireTable.Row::freeAirA);
        if (listed.isPresent()) {
            return new Ampacity(listed.get(), listed.get());
        }
        Optional<Double> area = wire.areaMm2().known();
        if (area.isEmpty()) {
            return UNKNOWN;
        }
        return WireTable.freeAirA(area.get())
                .map(amps -> new Ampacity(amps, amps))
                .orElseGet(() -> beyond(area.get()));
    }

    private static Ampacity beyond(double areaMm2) {
        List<WireTable.Row> rows = WireTable.rows();
        WireTable.Row thinnest = rows.get(0);
        WireTable.Row thickest = rows.get(rows.size() - 1);
        return areaMm2 > new Awg(thickest.gauge()).areaMm2()
                ? new Ampacity(thickest.freeAirA(), Double.POSITIVE_INFINITY)
                : new Ampacity(0, thinnest.freeAirA());
    }

    /** Whether it is said to be silicone of 200 degrees in moving air. */
    private static boolean cooled(Lead lead) {
        return lead.insulationC().or(0.0) >= SILICONE_C && lead.movingAir().is(true);
    }

    /** What a conductor would carry more, as a factor, if it were the silicone in moving air that its row does not exclude. */
    public static double bonusLeft(Wire wire) {
        Lead lead = wire.lead();
        boolean still = lead.movingAir().is(false) || lead.movingAir().isNotApplicable();
        boolean cool = lead.insulationC().isKnown() && lead.insulationC().or(0.0) < SILICONE_C;
        return still || cool || cooled(lead) ? 1 : MOVING_AIR;
    }

    /** The factor of a bundle with so many loaded wires. */
    public static double bundle(int loaded) {
        if (loaded <= ALONE) {
            return 1;
        }
        if (loaded <= SMALL) {
            return SMALL_BUNDLE;
        }
        return loaded <= LARGE ? (29.0 - loaded) / 28.0 : FULLEST_BUNDLE;
    }

    /** Whether the band is closed. */
    public boolean isKnown() {
        return low == high;
    }

    /** How the ampacity of a conductor comes about: {@code 26 AWG free air}. */
    public static String words(Wire wire) {
        int loaded = wire.lead().loadedInBundle().or(1);
        return size(wire) + " free air"
                + (cooled(wire.lead()) ? ", silicone in moving air x1.4" : "")
                + (loaded > ALONE
                        ? ", " + loaded + " loaded wires x" + Scalars.number(Math.round(bundle(loaded) * 100) / 100.0)
                        : "");
    }

    private static String size(Wire wire) {
        Optional<Awg> gauge = wire.awg().known();
        return gauge.map(awg -> awg + " AWG")
                .orElseGet(() -> Scalars.number(wire.areaMm2().or(0.0)) + " mm2");
    }

    /** Data that would close the band of a conductor. */
    public static List<Gap> missing(Wire wire) {
        String id = wire.lead().id();
        List<Gap> missing = new ArrayList<>();
        if (freeAir(wire).equals(UNKNOWN)) {
            missing.add(new Gap("wire size", id));
        } else if (!freeAir(wire).isKnown()) {
            missing.add(new Gap("current rating for a size beyond the table", id));
        }
        if (wire.lead().loadedInBundle().isMissing()) {
            missing.add(new Gap("number of loaded wires in the bundle", id));
        }
        return List.copyOf(missing);
    }
}
