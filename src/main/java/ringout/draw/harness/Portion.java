package ringout.draw.harness;

import java.util.List;

/**
 * What one sheet shows.
 *
 * @param title the system it belongs to
 * @param leads numbers of the rows drawn on it, ascending
 */
record Portion(String title, List<Integer> leads) {
    /** The same rows on two sheets. */
    List<Portion> halves() {
        int half = leads.size() / 2;
        return List.of(
                new Portion(title, leads.subList(0, half)), new Portion(title, leads.subList(half, leads.size())));
    }
}
