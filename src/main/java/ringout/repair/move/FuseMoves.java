package ringout.repair.move;

import java.util.Arrays;
import java.util.stream.Stream;
import ringout.model.Lead;

/** Fuses of other sizes: blade fuse ratings in common use (ISO 8820-3, from memory). */
final class FuseMoves implements Move {
    private static final double[] SIZES = {1, 2, 3, 4, 5, 7.5, 10, 15, 20, 25, 30, 35, 40, 50, 60, 70, 80, 100};

    @Override
    public Stream<Candidate> around(Fault fault) {
        return fault.leads().stream().filter(lead -> lead.fuseA().isKnown()).flatMap(FuseMoves::resized);
    }

    private static Stream<Candidate> resized(Lead lead) {
        double now = lead.fuseA().known().orElseThrow();
        return Arrays.stream(SIZES)
                .filter(size -> size != now)
                .boxed()
                .sorted((a, b) -> Double.compare(distance(a, now), distance(b, now)))
                .flatMap(size -> Move.setting(
                        Move.lead(lead.id()).then("fuseA"),
                        size == Math.rint(size) ? String.valueOf(size.intValue()) : size.toString(),
                        Costs.FUSE + (int) Math.round(2 * distance(size, now))));
    }

    private static double distance(double size, double now) {
        return Math.abs(Math.log(size / now));
    }
}
