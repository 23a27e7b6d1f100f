package ringout.sheet;

/**
 * One pack at the average of all loads.
 *
 * @param name of the pack
 * @param amps current out of it in A
 * @param openV voltage without current, at the nominal voltage of its cells, in V
 * @param volts voltage at its poles in V
 */
public record PackLine(String name, double amps, double openV, double volts) {
    /** {@return what it loses inside in V} */
    public double sag() {
        return openV - volts;
    }
}
