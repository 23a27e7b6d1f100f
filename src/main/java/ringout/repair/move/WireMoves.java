package ringout.repair.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ringout.model.Awg;
import ringout.model.Lead;
import ringout.model.edit.Edit;

/** Wire a few sizes thicker, in one lead or in all leads of the mistake that have the same size; lengths as the limit asks. */
final class WireMoves implements Move {
    /** Even sizes are the ones in the shops. */
    private static final int STEP = 2;

    private static final int STEPS = 5;

    @Override
    public Stream<Candidate> around(Fault fault) {
        List<Candidate> all = new ArrayList<>();
        List<Lead> sized =
                fault.leads().stream().filter(lead -> lead.awg().isKnown()).toList();
        for (int step = 1; step <= STEPS; step++) {
            for (Lead lead : sized) {
                thicker(List.of(lead), step, all);
            }
            for (Lead lead : sized) {
                thicker(alike(sized, lead), step, all);
            }
        }
        lengths(fault, all);
        return all.stream();
    }

    private static List<Lead> alike(List<Lead> leads, Lead lead) {
        return leads.stream().filter(other -> other.awg().equals(lead.awg())).toList();
    }

    private static void thicker(List<Lead> leads, int step, List<Candidate> all) {
        List<Edit> edits = new ArrayList<>();
        for (Lead lead : leads) {
            Awg now = lead.awg().known().orElseThrow();
            size(now, step)
                    .flatMap(size -> Move.set(Move.lead(lead.id()).then("awg"), size))
                    .ifPresent(edits::add);
        }
        if (edits.size() == leads.size()) {
            all.add(new Candidate(edits, Costs.WIRE * leads.size() + step));
        }
    }

    private static Optional<String> size(Awg now, int step) {
        int number = now.gauge() - STEP * step;
        return number >= 0 ? Optional.of(String.valueOf(number)) : Optional.empty();
    }

    /** Where the limit of the finding is a length, the lead is cut to it. */
    private static void lengths(Fault fault, List<Candidate> all) {
        var evidence = fault.headline().finding().evidence();
        if (evidence.unit().equals("mm") && evidence.limit().isPresent()) {
            String length = String.valueOf((long) Math.ceil(evidence.limit().getAsDouble()));
            for (Lead lead : fault.leads()) {
                Move.setting(Move.lead(lead.id()).then("lengthMm"), length, Costs.WIRE)
                        .forEach(all::add);
            }
        }
    }
}
