package ringout.sheet.page;

import java.util.List;

/**
 * All that can be looked up.
 *
 * @param wires conductors in the order of the list
 * @param plugs plugs that have a conductor, UNIT-PLUG, in the order of the units
 * @param states the declared states, first the one that is drawn
 */
public record PageBook(List<PageWire> wires, List<PagePlug> plugs, List<PageState> states) {}
