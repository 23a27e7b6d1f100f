package ringout.draw.map;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.map.MapScene.Tier;
import ringout.draw.map.MapScene.Turn;
import ringout.draw.paper.Area;
import ringout.draw.style.LegendEntries;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.Lines;
import ringout.draw.style.Palette;

/** What the legend of the map must explain. */
final class MapLegend {
    private MapLegend() {}

    static List<LegendEntry> of(MapScene scene) {
        List<LegendEntry> entries = new ArrayList<>();
        for (Turn turn : Turn.values()) {
            if (scene.rotors().stream()
                    .anyMatch(rotor -> rotor.turn().filter(turn::equals).isPresent())) {
                entries.add(new LegendEntry(
                        turn + ", wanted, seen from above", LegendEntry.TALL, p -> Rounds.sample(p, turn)));
            }
        }
        if (scene.rotors().stream().anyMatch(rotor -> rotor.tier() != Tier.SINGLE)) {
            entries.add(disc("upper rotor", Pen.solid(Palette.BLACK, Lines.THICK)));
            entries.add(disc("lower rotor", Pen.dashed(Palette.BLACK, Lines.THICK, 3.0, 1.6)));
        }
        entries.addAll(LegendEntries.badges(scene.marks()));
        return entries;
    }

    private static LegendEntry disc(String words, Pen pen) {
        return new LegendEntry(
                words,
                LegendEntry.LOW,
                p -> List.of(
                        Patch.ellipse("", new Area(p.x() + 3, p.y() - 1.8, 14, 3.6), Paint.of(Palette.WHITE), pen)));
    }
}
