package ringout.draw.scene;

import java.util.ArrayList;
import java.util.List;

/** Gathers a {@link WiringScene} piece by piece; the order of calls is the order of the user's list. */
public final class WiringSceneBuilder {
    private final SheetInfo info;
    private final List<Box> boxes = new ArrayList<>();
    private final List<Splice> splices = new ArrayList<>();
    private final List<Reference> references = new ArrayList<>();
    private final List<Wire> wires = new ArrayList<>();
    private final List<Move> moves = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<FindingLine> findings = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<Remark> remarks = new ArrayList<>();
    private final List<Spot> held = new ArrayList<>();

    WiringSceneBuilder(SheetInfo info) {
        this.info = info;
    }

    /** Adds a unit. */
    public WiringSceneBuilder box(Box box) {
        boxes.add(box);
        return this;
    }

    /** Adds a joint. */
    public WiringSceneBuilder splice(Splice splice) {
        splices.add(splice);
        return this;
    }

    /** Adds an end on another sheet. */
    public WiringSceneBuilder reference(Reference reference) {
        references.add(reference);
        return this;
    }

    /** Adds a conductor. */
    public WiringSceneBuilder wire(Wire wire) {
        wires.add(wire);
        return this;
    }

    /** Adds an arrow from where a thing is to where it should be. */
    public WiringSceneBuilder move(Move move) {
        moves.add(move);
        return this;
    }

    /** Adds badges. */
    public WiringSceneBuilder mark(Mark mark) {
        marks.add(mark);
        return this;
    }

    /** Adds a line of the finding list. */
    public WiringSceneBuilder finding(FindingLine line) {
        findings.add(line);
        return this;
    }

    /** Adds a note. */
    public WiringSceneBuilder note(String note) {
        notes.add(note);
        return this;
    }

    /** Adds a paragraph. */
    public WiringSceneBuilder remark(Remark remark) {
        remarks.add(remark);
        return this;
    }

    /** Holds a box or splice where it stood in an earlier drawing. */
    public WiringSceneBuilder hold(Spot spot) {
        held.add(spot);
        return this;
    }

    /** {@return the scene; throws {@link IllegalArgumentException} when it contradicts itself} */
    public WiringScene build() {
        return new WiringScene(info, boxes, splices, references, wires, moves, marks, findings, notes, remarks, held);
    }
}
