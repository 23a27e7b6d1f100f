package ringout.draw.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import ringout.draw.form.Forms;
import ringout.draw.form.Lattice;
import ringout.draw.paper.Area;
import ringout.draw.paper.SheetSize;
import ringout.draw.place.Draft;
import ringout.draw.place.Placed;
import ringout.draw.place.Placer;
import ringout.draw.place.Room;
import ringout.draw.route.Routed;
import ringout.draw.route.Router;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.WiringScene;
import ringout.draw.style.LegendEntry;
import ringout.draw.style.Margins;

/** Tries sheet sizes and numbers of columns; the finding list is left out before a larger sheet is taken. */
final class SheetSearch {
    private static final int MOST_COLUMNS = 6;
    private static final int LIKELIEST = 2;

    /** A first placing so many times too large is not worth improving. */
    private static final double HOPELESS = 1.5;

    private final WiringScene scene;
    private final Forms forms;
    private final List<LegendEntry> legend;
    private double leastWidth = Double.MAX_VALUE;
    private double leastHeight = Double.MAX_VALUE;

    SheetSearch(WiringScene scene) {
        this.scene = scene;
        this.forms = Forms.of(scene);
        this.legend = Legend.of(scene);
    }

    WiringDrawing search(List<SheetSize> sizes) {
        for (SheetSize size : sizes) {
            Margins full = margins(size, scene.findings(), scene.notes());
            Margins bare = margins(size, List.of(), bareNotes());
            Optional<Routed> best = bestIn(full.drawing(), bare.drawing());
            if (best.isPresent()) {
                boolean list = holds(full.drawing(), best.get());
                return new WiringDrawing.Fits(new Laid(scene, list ? full : bare, best.get()));
            }
        }
        return new WiringDrawing.DoesNotFit(leastWidth, leastHeight);
    }

    private List<String> bareNotes() {
        int n = scene.findings().size();
        return n == 0 ? List.of() : List.of("numbers in badges are lines of the finding list, which has no room here");
    }

    private Margins margins(SheetSize size, List<FindingLine> findings, List<String> notes) {
        return new Margins(size, scene.info(), legend, findings, notes, scene.remarks());
    }

    private static boolean holds(Area area, Routed routed) {
        return routed.width() <= area.width() && routed.height() <= area.height();
    }

    /** The best picture among the likeliest numbers of columns; one that leaves room for the list wins. */
    private Optional<Routed> bestIn(Area area, Area larger) {
        int held =
                scene.held().stream().mapToInt(spot -> spot.column() + 1).max().orElse(1);
        int most = Math.min(MOST_COLUMNS, forms.nodes().size());
        return bestIn(area, larger, held, most).or(() -> bestIn(area, larger, 1, Math.min(most, held - 1)));
    }

    /** Within some numbers of columns: those that have room for every held place come first, whatever they cost. */
    private Optional<Routed> bestIn(Area area, Area larger, int fewest, int most) {
        Room room = new Room(area.width(), (int) (area.height() / Lattice.STEP));
        List<Draft> drafts = new ArrayList<>();
        for (int columns = fewest; columns <= most; columns++) {
            if (Placer.leastWidth(forms, columns) <= area.width()
                    && Lattice.mm(Placer.leastHeight(forms, columns)) <= larger.height()) {
                drafts.add(Placer.draft(forms, columns, room));
            }
        }
        drafts.forEach(draft -> note(draft.placed()));
        drafts.removeIf(draft -> draft.excess() > HOPELESS);
        drafts.sort(Comparator.comparingDouble(Draft::score));
        List<Draft> likeliest = drafts.stream()
                .limit(LIKELIEST)
                .map(Draft::improved)
                .sorted(Comparator.comparingDouble(Draft::score))
                .toList();
        Optional<Routed> best = Optional.empty();
        for (Draft draft : likeliest) {
            best = bestOf(best, draft, area, larger);
        }
        return likeliest.isEmpty() ? best : bestOf(best, likeliest.get(0).refined(), area, larger);
    }

    private Optional<Routed> bestOf(Optional<Routed> best, Draft draft, Area area, Area larger) {
        Routed routed = Router.route(draft.placed());
        note(draft.placed());
        boolean wins =
                holds(larger, routed) && best.map(b -> better(routed, b, area)).orElse(true);
        return wins ? Optional.of(routed) : best;
    }

    private static boolean better(Routed candidate, Routed best, Area area) {
        boolean fits = holds(area, candidate);
        boolean bestFits = holds(area, best);
        return fits == bestFits ? candidate.placed().score() < best.placed().score() : fits;
    }

    private void note(Placed placed) {
        double width = placed.leastWidth();
        double height = Lattice.mm(placed.height());
        if (width * height < leastWidth * leastHeight) {
            leastWidth = width;
            leastHeight = height;
        }
    }
}
