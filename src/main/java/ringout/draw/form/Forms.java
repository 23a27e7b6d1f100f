package ringout.draw.form;

import java.util.List;
import ringout.draw.scene.WiringScene;

/**
 * A scene with every part numbered and measured.
 *
 * @param scene where it comes from
 * @param nodes boxes, then splices
 * @param groups plugs and splice ends
 * @param taps wire ends
 * @param links wires, then moves
 */
public record Forms(WiringScene scene, List<NodeForm> nodes, List<GroupForm> groups, List<Tap> taps, List<Link> links) {
    /** Keeps unmodifiable copies. */
    public Forms {
        nodes = List.copyOf(nodes);
        groups = List.copyOf(groups);
        taps = List.copyOf(taps);
        links = List.copyOf(links);
    }

    /** {@return the scene measured} */
    public static Forms of(WiringScene scene) {
        return new FormsBuilder(scene).build();
    }

    /** {@return the tap at the far end of the link of a tap; only for links that are not flagged} */
    public Tap across(Tap tap) {
        return taps.get(links.get(tap.link()).other(tap.index()));
    }
}
