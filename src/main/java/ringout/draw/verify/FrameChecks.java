package ringout.draw.verify;

import java.util.List;
import java.util.Optional;
import ringout.draw.paper.Area;
import ringout.draw.paper.Point;
import ringout.draw.verify.Flaw.Kind;
import ringout.draw.verify.Seen.Group;
import ringout.draw.verify.Seen.Line;
import ringout.draw.verify.Seen.Patch;
import ringout.draw.verify.Seen.Text;

/** Nothing outside the frame, and the frame on the sheet. */
final class FrameChecks {
    private static final double SLACK = 0.4;

    private final Seen seen;
    private final List<Flaw> flaws;

    FrameChecks(Seen seen, List<Flaw> flaws) {
        this.seen = seen;
        this.flaws = flaws;
    }

    void run() {
        Optional<Area> frame = seen.patches.stream()
                .filter(p -> p.group().is("border"))
                .map(Patch::area)
                .findFirst();
        if (frame.isEmpty()) {
            flaws.add(new Flaw(Kind.OUTSIDE_FRAME, "the sheet has no frame", new Point(0, 0)));
            return;
        }
        for (Text text : seen.texts) {
            check(text.group(), text.area(), "\"" + text.words() + "\"", frame.get());
        }
        for (Patch patch : seen.patches) {
            if (!patch.group().is("paper")) {
                Area ink = patch.area().grown(patch.width() / 2);
                check(patch.group(), ink, "an outline", frame.get());
            }
        }
        for (Line line : seen.lines) {
            for (Point point : line.points()) {
                Area ink = new Area(point.x(), point.y(), 0, 0).grown(line.width() / 2);
                check(line.group(), ink, "a line", frame.get());
            }
        }
    }

    private void check(Group group, Area ink, String what, Area frame) {
        Area limit = group.within("frame").isPresent() ? seen.sheet : frame.grown(SLACK);
        if (!limit.contains(ink)) {
            flaws.add(new Flaw(Kind.OUTSIDE_FRAME, what + " lies outside", ink.centre()));
        }
    }
}
