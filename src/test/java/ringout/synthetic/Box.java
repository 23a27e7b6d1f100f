package ringout.synthetic;

/**
 * A unit aboard.
 *
 * @param ref its name
 * @param type its type
 */
record Box(String ref, UnitType type) {
    /** UNIT-PLUG as ends of leads say. */
    String end(String use) {
        return ref + "-" + type.plug(use).name();
    }
}
