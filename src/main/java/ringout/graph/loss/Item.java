package ringout.graph.loss;

/**
 * Something that can let go as one.
 *
 * @param index its number among all items of the aircraft
 * @param kind what it is
 * @param number number of the lead, part, unit, joint or conductor; of a plug its number among all plugs
 * @param unit number of the unit it sits on; -1 for a lead, its fuse and a conductor
 * @param name as the user names it; of a conductor its lead
 */
public record Item(int index, Kind kind, int number, int unit, String name) {
    /** What lets go. */
    public enum Kind {
        /** A lead comes off, all its conductors with it. */
        LEAD("lead"),
        /** A plug is pulled, a clamp or stud comes loose. */
        PLUG("plug"),
        /** A fuse opens. */
        FUSE("fuse"),
        /** A regulator or converter stops. */
        REGULATOR("regulator"),
        /** A splice, clamp or stud that is no part of a unit comes apart. */
        JOINT("joint"),
        /** Another part between two points opens: switch, diode, link, sense resistor. */
        PART("part"),
        /** A whole unit goes. */
        UNIT("unit"),
        /** One conductor of a lead opens. */
        WIRE("conductor");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        /** The kind in words. */
        public String word() {
            return word;
        }
    }
}
