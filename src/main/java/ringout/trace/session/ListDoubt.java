package ringout.trace.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.graph.Wiring;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Defect;

/**
 * Where the list, not the aircraft, may be wrong: what is found may be as it was built, and the row written down otherwise.
 *
 * @param row id of the row, or name of the unit
 * @param says what the list says
 * @param should what it would have to say for the readings to fit
 * @param share chance of the fault that looks the same
 */
public record ListDoubt(String row, String says, String should, double share) {
    /** Chance of the fault from which its look-alike in the list is worth telling. Judgement, no source. */
    private static final double WORTH = 0.10;

    /** The rows that would explain as much as the likeliest faults, were they written otherwise. */
    static List<ListDoubt> of(Diagnosis search, List<Ranked> ranked, PairOffer pairs) {
        Wiring wiring = search.circuit().wiring();
        List<ListDoubt> doubts = new ArrayList<>();
        for (Ranked one : ranked) {
            if (one.share() >= WORTH) {
                of(wiring, one.candidate(), one.share()).ifPresent(doubts::add);
            }
        }
        for (PairOffer.One one : pairs.atLeastOneOf()) {
            if (one.share() >= WORTH) {
                of(wiring, one.candidate(), one.share()).ifPresent(doubts::add);
            }
        }
        return List.copyOf(doubts);
    }

    private static Optional<ListDoubt> of(Wiring wiring, Candidate candidate, double share) {
        Defect defect = candidate.defect();
        if (defect instanceof Defect.WrongSocket wrong && !candidate.rows().isEmpty()) {
            return Optional.of(new ListDoubt(
                    candidate.rows().get(0),
                    wiring.plugName(wrong.unit(), wrong.plug()),
                    wiring.plugName(wrong.otherUnit(), wrong.otherPlug()),
                    share));
        }
        if (defect instanceof Defect.Crossed crossed) {
            return Optional.of(new ListDoubt(
                    candidate.rows().get(0),
                    pins(wiring, crossed.one().fromPin(), crossed.one().toPin()) + " and "
                            + pins(
                                    wiring,
                                    crossed.other().fromPin(),
                                    crossed.other().toPin()),
                    pins(wiring, crossed.one().fromPin(), crossed.other().toPin()) + " and "
                            + pins(
                                    wiring,
                                    crossed.other().fromPin(),
                                    crossed.one().toPin()),
                    share));
        }
        if (defect instanceof Defect.Terminated
                || defect instanceof Defect.SameAddress
                || defect instanceof Defect.WrongSetting) {
            return Optional.of(
                    new ListDoubt(candidate.repair().object(), "the setting as listed", candidate.title(), share));
        }
        return Optional.empty();
    }

    private static String pins(Wiring wiring, int from, int to) {
        return wiring.name(from) + " to " + wiring.name(to);
    }
}
