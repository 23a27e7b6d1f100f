package ringout.draw.verify;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.StyledSheet.Promise;

/** Verifies finished sheets. */
public final class Verifier {
    private Verifier() {}

    /** {@return what is wrong with a sheet that must hold these wires; reads nothing but the SVG text} */
    public static Verdict verify(String svg, List<Promise> promised) {
        return verify(svg, promised, List.of());
    }

    /** {@return what is wrong with a sheet that must hold these wires and things} */
    public static Verdict verify(String svg, List<Promise> promised, List<String> things) {
        Seen seen = SvgEye.read(svg);
        List<Flaw> flaws = new ArrayList<>(seen.unreadable);
        WireChecks wires = new WireChecks(seen, flaws);
        wires.run();
        new EndChecks(seen, flaws).run(promised);
        new ThingChecks(seen, flaws).run(things);
        new TextChecks(seen, flaws).run();
        new FrameChecks(seen, flaws).run();
        Contrast.check(seen, flaws);
        return new Verdict(flaws, seen.wires().size(), wires.crossings(), wires.bends(), LabelGaps.longest(seen));
    }
}
