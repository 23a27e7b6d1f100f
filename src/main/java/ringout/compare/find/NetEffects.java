package ringout.compare.find;

import java.util.ArrayList;
import java.util.List;
import ringout.compare.difference.Difference;
import ringout.graph.Nets;
import ringout.graph.Wire;

/**
 * What a difference of conductors does to the nets: a net of the base whose contacts are no longer one point is opened, nets
 * that become one point are joined.
 */
final class NetEffects {
    private final Scene scene;
    private final Nets here;
    private final Nets there;

    NetEffects(Scene scene) {
        this.scene = scene;
        this.here = scene.here().nets();
        this.there = scene.there().nets();
    }

    Difference on(Difference difference) {
        List<String> effects = new ArrayList<>();
        for (Wire wire : difference.touched().before()) {
            int a = scene.match().pin(wire.fromPin());
            int b = scene.match().pin(wire.toPin());
            if (a >= 0 && b >= 0 && !there.same(a, b)) {
                effects.add("opens " + scene.match().base().name(wire.fromPin()) + " from "
                        + scene.match().base().name(wire.toPin()));
            }
        }
        for (Wire wire : difference.touched().after()) {
            int a = scene.match().pinBack(wire.fromPin());
            int b = scene.match().pinBack(wire.toPin());
            if (a >= 0 && b >= 0 && !here.same(a, b)) {
                effects.add("joins " + scene.there(wire.fromPin()) + " with " + scene.there(wire.toPin()));
            }
        }
        boolean touches = !difference.touched().before().isEmpty()
                || !difference.touched().after().isEmpty();
        if (effects.isEmpty() && touches) {
            effects.add("the same points are joined as before");
        }
        return difference.with(effects);
    }
}
