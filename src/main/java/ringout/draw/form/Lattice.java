package ringout.draw.form;

/** The lattice of heights and the clearances of a wiring diagram. */
public final class Lattice {
    /** One step of height, mm: more than the 2 mm that parallel wires keep. */
    public static final double STEP = 2.25;

    /** Steps from one pin to the next: room for lettering of 2.5 mm. */
    public static final int ROW = 2;

    /** Steps more for a line that carries a badge. */
    public static final int BADGE = 1;

    /** Steps between two plugs on one side of a box. */
    public static final int PLUG_GAP = 1;

    /** Steps below the last plug of a box. */
    public static final int BOX_FOOT = 1;

    /** Steps between two boxes of a column. */
    public static final int BOX_GAP = 3;

    /** Steps between a box and a wire that passes it. */
    public static final int PASS_GAP = 2;

    /** Clear width between the plugs on the left and on the right of a box, mm. */
    public static final double AISLE = 4;

    private Lattice() {}

    /** {@return steps as millimetres} */
    public static double mm(int steps) {
        return steps * STEP;
    }
}
