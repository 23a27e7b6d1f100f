package ringout.draw.wiring;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import ringout.draw.form.Tap;
import ringout.draw.ink.StyledSheet;
import ringout.draw.paper.Point;
import ringout.draw.paper.SheetSize;
import ringout.draw.paper.ZoneGrid;
import ringout.draw.route.Routed;
import ringout.draw.scene.WiringScene;

/** A wiring diagram laid out on the smallest of some sheets that holds it, or the word that none does. */
public sealed interface WiringDrawing {
    /** It fits. */
    final class Fits implements WiringDrawing {
        private final Laid laid;

        Fits(Laid laid) {
            this.laid = laid;
        }

        /** {@return the same diagram in the same places as number n of a set of m sheets} */
        public Fits numbered(int sheet, int sheets) {
            return new Fits(laid.titled(laid.margins().info().numbered(sheet, sheets)));
        }

        /** {@return the same diagram in the same places under another title} */
        public Fits entitled(String title) {
            return new Fits(laid.titled(laid.margins().info().entitled(title)));
        }

        /** {@return what it shows} */
        public String title() {
            return laid.margins().info().title();
        }

        /** {@return the sheet, ready to be written} */
        public StyledSheet sheet() {
            return laid.styled();
        }

        /** {@return the stage before} */
        public Routed routed() {
            return laid.routed();
        }

        /** {@return the zone of the sheet in which each row or splice lies at which a wire ends} */
        public Map<String, String> zones() {
            ZoneGrid grid = new ZoneGrid(laid.margins().size());
            Point origin = laid.origin();
            Map<String, String> zones = new TreeMap<>();
            for (Tap tap : routed().placed().forms().taps()) {
                zones.put(tap.row(), grid.zoneOf(routed().end(tap).plus(origin.x(), origin.y())));
            }
            return zones;
        }
    }

    /**
     * It fits on none of the sheets at full size; split the scene.
     *
     * @param width mm of the smallest diagram found
     * @param height mm of the same
     */
    record DoesNotFit(double width, double height) implements WiringDrawing {}

    /** {@return the scene on the first of the sizes that holds it} */
    static WiringDrawing of(WiringScene scene, List<SheetSize> sizes) {
        return new SheetSearch(scene).search(sizes);
    }
}
