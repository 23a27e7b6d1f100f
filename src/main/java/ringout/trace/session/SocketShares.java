package ringout.trace.session;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Defect;

/**
 * A plug is in one wrong socket at a time: what speaks for it being misplugged is shared by the look-alike sockets, those of its own unit
 * first, since they are beside it. Without that a plug with twenty look-alikes would be suspected twenty times over.
 */
final class SocketShares {
    /** A socket of another unit against one of the same: judgement, no source. */
    private static final double ELSEWHERE = 0.2;

    private final Map<List<Integer>, Double> sums = new HashMap<>();

    SocketShares(List<Candidate> all) {
        for (Candidate candidate : all) {
            if (candidate.defect() instanceof Defect.WrongSocket wrong) {
                sums.merge(plug(wrong), near(wrong), Double::sum);
            }
        }
    }

    private static List<Integer> plug(Defect.WrongSocket wrong) {
        return List.of(wrong.unit(), wrong.plug());
    }

    private static double near(Defect.WrongSocket wrong) {
        return wrong.unit() == wrong.otherUnit() ? 1 : ELSEWHERE;
    }

    /** The weight of a candidate, that of a wrong socket shared with the others its plug may be in. */
    double weight(Candidate candidate) {
        return candidate.defect() instanceof Defect.WrongSocket wrong
                ? candidate.weight() * near(wrong) / sums.getOrDefault(plug(wrong), 1.0)
                : candidate.weight();
    }
}
