package ringout.sheet.page;

import java.util.List;
import java.util.Map;
import ringout.solve.meter.Reading;

/**
 * One state of the aircraft.
 *
 * @param name its name
 * @param absent units taken off
 * @param apart plugs not mated
 * @param netOf by conductor, the number of its net
 * @param nets the nets that have a conductor
 * @param ohms by conductor, from pin to pin with all plugs mated as the state says and the power off
 * @param buses by plug of a bus, between H and L, mated and the power off
 * @param pulls by plug, what happens when it is pulled
 * @param noVolts why no voltage could be computed; empty if they could
 */
public record PageState(
        String name,
        List<String> absent,
        List<String> apart,
        List<Integer> netOf,
        List<PageNet> nets,
        List<Reading> ohms,
        Map<String, Reading> buses,
        List<PagePull> pulls,
        String noVolts) {}
