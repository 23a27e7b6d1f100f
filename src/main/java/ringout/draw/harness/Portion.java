package ringout.draw.harness;

import java.util.List;

/**
 * What one sheet shows.
 *
 * @param title the system it belongs to
 * @param leads numbers of the rows drawn on it, ascending
 */
record Portion(String title, List<Integer> leads) {}
