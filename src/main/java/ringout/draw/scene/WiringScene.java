package ringout.draw.scene;

import java.util.List;

/**
 * A pin-to-pin wiring diagram, complete and consistent: every end of a wire or move and every target of a mark exists,
 * and every identifier is used once.
 *
 * @param info the title block
 * @param boxes units, in the order of the user's list
 * @param splices joints outside boxes
 * @param references ends on other sheets
 * @param wires conductors
 * @param moves arrows from where a thing is to where it should be
 * @param marks badges
 * @param findings the finding list
 * @param notes lines printed beside the finding list
 * @param remarks paragraphs printed below it
 * @param held places from an earlier drawing that are to be kept
 */
public record WiringScene(
        SheetInfo info,
        List<Box> boxes,
        List<Splice> splices,
        List<Reference> references,
        List<Wire> wires,
        List<Move> moves,
        List<Mark> marks,
        List<FindingLine> findings,
        List<String> notes,
        List<Remark> remarks,
        List<Spot> held) {
    /** Keeps unmodifiable copies and refuses a scene that contradicts itself. */
    public WiringScene {
        boxes = List.copyOf(boxes);
        splices = List.copyOf(splices);
        references = List.copyOf(references);
        wires = List.copyOf(wires);
        moves = List.copyOf(moves);
        marks = List.copyOf(marks);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
        remarks = List.copyOf(remarks);
        held = List.copyOf(held);
        new SceneRules(boxes, splices, references).check(wires, moves, marks);
    }

    /** {@return an empty scene to be filled} */
    public static WiringSceneBuilder builder(SheetInfo info) {
        return new WiringSceneBuilder(info);
    }
}
