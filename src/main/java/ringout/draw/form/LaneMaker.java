package ringout.draw.form;

import static ringout.draw.letter.Lettering.SMALL;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ringout.draw.letter.Lettering;
import ringout.draw.letter.Weight;
import ringout.draw.scene.Fuse;
import ringout.draw.scene.Reference;
import ringout.draw.scene.Wire;

/** Measures what stands beside wire ends. Badges of a wire stand at the end it starts from. */
final class LaneMaker {
    private static final double WIDEST_LEAD = 24;
    private static final double WIDEST_WORD = 14;
    private static final double WIDEST_FLAG = 48;
    private static final double FLAG_EXTRA = 4.5;

    private final BadgeIndex badges;
    private final Map<String, String> flags;

    LaneMaker(BadgeIndex badges, List<Reference> references) {
        this.badges = badges;
        this.flags = references.stream().collect(Collectors.toMap(Reference::id, r -> Lettering.printable(r.text())));
    }

    Lane ofWire(Wire wire, boolean atStart) {
        boolean fuse = wire.fuse().map(f -> f.atStart() == atStart).orElse(false);
        String label = labelOf(wire);
        if (fuse) {
            label += " " + cut(Lettering.printable(wire.fuse().map(Fuse::rating).orElse("")), WIDEST_WORD);
        }
        String flag = flags.containsKey(wire.to()) ? cut(flags.get(wire.to()), WIDEST_FLAG) : "";
        double flagWidth = flags.containsKey(wire.to()) ? width(flag) + FLAG_EXTRA : 0;
        double room = width(label);
        List<BadgeForm> shown = atStart ? badges.of(wire.id()) : List.of();
        return new Lane(wire.colour(), label, room, room, fuse, shown, flag, flagWidth);
    }

    Lane ofMove(String id, boolean atStart) {
        return new Lane("", "", 0, 0, false, atStart ? badges.of(id) : List.of(), "", 0);
    }

    /** {@return lead, size and colour letters, each only if there is one} */
    static String labelOf(Wire wire) {
        return Stream.of(
                        cut(Lettering.printable(wire.lead()), WIDEST_LEAD),
                        cut(Lettering.printable(wire.size()), WIDEST_WORD),
                        cut(Lettering.printable(wire.colour()), WIDEST_WORD))
                .filter(word -> !word.isEmpty())
                .collect(Collectors.joining(" "));
    }

    private static String cut(String text, double widest) {
        return Lettering.fit(text, SMALL, Weight.REGULAR, widest);
    }

    private static double width(String text) {
        return Lettering.width(text, SMALL, Weight.REGULAR);
    }
}
