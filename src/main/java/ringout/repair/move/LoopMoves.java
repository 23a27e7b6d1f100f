package ringout.repair.move;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import ringout.finding.Severity;
import ringout.model.CurrentLoop;
import ringout.model.edit.Edit;
import ringout.model.edit.Path;

/**
 * A pair that carries changing current tied closer together, the compass raised, or both: tying costs little, a higher mast is a
 * new part. Where it is only worth a note nothing is changed. Two wires are not brought closer than {@value #CLOSEST} mm from middle to middle, as thick wire with
 * its insulation allows (common practice, no source).
 */
final class LoopMoves implements Move {
    private static final int CLOSEST = 6;
    /** A mast is not offered higher than this many millimetres. */
    private static final int HIGHEST = 400;

    private static final int STEP = 10;

    @Override
    public Stream<Candidate> around(Fault fault) {
        if (!fault.headline().finding().severity().atLeast(Severity.S3)) {
            return Stream.empty();
        }
        return fault.aircraft().airframe().loops().stream()
                .filter(loop -> loop.spacingMm().isKnown() && loop.belowMm().isKnown())
                .filter(loop -> loop.leads().stream().anyMatch(fault::mentions)
                        && loop.compass().known().filter(fault::mentions).isPresent())
                .flatMap(loop -> moved(loop).stream());
    }

    private static List<Candidate> moved(CurrentLoop loop) {
        double spacing = loop.spacingMm().or(0.0);
        double below = loop.belowMm().or(0.0);
        List<Integer> spacings = new ArrayList<>(List.of((int) spacing));
        for (int closer = (int) Math.ceil(spacing) - 1; closer >= CLOSEST; closer--) {
            spacings.add(closer);
        }
        List<Candidate> all = new ArrayList<>();
        for (int apart : spacings) {
            add(all, loop, apart, below);
            for (int high = STEP * (int) (below / STEP + 1); high <= HIGHEST; high += STEP) {
                add(all, loop, apart, high);
            }
        }
        return all;
    }

    private static void add(List<Candidate> all, CurrentLoop loop, int apart, double high) {
        Path path = Path.of("airframe").then("loops").at(loop.name());
        List<Edit> edits = new ArrayList<>();
        put(path.then("spacingMm"), loop.spacingMm().or(0.0), apart).ifPresent(edits::add);
        put(path.then("belowMm"), loop.belowMm().or(0.0), high).ifPresent(edits::add);
        if (!edits.isEmpty()) {
            double tied = Costs.TIED * Math.log(loop.spacingMm().or(0.0) / apart);
            double raised = Costs.RAISED * Math.log(high / loop.belowMm().or(0.0));
            all.add(new Candidate(edits, Costs.SETTING + (int) Math.round(tied + raised)));
        }
    }

    private static Optional<Edit> put(Path path, double now, double then) {
        return (int) now == (int) then ? Optional.empty() : Move.set(path, String.valueOf((int) then));
    }
}
