package ringout.draw.block;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.draw.ink.Paint;
import ringout.draw.ink.Patch;
import ringout.draw.ink.Pen;
import ringout.draw.ink.StyledSheet.Promise;
import ringout.draw.paper.Area;
import ringout.draw.paper.SheetSize;
import ringout.draw.scene.Presence;
import ringout.draw.scene.WireKind;
import ringout.draw.style.Drawn;
import ringout.draw.style.LegendEntries;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.LineInk;
import ringout.draw.style.Lines;
import ringout.draw.style.Margins;
import ringout.draw.style.Palette;

/** Lays a block diagram out on the smallest of some sheets that holds it, never shrunk. */
public final class BlockDrawing {
    private BlockDrawing() {}

    /** {@return the scene on the first of the sizes that holds it; the finding list is left out before a size is skipped} */
    public static Optional<Drawn> of(BlockScene scene, List<SheetSize> sizes) {
        for (Margins margins :
                Margins.inTurn(sizes, scene.info(), legend(scene), scene.findings(), scene.notes(), List.of())) {
            Optional<BlockPlaced> placed = BlockPlaced.place(scene, margins.drawing());
            if (placed.isPresent()) {
                return Optional.of(drawn(scene, margins, placed.get()));
            }
        }
        return Optional.empty();
    }

    private static Drawn drawn(BlockScene scene, Margins margins, BlockPlaced placed) {
        List<Promise> promised = scene.leads().stream()
                .map(lead -> new Promise(lead.id(), BlockInk.end(lead, true), BlockInk.end(lead, false)))
                .toList();
        List<String> things = new ArrayList<>();
        scene.zones().forEach(zone -> zone.units().forEach(unit -> things.add(unit.id())));
        String words = things.size() + " units, " + promised.size() + " leads";
        return new Drawn(margins, words, new BlockInk(placed).draw(), promised, things);
    }

    private static List<LegendEntry> legend(BlockScene scene) {
        Set<WireKind> kinds = EnumSet.noneOf(WireKind.class);
        scene.leads().forEach(lead -> kinds.add(lead.kind()));
        List<LegendEntry> entries = new ArrayList<>();
        for (WireKind kind : kinds) {
            entries.add(new LegendEntry(
                    "lead: " + kind.words(),
                    LegendEntry.LOW,
                    p -> LineInk.draw(List.of(p, p.plus(LegendEntry.SAMPLE, 0)), Lines.of(kind), Presence.FITTED)));
        }
        Pen pen = Pen.dashed(Palette.DARK_GREY, Lines.THIN, 1.6, 1.2);
        entries.add(new LegendEntry(
                "zone of the airframe",
                LegendEntry.LOW,
                p -> List.of(Patch.rectangle("", new Area(p.x() + 2, p.y() - 1.8, 16, 3.6), Paint.clear(), pen))));
        entries.addAll(LegendEntries.badges(scene.marks()));
        return entries;
    }
}
