package ringout.draw.scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;

class WiringSceneTest {
    private static WiringSceneBuilder twoPins() {
        Plug a = new Plug("A-P", "P", List.of(new Pin("A-P-1", "1", "")));
        Plug b = new Plug("B-P", "P", List.of(new Pin("B-P-1", "1", "")));
        return WiringScene.builder(SheetInfo.of("t", "wiring diagram", "a", "s"))
                .box(new Box("A", "A", "", "", List.of(a)))
                .box(new Box("B", "B", "", "", List.of(b)));
    }

    private static Wire wire(String from, String to) {
        return new Wire("W1.1", "W1", "", "", WireKind.OTHER, "n", from, to);
    }

    private static String breach(WiringSceneBuilder scene) {
        return assertThrows(IllegalArgumentException.class, scene::build).getMessage();
    }

    @Test
    void soundSceneIsTaken() {
        assertEquals(1, twoPins().wire(wire("A-P-1", "B-P-1")).build().wires().size());
    }

    @Test
    void contradictionsAreNamed() {
        assertEquals("wire W1.1 ends at unknown B-P-9", breach(twoPins().wire(wire("A-P-1", "B-P-9"))));
        assertEquals("wire W1.1 starts at unknown C", breach(twoPins().wire(wire("C", "B-P-1"))));
        assertEquals("wire W1.1 ends where it starts", breach(twoPins().wire(wire("A-P-1", "A-P-1"))));
        assertEquals("identifier used twice: A", breach(twoPins().box(new Box("A", "", "", "", List.of()))));
        assertEquals("a reference ends no wire", breach(twoPins().reference(new Reference("R", "far"))));
        assertEquals("no wire ends at splice [S]", breach(twoPins().splice(new Splice("S", "S"))));
        assertEquals("mark on unknown X", breach(twoPins().mark(new Mark(1, BadgeKind.S1, false, List.of("X")))));
        assertEquals("move M has an unknown end", breach(twoPins().move(new Move("M", "A-P-1", "A"))));
    }
}
