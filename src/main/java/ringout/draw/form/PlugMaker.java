package ringout.draw.form;

import static ringout.draw.letter.Lettering.SMALL;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.scene.Fitting;
import ringout.draw.scene.Pin;
import ringout.draw.scene.Plug;
import ringout.draw.scene.Row;

/** Measures plugs. */
final class PlugMaker {
    private static final double NARROWEST_CELL = 6;
    private static final double WIDEST_NUMBER = 12;
    private static final double WIDEST_TEXT = 34;
    private static final double MARGIN = 1.2;

    private final BadgeIndex badges;
    private boolean badgeAbove;

    PlugMaker(BadgeIndex badges) {
        this.badges = badges;
    }

    /** {@return the plug measured; lanes hold, for each row, what stands beside each of its wire ends} */
    PlugForm make(Plug plug, Map<String, List<Lane>> lanes) {
        String name = Lettering.fit(Lettering.printable(plug.name()), SMALL, Weight.BOLD, WIDEST_TEXT);
        boolean single = plug.rows().size() == 1;
        List<BadgeForm> own = badges.of(plug.id());
        int head = single ? 0 : Lattice.ROW + (own.isEmpty() ? 0 : Lattice.BADGE);
        List<RowForm> rows = new ArrayList<>();
        int top = head;
        badgeAbove = false;
        for (Row row : plug.rows()) {
            List<BadgeForm> shown = single ? joined(own, badges.of(row.id())) : badges.of(row.id());
            RowForm form = makeRow(row, single ? name : "", top, lanes.getOrDefault(row.id(), List.of()), shown);
            rows.add(form);
            top += form.height();
        }
        double cell = rows.stream().mapToDouble(r -> cellWidth(r)).max().orElse(NARROWEST_CELL);
        double text = rows.stream().mapToDouble(PlugMaker::textWidth).max().orElse(0);
        double title = single ? 0 : Lettering.width(name, SMALL, Weight.BOLD) + widthOf(own) + 2 * MARGIN;
        return new PlugForm(plug, name, head, single ? List.of() : own, rows, cell, Math.max(title, cell + text), top);
    }

    private RowForm makeRow(Row row, String name, int top, List<Lane> lanes, List<BadgeForm> badges) {
        List<Integer> lines = new ArrayList<>();
        int height = 0;
        String text = textOf(row, name);
        boolean tallText = !badges.isEmpty() || Lettering.riseOf(text, SMALL) > 0;
        for (int i = 0; i < Math.max(1, lanes.size()); i++) {
            boolean tallLane = i < lanes.size()
                    && (lanes.get(i).tall() || (badgeAbove && lanes.get(i).flagWidth() > 0));
            height += Lattice.ROW + (tallLane || (i == 0 && tallText) ? Lattice.BADGE : 0);
            lines.add(top + height - 1);
            badgeAbove = i < lanes.size() && !lanes.get(i).badges().isEmpty();
        }
        return new RowForm(row, row instanceof Pin pin ? numberOf(pin) : "", text, top, height, lines, badges);
    }

    private static String textOf(Row row, String name) {
        String words = Lettering.printable(row instanceof Pin pin ? pin.signal() : ((Fitting) row).text());
        return Lettering.fit((name + "  " + words).strip(), SMALL, Weight.REGULAR, WIDEST_TEXT);
    }

    private static double cellWidth(RowForm row) {
        return Math.max(NARROWEST_CELL, Lettering.width(row.number(), SMALL, Weight.REGULAR) + 2 * MARGIN);
    }

    private static String numberOf(Pin pin) {
        return Lettering.fit(Lettering.printable(pin.number()), SMALL, Weight.REGULAR, WIDEST_NUMBER);
    }

    private static double textWidth(RowForm row) {
        return Lettering.width(row.text(), SMALL, Weight.REGULAR) + 2 * MARGIN + widthOf(row.badges());
    }

    private static double widthOf(List<BadgeForm> badges) {
        return badges.stream().mapToDouble(b -> b.width() + BadgeForm.GAP).sum();
    }

    private static List<BadgeForm> joined(List<BadgeForm> a, List<BadgeForm> b) {
        List<BadgeForm> all = new ArrayList<>(a);
        all.addAll(b);
        return all;
    }
}
