package ringout.draw.wiring;

import java.util.ArrayList;
import java.util.List;
import ringout.draw.ink.Ink;
import ringout.draw.ink.StyledSheet;
import ringout.draw.ink.StyledSheet.Promise;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.route.Routed;
import ringout.draw.scene.SheetInfo;
import ringout.draw.scene.WiringScene;
import ringout.draw.style.Hatchings;
import ringout.draw.style.Margins;

/**
 * A wiring diagram with its place on a sheet, before it is inked. The search for it takes long and inking does not: what
 * stands in the title block may be said later.
 *
 * @param scene what is drawn
 * @param margins of the sheet
 * @param routed the diagram
 */
record Laid(WiringScene scene, Margins margins, Routed routed) {
    /** The same diagram in the same places under another title block. */
    Laid titled(SheetInfo info) {
        return new Laid(scene, margins.titled(info), routed);
    }

    /** Where the upper left corner of the diagram lies on the sheet. */
    Point origin() {
        Area area = margins.drawing();
        return new Point(
                area.x() + (area.width() - routed.width()) / 2, area.y() + (area.height() - routed.height()) / 2);
    }

    StyledSheet styled() {
        List<Ink> diagram = DiagramInk.draw(routed, origin());
        List<Ink> ink = new ArrayList<>(margins.draw(diagram));
        ink.addAll(diagram);
        List<Promise> promised = scene.wires().stream()
                .map(wire -> new Promise(wire.id(), wire.from(), wire.to()))
                .toList();
        SheetInfo info = margins.info();
        return new StyledSheet(
                margins.size(),
                info.documentType() + " " + info.title(),
                scene.boxes().size() + " units, " + scene.wires().size() + " wires, state " + info.state(),
                Hatchings.all(),
                ink,
                promised);
    }
}
