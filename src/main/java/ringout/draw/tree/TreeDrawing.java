package ringout.draw.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.draw.ink.Ink;
import ringout.draw.ink.StyledSheet;
import ringout.draw.ink.StyledSheet.Promise;
import ringout.draw.paper.SheetSize;
import ringout.draw.style.Hatchings;
import ringout.draw.style.Margins;

/** A tree on the smallest of some sheets that holds it, or the word that none does. */
public sealed interface TreeDrawing {
    /** It fits. */
    final class Fits implements TreeDrawing {
        private final Margins margins;
        private final TreePlaced placed;

        Fits(Margins margins, TreePlaced placed) {
            this.margins = margins;
            this.placed = placed;
        }

        /** {@return the same tree in the same places as number n of a set of m sheets} */
        public Fits numbered(int sheet, int sheets) {
            return new Fits(margins.titled(margins.info().numbered(sheet, sheets)), placed);
        }

        /** {@return the sheet, ready to be written} */
        public StyledSheet sheet() {
            TreeScene scene = placed.scene();
            List<Ink> tree = new TreeInk(placed).draw();
            List<Ink> ink = new ArrayList<>(margins.draw(tree));
            ink.addAll(tree);
            List<Promise> promised = scene.links().stream()
                    .map(link -> new Promise(link.id(), TreeInk.out(link.from()), TreeInk.in(link.to())))
                    .toList();
            return new StyledSheet(
                    margins.size(),
                    scene.info().documentType(),
                    scene.info().title() + ", " + scene.nodes().size() + " things",
                    Hatchings.all(),
                    ink,
                    promised);
        }
    }

    /** It fits on none of the sheets. */
    record DoesNotFit() implements TreeDrawing {}

    /** {@return the scene on the first of the sizes that holds it; the finding list is left out before a size is skipped} */
    static TreeDrawing of(TreeScene scene, List<SheetSize> sizes) {
        for (Margins margins :
                Margins.inTurn(sizes, scene.info(), TreeLegend.of(scene), scene.findings(), scene.notes(), List.of())) {
            Optional<TreePlaced> placed = TreePlaced.place(scene, margins.drawing());
            if (placed.isPresent()) {
                return new Fits(margins, placed.get());
            }
        }
        return new DoesNotFit();
    }
}
