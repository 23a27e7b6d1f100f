package ringout.sheet.page;

import java.util.List;
import ringout.solve.meter.BusPull;

/**
 * What happens when a plug is pulled.
 *
 * @param mated whether it is mated in this state
 * @param dark units that lose their supply
 * @param cut bus members that no longer reach the rest of their bus
 * @param changes bus readings that change, power off
 */
public record PagePull(boolean mated, List<String> dark, List<String> cut, List<BusPull.Effect> changes) {}
