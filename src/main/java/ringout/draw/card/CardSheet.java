package ringout.draw.card;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.ink.StyledSheet;
import ringout.draw.ink.StyledSheet.Promise;
import ringout.draw.scene.SheetInfo;
import ringout.draw.style.Hatchings;
import ringout.draw.style.Margins;

/**
 * Cards with their places on a sheet, not yet inked.
 *
 * @param margins all of the sheet but the cards
 * @param spots the cards
 */
public record CardSheet(Margins margins, List<CardSpot> spots) {
    /** Keeps an unmodifiable copy of the spots. */
    public CardSheet {
        spots = List.copyOf(spots);
    }

    /** {@return the same sheet as number n of a set of m} */
    public CardSheet numbered(int sheet, int sheets) {
        return new CardSheet(margins.titled(margins.info().numbered(sheet, sheets)), spots);
    }

    /** {@return the names of its cards} */
    public List<String> names() {
        return spots.stream().map(spot -> spot.card().name()).toList();
    }

    /** {@return the sheet, ready to be written} */
    public StyledSheet sheet() {
        List<Ink> cards = new ArrayList<>();
        List<Promise> promised = new ArrayList<>();
        for (CardSpot spot : spots) {
            cards.addAll(spot.card().draw(spot.corner()));
            promised.addAll(spot.card().promised());
        }
        List<Ink> ink = new ArrayList<>(margins.draw(cards));
        ink.addAll(cards);
        SheetInfo info = margins.info();
        String words = info.documentType() + " " + info.title();
        return new StyledSheet(margins.size(), words, String.join(", ", names()), Hatchings.all(), ink, promised);
    }
}
