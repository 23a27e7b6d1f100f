package ringout.check.power;

import ringout.check.form.Gaps;

/** The cheapest way to the data that checks of supplies and returns lack. */
final class PowerData {
    static final String SUPPLY_RANGE = "supply range";
    static final String ZERO_PIN = "0V pin, or that it returns through the frame,";
    static final String ROLE = "role";
    static final String AVERAGE = "average current";
    static final String BEHIND = "average current behind the regulator, or its efficiency,";
    static final String CONTACT = "contact resistance";
    static final String FUSE = "fuse rating";
    static final String LENGTH = "length";
    static final String REST = "voltage at rest";
    static final String CAPACITY = "capacity";
    static final String CELLS = "number of cells";
    static final String PEAK = "peak current";
    static final String EFFICIENCY = "efficiency";
    static final String PACK_OHM = "resistance of a cell";
    static final String EMPTY_CELL = "voltage of an empty cell";
    static final String FRAME_WAY = "way back through the frame, as a lead or joint,";
    static final String COLLAPSE = "operating point, since the voltage collapses at the loads";
    static final String UNSETTLED = "operating point, since diodes and regulators do not come to rest in state";
    static final String DECIDES = "measured figure for the assumed one that decides";
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
        if (datum.equals(CONTACT)) {
            return new Gaps.Way(
                    "take the maker's figure for the plug, or measure the mated contact with four wires", 5);
        }
        if (datum.equals("cycles") || datum.startsWith("chemistry")) {
            return new Gaps.Way("look it up in the log or on the label of the pack", 2);
        }
        if (datum.equals(FUSE)) {
            return new Gaps.Way("read the print on the fuse", 1);
        }
        if (datum.equals(REST)) {
            return new Gaps.Way("pack out, meter across its main contacts", 1);
        }
        if (datum.contains("cell") || datum.equals(CAPACITY)) {
            return new Gaps.Way("read the label of the pack", 1);
        }
        if (datum.equals("planned mission time")
                || datum.startsWith("reserve asked")
                || datum.startsWith("lowest temperature")) {
            return new Gaps.Way("ask who plans the flights", 1);
        }
        if (datum.equals("health")) {
            return new Gaps.Way("read the charger: charge it takes from empty to full over the one on its label", 2);
        }
        if (datum.startsWith("time of the ")) {
            return new Gaps.Way("log the current over one flight", 10);
        }
        if (datum.equals(LENGTH)) {
            return new Gaps.Way("lay a tape along the lead", 2);
        }
        if (datum.equals(COLLAPSE)) {
            return new Gaps.Way("reduce the loads, or give the packs and leads for them", 10);
        }
        if (datum.equals(DECIDES)) {
            return new Gaps.Way("clamp a meter around its lead, or read the maker's data", 5);
        }
        if (datum.equals(ROLE) || datum.equals(ZERO_PIN) || datum.equals(ZeroLink.ZERO)) {
            return new Gaps.Way("look it up in the maker's pin-out", 5);
        }
        return new Gaps.Way("look it up in the maker's data", 5);
    }
}
