package ringout.graph.power;

import java.util.Optional;
import ringout.model.Rail;

/**
 * What a unit draws from one of its rails, and between which points.
 *
 * @param index number among all placed loads of the aircraft
 * @param unit number of the unit
 * @param rail name of the rail inside, or of the pin that stands alone
 * @param limits what the type says of the rail
 * @param plus vertex of the supply point
 * @param zero vertex of its 0V; -1 when the type names none
 * @param frameReturn the type says that the rail has no 0V pin: it returns through the frame
 * @param load what it draws
 */
public record PlacedLoad(
        int index, int unit, String rail, Optional<Rail> limits, int plus, int zero, boolean frameReturn, Load load) {}
