package ringout.sheet.page;

import java.util.List;
import ringout.solve.meter.BusPull;

/**
 * What happens when a plug is pulled.
 *
 * @param mated whether it is mated in this state
 * @param dark units that lose their supply
 * @param cut bus members that the flight controller no longer reaches
 * @param motors motors that stop
 * @param functions listed functions of the aircraft that stop
 * @param changes bus readings that change, power off
 */
public record PagePull(
        boolean mated,
        List<String> dark,
        List<String> cut,
        List<String> motors,
        List<String> functions,
        List<BusPull.Effect> changes) {}
