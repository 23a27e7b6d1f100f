package ringout.sheet.page;

import java.util.List;

/**
 * A plug that has a conductor.
 *
 * @param name UNIT-PLUG
 * @param unit its unit
 * @param wires numbers of its conductors
 */
public record PagePlug(String name, String unit, List<Integer> wires) {}
