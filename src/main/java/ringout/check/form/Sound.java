package ringout.check.form;

/**
 * A check that presumes a sound supply. While a pack is shorted or turned round, every way and every current it looks at is a
 * consequence of that: what it finds is told under the finding that explains it.
 */
public interface Sound extends Check {
    /** Said among what a finding explains: that the supply is not sound. */
    String SUPPLY = "supply";
}
