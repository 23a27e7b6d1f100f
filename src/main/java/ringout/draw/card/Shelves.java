package ringout.draw.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;

/** Puts cards side by side in rows from the top, in their order; what is left of the height goes between the rows. */
final class Shelves {
    private static final double GAP = 4;
    private static final double MOST = 9;

    private Shelves() {}

    /** {@return a place for every card, or nothing when they do not all fit} */
    static Optional<List<CardSpot>> place(List<Card> cards, Area area) {
        List<List<Card>> rows = rows(cards, area.width());
        double used = rows.stream().mapToDouble(Shelves::height).sum() + GAP * (rows.size() - 1);
        boolean wide = cards.stream().anyMatch(card -> card.width() > area.width());
        if (wide || used > area.height()) {
            return Optional.empty();
        }
        double gap = rows.size() < 2 ? GAP : Math.min(MOST, GAP + (area.height() - used) / (rows.size() - 1));
        List<CardSpot> spots = new ArrayList<>();
        double y = area.y();
        for (List<Card> row : rows) {
            double x = area.x();
            for (Card card : row) {
                spots.add(new CardSpot(card, new Point(x, y)));
                x += card.width() + GAP;
            }
            y += height(row) + gap;
        }
        return Optional.of(List.copyOf(spots));
    }

    private static List<List<Card>> rows(List<Card> cards, double width) {
        List<List<Card>> rows = new ArrayList<>();
        double used = Double.MAX_VALUE;
        for (Card card : cards) {
            if (used + GAP + card.width() > width) {
                rows.add(new ArrayList<>());
                used = -GAP;
            }
            rows.get(rows.size() - 1).add(card);
            used += GAP + card.width();
        }
        return rows;
    }

    private static double height(List<Card> row) {
        return row.stream().mapToDouble(Card::height).max().orElse(0);
    }
}
