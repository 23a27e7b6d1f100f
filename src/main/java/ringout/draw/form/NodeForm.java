package ringout.draw.form;

import java.util.List;
import java.util.Optional;
import ringout.draw.scene.Box;

/**
 * A box or splice and its size without its plugs.
 *
 * @param index its number
 * @param id identifier
 * @param box the box; empty for a splice
 * @param title large text of a box, or the label of a splice
 * @param zone small text beside the title
 * @param subtitle lines below the title
 * @param drop mm the subtitle stands lower
 * @param badges beside the title
 * @param head steps down to the first plug or bar
 * @param width least width, mm
 * @param groups numbers of its plugs or wire ends
 */
public record NodeForm(
        int index,
        String id,
        Optional<Box> box,
        String title,
        String zone,
        List<String> subtitle,
        double drop,
        List<BadgeForm> badges,
        int head,
        double width,
        List<Integer> groups) {
    /** Height of the title without subtitle, mm. */
    public static final double TITLE_LINE = 6.75;

    /** Height of a line of the subtitle, mm. */
    public static final double SUBTITLE_LINE = 4.1;

    /** Height the subtitle stands lower below badges, or when its letters rise, mm. */
    public static final double DROP = 1.2;

    /** Keeps unmodifiable copies. */
    public NodeForm {
        subtitle = List.copyOf(subtitle);
        badges = List.copyOf(badges);
        groups = List.copyOf(groups);
    }

    /** {@return whether it is a splice} */
    public boolean isSplice() {
        return box.isEmpty();
    }

    /** {@return the width of its badges with a gap before each, mm} */
    public double badgeWidth() {
        return badges.stream().mapToDouble(b -> b.width() + BadgeForm.GAP).sum();
    }
}
