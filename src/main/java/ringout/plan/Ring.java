package ringout.plan;

import java.util.List;
import ringout.graph.order.Before;

/**
 * Tasks that wait for each other.
 *
 * @param words each need of the ring in words, one after the other
 * @param links the needs
 * @param cut the need that is done without, as the cheapest way out of all rings; empty when there is no way out
 */
public record Ring(List<String> words, List<Before> links, List<Before> cut) {}
