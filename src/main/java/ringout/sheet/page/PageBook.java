package ringout.sheet.page;

import java.util.List;

/**
 * All that can be looked up.
 *
 * @param wires conductors in the order of the list
 * @param plugs plugs that have a conductor, UNIT-PLUG, in the order of the units
 * @param states the declared states, first the one that is drawn
 * @param search for a fault, in the first state
 */
public record PageBook(List<PageWire> wires, List<PagePlug> plugs, List<PageState> states, PageSearch search) {}
