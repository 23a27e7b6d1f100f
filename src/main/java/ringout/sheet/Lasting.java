package ringout.sheet;

import java.util.Optional;
import ringout.solve.power.Endurance;

/**
 * How long packs last that empty together, all loads at their average all the time.
 *
 * @param name of the packs
 * @param endurance how long; empty when it cannot be told
 */
public record Lasting(String name, Optional<Endurance> endurance) {}
