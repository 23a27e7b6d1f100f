package ringout.draw.card;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import ringout.draw.paper.SheetSize;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.draw.scene.SheetInfo;
import ringout.draw.style.LegendEntries;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.Margins;

/** Fills sheets with cards, in their order. */
public final class CardSheets {
    private final SheetInfo info;
    private final SheetSize usual;
    private final List<String> notes;

    private CardSheets(SheetInfo info, SheetSize usual, List<String> notes) {
        this.info = info;
        this.usual = usual;
        this.notes = notes;
    }

    /**
     * The sheets of some cards; a card that no sheet holds is left out.
     *
     * @param info title block of them all, its title a plural such as {@code leads}
     * @param usual size of a sheet; the last may be smaller, and a larger one is taken for a card that needs it
     * @param notes for every sheet
     */
    public static List<CardSheet> of(SheetInfo info, List<Card> cards, SheetSize usual, List<String> notes) {
        CardSheets sheets = new CardSheets(info, usual, notes);
        List<CardSheet> made = new ArrayList<>();
        int done = 0;
        while (done < cards.size()) {
            Optional<CardSheet> next = sheets.next(cards.subList(done, cards.size()));
            done += next.map(sheet -> sheet.spots().size()).orElse(1);
            next.ifPresent(made::add);
        }
        return made;
    }

    /** The sheet with as many of the cards as it holds: a smaller one if it holds them all. */
    private Optional<CardSheet> next(List<Card> cards) {
        for (SheetSize size : SheetSize.all()) {
            int most = size.compareTo(usual) < 0 ? lone(cards, size) : fitting(cards, size);
            if (most > 0) {
                return sheet(cards.subList(0, most), size);
            }
        }
        return Optional.empty();
    }

    private int lone(List<Card> cards, SheetSize size) {
        return sheet(cards, size).isPresent() ? cards.size() : 0;
    }

    private int fitting(List<Card> cards, SheetSize size) {
        int most = 0;
        while (most < cards.size() && sheet(cards.subList(0, most + 1), size).isPresent()) {
            most++;
        }
        return most;
    }

    /** The cards on a sheet with the finding list, or without it where it takes too much room. */
    private Optional<CardSheet> sheet(List<Card> cards, SheetSize size) {
        Map<Integer, FindingLine> findings = new TreeMap<>();
        cards.forEach(card -> card.findings().forEach(line -> findings.put(line.number(), line)));
        SheetInfo told = info.entitled(title(cards)).counting(findings.size(), info.waivers());
        List<FindingLine> lines = List.copyOf(findings.values());
        List<Margins> tries = List.of(
                new Margins(size, told, legend(cards, lines), lines, notes),
                new Margins(size, told, legend(cards, lines), List.of(), notes));
        for (Margins margins : cards.size() == 1 ? tries : tries.subList(0, 1)) {
            Optional<List<CardSpot>> spots = Shelves.place(cards, margins.drawing());
            if (spots.isPresent()) {
                return Optional.of(new CardSheet(margins, spots.get()));
            }
        }
        return Optional.empty();
    }

    private String title(List<Card> cards) {
        String first = cards.get(0).name();
        String last = cards.get(cards.size() - 1).name();
        return info.title() + " " + (cards.size() == 1 ? first : first + " to " + last);
    }

    private static List<LegendEntry> legend(List<Card> cards, List<FindingLine> findings) {
        Map<String, LegendEntry> entries = new LinkedHashMap<>();
        cards.forEach(card -> card.legend().forEach(entry -> entries.putIfAbsent(entry.words(), entry)));
        List<LegendEntry> all = new ArrayList<>(entries.values());
        all.addAll(LegendEntries.badges(findings.stream()
                .map(line -> new Mark(line.number(), line.kind(), line.waived(), List.of()))
                .toList()));
        return all;
    }
}
