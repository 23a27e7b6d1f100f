package ringout.check.installation;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import ringout.check.form.Figures;

/**
 * A band satellite receivers listen to, and what falls into it. Signals there are weaker than the noise of a resistor, so that a
 * harmonic far below what a transmitter may radiate covers them.
 *
 * @param name what it is called
 * @param lowMhz lower edge
 * @param highMhz upper edge
 * @param centre its main signal, MHz
 */
record SatelliteBand(String name, double lowMhz, double highMhz, double centre) {
    /** Highest multiple of a transmitter that is looked at. */
    static final int MULTIPLES = 3;

    /** The band every receiver uses. */
    static final SatelliteBand L1 = new SatelliteBand("L1", 1559, 1610, 1575.42);

    /** All of them, with the edges of the ITU Radio Regulations and of the published interface documents. */
    static final List<SatelliteBand> ALL =
            List.of(L1, new SatelliteBand("L2", 1215, 1240, 1227.6), new SatelliteBand("L5", 1164, 1189, 1176.45));

    private static final double LIGHT_MM_MHZ = 299_792.458;

    /**
     * A multiple of a transmitter band that falls into a satellite band.
     *
     * @param times which multiple
     * @param lowMhz its lower edge
     * @param highMhz its upper edge
     */
    record Harmonic(int times, double lowMhz, double highMhz) {
        @Override
        public String toString() {
            return times + " x " + Figures.of(lowMhz / times) + "-" + Figures.of(highMhz / times) + " MHz = "
                    + Figures.of(lowMhz) + "-" + Figures.of(highMhz) + " MHz";
        }
    }

    /** The lowest multiple of a transmitter band that falls into this band. */
    Optional<Harmonic> hit(double transmitLow, double transmitHigh) {
        return Stream.iterate(1, times -> times + 1)
                .limit(MULTIPLES)
                .map(times -> new Harmonic(times, transmitLow * times, transmitHigh * times))
                .filter(harmonic -> harmonic.lowMhz <= highMhz && harmonic.highMhz >= lowMhz)
                .findFirst();
    }

    /** Whether two bands overlap. */
    boolean overlaps(double low, double high) {
        return low <= highMhz && high >= lowMhz;
    }

    /** What free space takes between two antennas without gain: 20 log10(4 pi d / wavelength), or 22 + 20 log10(d / wavelength), dB. */
    static double couplingDb(double distanceMm, double mhz) {
        return 20 * Math.log10(4 * Math.PI * distanceMm / wavelengthMm(mhz));
    }

    /** Wavelength in mm. */
    static double wavelengthMm(double mhz) {
        return LIGHT_MM_MHZ / mhz;
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s %.0f-%.0f MHz", name, lowMhz, highMhz);
    }
}
