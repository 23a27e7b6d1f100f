package ringout.draw.bus;

import java.util.List;
import java.util.Locale;
import ringout.draw.form.BadgeForm;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.scene.BusLead;

/**
 * What stands above a lead of the trunk.
 *
 * @param lead the lead
 * @param text its name and length
 * @param cap height of its capitals, mm
 * @param badges behind the text
 * @param width mm
 */
record TrunkLabel(BusLead lead, String text, double cap, List<BadgeForm> badges, double width) {
    /** Clear width before each badge, mm. */
    static final double BADGE_GAP = 1.5;

    private static final double WIDEST = 40;

    TrunkLabel {
        badges = List.copyOf(badges);
    }

    static TrunkLabel of(BusLead lead, BusMarks marks, double cap) {
        String text = Lettering.fit(words(lead), cap, Weight.REGULAR, WIDEST);
        List<BadgeForm> badges = marks.of(lead.id());
        double width = Lettering.width(text, cap, Weight.REGULAR)
                + badges.stream().mapToDouble(b -> b.width() + BADGE_GAP).sum();
        return new TrunkLabel(lead, text, cap, badges, width);
    }

    /** {@return name and length of a lead} */
    static String words(BusLead lead) {
        String length = lead.lengthM().isPresent()
                ? String.format(Locale.ROOT, "%.2f m", lead.lengthM().getAsDouble())
                : "? m";
        return (Lettering.printable(lead.label()) + " " + length).strip();
    }
}
