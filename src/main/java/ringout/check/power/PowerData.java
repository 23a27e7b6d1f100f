package ringout.check.power;

import ringout.check.form.Gaps;

/** The cheapest way to the data that checks of supplies and returns lack. */
final class PowerData {
    static final String SUPPLY_RANGE = "supply range";
    static final String ZERO_PIN = "0V pin, or that it returns through the frame,";
    static final String ROLE = "role";
    static final String AVERAGE = "average current";
    static final String BEHIND = "average current behind the regulator, or its efficiency,";
    static final String PEAK = "peak current";
    static final String EFFICIENCY = "efficiency";
    static final String PACK_OHM = "resistance of a cell";
    static final String EMPTY_CELL = "voltage of an empty cell";
    static final String HIGHEST = "highest voltage the pin stands";

    private PowerData() {}

    static Gaps.Way way(String datum) {
        if (datum.contains("wire size") || datum.contains("rating for a size")) {
            return new Gaps.Way("read the print on the wire, or measure the bare conductor", 2);
        }
        if (datum.contains("insulation") || datum.contains("bundle")) {
            return new Gaps.Way("look at the lead where it runs", 2);
        }
        if (datum.equals(AVERAGE) || datum.equals(PEAK) || datum.equals(EFFICIENCY) || datum.equals(BEHIND)) {
            return new Gaps.Way("look it up in the maker's data, or clamp a meter around its lead", 5);
        }
        if (datum.contains("cell")) {
            return new Gaps.Way("read the label of the pack", 1);
        }
        if (datum.equals(ROLE) || datum.equals(ZERO_PIN)) {
            return new Gaps.Way("look it up in the maker's pin-out", 5);
        }
        return new Gaps.Way("look it up in the maker's data", 5);
    }
}
