package ringout.draw.scene;

import java.util.List;

/**
 * A unit on the sheet.
 *
 * @param id identifier, such as {@code FC}
 * @param title printed large; usually the reference of the unit
 * @param subtitle what it is, printed below; may be empty
 * @param zone where it sits in the airframe, printed beside the title; may be empty
 * @param plugs those of its plugs that belong on this sheet
 * @param presence whether the unit is there
 */
public record Box(String id, String title, String subtitle, String zone, List<Plug> plugs, Presence presence) {
    /** Keeps an unmodifiable copy of the plugs. */
    public Box {
        plugs = List.copyOf(plugs);
    }

    /** A unit that is there. */
    public Box(String id, String title, String subtitle, String zone, List<Plug> plugs) {
        this(id, title, subtitle, zone, plugs, Presence.FITTED);
    }
}
