package ringout.repair;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.finding.Headline;
import ringout.finding.Report;
import ringout.graph.Directory;
import ringout.model.Aircraft;
import ringout.model.edit.Edit;
import ringout.repair.move.Candidate;
import ringout.repair.move.Fault;
import ringout.repair.move.Moves;

/**
 * Looks for the smallest change that clears each headline. Changes are tried from the cheapest on, and those of the cost of
 * the first that works are all tried, so that it is known whether it is the only one. Of several the last of the list is
 * offered: what was added last is the likelier mistake (common practice, no source).
 */
public final class RepairSearch {
    /** Changes tried for one mistake at the most. */
    private static final int MOST = 600;

    private final Aircraft aircraft;
    private final Trial trial;
    private final Directory directory;
    private final Report report;

    private RepairSearch(Aircraft aircraft, Report report, String today) {
        this.aircraft = aircraft;
        this.trial = new Trial(aircraft, report, today);
        this.report = report;
        this.directory = new Directory(aircraft);
    }

    /**
     * The repair of one headline, if there is one.
     *
     * @param aircraft the list
     * @param report its review
     * @param headline one of its open headlines
     * @param today day the waivers are held against, YYYY-MM-DD
     */
    public static Optional<Repair> of(Aircraft aircraft, Report report, Headline headline, String today) {
        return new RepairSearch(aircraft, report, today).repair(headline);
    }

    private Optional<Repair> repair(Headline headline) {
        if (Trial.ofTrying(headline)) {
            return Optional.empty(); // the list is right as it is: keys and labels keep it from being built wrongly
        }
        List<Headline> mistakes = report.headlines().stream()
                .filter(other -> !Trial.ofTrying(other))
                .toList();
        List<Candidate> candidates = Moves.of(new Fault(directory, headline, mistakes));
        List<Found> found = new ArrayList<>();
        int tried = 0;
        for (Candidate candidate : candidates) {
            boolean dearer = !found.isEmpty()
                    && candidate.cost() > found.get(0).candidate.cost();
            if (dearer || tried++ >= MOST) {
                break;
            }
            List<Edit> edits = PlanFollows.with(aircraft, candidate.edits());
            trial.mended(edits, headline)
                    .ifPresent(mended -> found.add(new Found(new Candidate(edits, candidate.cost()), mended)));
        }
        return found.isEmpty()
                ? Optional.empty()
                : Optional.of(told(headline, found.get(found.size() - 1), found.size() - 1));
    }

    private record Found(Candidate candidate, Aircraft mended) {}

    private Repair told(Headline headline, Found found, int others) {
        List<Edit> edits = found.candidate.edits();
        boolean added = edits.stream().anyMatch(Edit.Add.class::isInstance);
        Repair.Sureness sureness = others == 0 ? Repair.Sureness.ONLY : Repair.Sureness.ONE_OF_SEVERAL;
        return new Repair(
                headline.finding().id(),
                headline.finding().code(),
                headline.finding().title(),
                edits,
                edits.stream().map(edit -> EditWords.of(aircraft, edit)).toList(),
                added ? Repair.Sureness.TO_BE_COMPLETED : sureness,
                others,
                headline.finding().meter(),
                found.mended);
    }
}
