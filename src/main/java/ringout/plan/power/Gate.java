package ringout.plan.power;

import java.util.List;

/**
 * Something on the supply of the packs that can be left unplugged until its turn.
 *
 * @param units units that stay without power while it is open
 * @param plugs plugs to leave open
 * @param last units with plugs of their own, after all regulators
 */
record Gate(List<Integer> units, List<String> plugs, boolean last) {}
