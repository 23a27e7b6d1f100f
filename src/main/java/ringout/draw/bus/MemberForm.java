package ringout.draw.bus;

import static ringout.draw.letter.Lettering.SMALL;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.draw.form.BadgeForm;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.scene.BusLead;
import ringout.draw.scene.BusMember;
import ringout.draw.scene.Terminator;

/**
 * The box of a member and its size.
 *
 * @param member the unit
 * @param stub the lead it hangs from, if it hangs
 * @param title as printed
 * @param badges beside the title
 * @param lines below the title
 * @param width mm
 * @param height mm
 */
record MemberForm(
        BusMember member,
        Optional<BusLead> stub,
        String title,
        List<BadgeForm> badges,
        List<Line> lines,
        double width,
        double height) {
    /** Width kept for a sign before a text, mm. */
    static final double SIGN = 7;

    private static final double LINE_PER_CAP = 1.7;
    private static final double TALL_LINE = 6.9;
    private static final double MARGIN = 1.5;
    private static final double FOOT = 1.2;
    private static final double NARROWEST = 20;
    private static final int MOST_LINES = 4;
    private static final double WIDEST_PER_CAP = 12;

    /** A line below the title, with the sign of the terminator before it or without, and badges behind it. */
    record Line(String text, double cap, boolean bold, boolean sign, List<BadgeForm> badges) {
        double height() {
            double plain = cap * LINE_PER_CAP + Lettering.riseOf(text, cap);
            return badges.isEmpty() ? plain : Math.max(plain, TALL_LINE);
        }

        double width() {
            return Lettering.width(text, cap, bold ? Weight.BOLD : Weight.REGULAR)
                    + (sign ? SIGN : 0)
                    + widthOf(badges);
        }
    }

    MemberForm {
        badges = List.copyOf(badges);
        lines = List.copyOf(lines);
    }

    static MemberForm of(BusMember member, Optional<BusLead> stub, BusMarks marks, Sizes sizes) {
        String title = Lettering.fit(
                Lettering.printable(member.title()), sizes.title(), Weight.BOLD, WIDEST_PER_CAP * sizes.main());
        List<BadgeForm> badges = marks.of(member.id());
        List<Line> lines = new ArrayList<>();
        String what = Lettering.printable(member.subtitle());
        Lettering.wrap(what, SMALL, Weight.REGULAR, WIDEST_PER_CAP * SMALL, MOST_LINES)
                .forEach(t -> lines.add(line(t, SMALL, false)));
        if (!member.address().isEmpty()) {
            lines.add(line("address " + Lettering.printable(member.address()), sizes.main(), true));
        }
        stub.ifPresent(lead -> lines.add(new Line(
                cut("stub " + TrunkLabel.words(lead), SMALL, false), SMALL, false, false, marks.of(lead.id()))));
        if (member.terminator() != Terminator.NONE) {
            String words = cut(Lettering.printable(member.terminatorWords()), SMALL, false);
            lines.add(new Line(words, SMALL, false, true, marks.of(member.terminatorId())));
        }
        double width = Lettering.width(title, sizes.title(), Weight.BOLD) + widthOf(badges);
        double height = sizes.titleLine() + FOOT;
        for (Line line : lines) {
            width = Math.max(width, line.width());
            height += line.height();
        }
        return new MemberForm(member, stub, title, badges, lines, Math.max(NARROWEST, width + 2 * MARGIN), height);
    }

    private static Line line(String text, double cap, boolean bold) {
        return new Line(cut(text, cap, bold), cap, bold, false, List.of());
    }

    private static String cut(String text, double cap, boolean bold) {
        return Lettering.fit(text, cap, bold ? Weight.BOLD : Weight.REGULAR, WIDEST_PER_CAP * cap);
    }

    private static double widthOf(List<BadgeForm> badges) {
        return badges.stream().mapToDouble(b -> b.width() + 2 * BadgeForm.GAP).sum();
    }
}
