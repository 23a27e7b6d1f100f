package ringout.draw.bus;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.draw.ink.Ink;
import ringout.draw.ink.StyledSheet;
import ringout.draw.ink.StyledSheet.Promise;
import ringout.draw.paper.SheetSize;
import ringout.draw.scene.BusScene;
import ringout.draw.style.Hatchings;
import ringout.draw.style.Margins;

/** A bus diagram on the smallest of some sheets that holds it, or the word that none does. */
public sealed interface BusDrawing {
    /** It fits. */
    final class Fits implements BusDrawing {
        private final Margins margins;
        private final BusRouted routed;

        Fits(Margins margins, BusRouted routed) {
            this.margins = margins;
            this.routed = routed;
        }

        /** {@return the same diagram in the same places as number n of a set of m sheets} */
        public Fits numbered(int sheet, int sheets) {
            return new Fits(margins.titled(margins.info().numbered(sheet, sheets)), routed);
        }

        /** {@return the scale of length, in words} */
        public String scale() {
            return routed.placed().scale().words();
        }

        /** {@return the sheet, ready to be written} */
        public StyledSheet sheet() {
            BusScene scene = routed.placed().scene();
            List<Ink> diagram = BusInk.draw(routed, margins.drawing());
            List<Ink> ink = new ArrayList<>(margins.draw(diagram));
            ink.addAll(diagram);
            List<Promise> promised = routed.wires().stream()
                    .map(w -> new Promise(w.id(), w.from(), w.to()))
                    .toList();
            return new StyledSheet(
                    margins.size(),
                    scene.info().documentType() + " " + scene.info().title(),
                    "bus " + scene.name() + ", " + scene.members().size() + " members, " + scale(),
                    Hatchings.all(),
                    ink,
                    promised);
        }
    }

    /** It fits on none of the sheets; split the bus, or give larger sheets. */
    record DoesNotFit() implements BusDrawing {}

    /** {@return the scene on the first of the sizes that holds it; the finding list is left out before a size is skipped} */
    static BusDrawing of(BusScene scene, List<SheetSize> sizes) {
        for (Margins margins :
                Margins.inTurn(sizes, scene.info(), BusLegend.of(scene), scene.findings(), scene.notes(), List.of())) {
            Optional<BusPlaced> placed = BusPlacer.place(scene, margins.drawing());
            if (placed.isPresent()) {
                return new Fits(margins, BusRouter.route(placed.get()));
            }
        }
        return new DoesNotFit();
    }
}
