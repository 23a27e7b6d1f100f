package ringout.solve.network;

/** Unit-resistance networks whose resistances are known exactly. */
final class Solids {

    private Solids() {}

    /** Corners of a cube; two are neighbours when their numbers differ in one bit. */
    static ResistiveNetwork cube() {
        NetworkBuilder b = ResistiveNetwork.builder(8);
        for (int v = 0; v < 8; v++) {
            for (int bit = 1; bit < 8; bit *= 2) {
                if ((v & bit) == 0) {
                    b.resistor(v, v | bit, 1);
                }
            }
        }
        return b.build();
    }

    static ResistiveNetwork tetrahedron() {
        return complete(4);
    }

    static ResistiveNetwork complete(int n) {
        NetworkBuilder b = ResistiveNetwork.builder(n);
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                b.resistor(i, j, 1);
            }
        }
        return b.build();
    }

    /** Corners v and v + 3 are opposite. */
    static ResistiveNetwork octahedron() {
        NetworkBuilder b = ResistiveNetwork.builder(6);
        for (int i = 0; i < 6; i++) {
            for (int j = i + 1; j < 6; j++) {
                if (j != i + 3) {
                    b.resistor(i, j, 1);
                }
            }
        }
        return b.build();
    }

    /** North pole 0, upper ring 1-5, lower ring 6-10, south pole 11 opposite to 0. */
    static ResistiveNetwork icosahedron() {
        NetworkBuilder b = ResistiveNetwork.builder(12);
        for (int i = 0; i < 5; i++) {
            int up = 1 + i;
            int down = 6 + i;
            b.resistor(0, up, 1);
            b.resistor(11, down, 1);
            b.resistor(up, 1 + (i + 1) % 5, 1);
            b.resistor(down, 6 + (i + 1) % 5, 1);
            b.resistor(up, down, 1);
            b.resistor(up, 6 + (i + 1) % 5, 1);
        }
        return b.build();
    }

    /** Square grid of unit resistors, node {@code row * side + column}. */
    static ResistiveNetwork grid(int side) {
        NetworkBuilder b = ResistiveNetwork.builder(side * side);
        for (int i = 0; i < side; i++) {
            for (int j = 0; j < side; j++) {
                if (i + 1 < side) {
                    b.resistor(i * side + j, (i + 1) * side + j, 1);
                }
                if (j + 1 < side) {
                    b.resistor(i * side + j, i * side + j + 1, 1);
                }
            }
        }
        return b.build();
    }
}
