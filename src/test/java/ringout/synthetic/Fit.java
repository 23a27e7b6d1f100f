package ringout.synthetic;

/** Classes of plugs: what a contact of them carries and which wire it takes. */
enum Fit {
    /** Signals and small supplies. */
    SMALL("1.25 mm latching", 2.0, 20.0, 30, 22),
    /** Supplies of some ampere. */
    MEDIUM("3.0 mm latching", 10.0, 3.0, 24, 14),
    /** Motor phases and feeds of speed controllers. */
    LARGE("4 mm round contact", 60.0, 0.25, 16, 8),
    /** Packs and board studs. */
    MAIN("8 mm round contact", 250.0, 0.1, 10, 2);

    private final String family;
    private final double ratingA;
    private final double milliohm;
    private final int thinnest;
    private final int thickest;

    Fit(String family, double ratingA, double milliohm, int thinnest, int thickest) {
        this.family = family;
        this.ratingA = ratingA;
        this.milliohm = milliohm;
        this.thinnest = thinnest;
        this.thickest = thickest;
    }

    String family(int contacts) {
        return contacts + "-pole " + family;
    }

    /** The fields of a plug of this class. */
    Row plug(String name, int contacts) {
        return Row.of(
                "name",
                name,
                "family",
                family(contacts),
                "half",
                this == MAIN ? "neutral" : "sockets",
                "contactRatingA",
                Row.of("value", ratingA, "origin", "maker"),
                "contactMilliohm",
                milliohm,
                "shrouded",
                true,
                "plating",
                "gold",
                "crimpMinAwg",
                thinnest,
                "crimpMaxAwg",
                thickest);
    }

    /** The thinnest gauge a contact takes. */
    int thinnest() {
        return thinnest;
    }
}
