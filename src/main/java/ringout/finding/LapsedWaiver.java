package ringout.finding;

/**
 * A waiver that does not hold.
 *
 * @param finding identity of the finding it names
 * @param why why it does not hold: refused, ended, worse, changed, or nothing to waive
 */
public record LapsedWaiver(String finding, String why) {}
