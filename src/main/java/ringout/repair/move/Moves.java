package ringout.repair.move;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Every kind of change, tried from the cheapest on. */
public final class Moves {
    private static final List<Move> ALL = List.of(
            new SettingMoves(),
            new TerminatorMoves(),
            new AddressMoves(),
            new PinMoves(),
            new SocketMoves(),
            new WireMoves(),
            new FuseMoves(),
            new TypeMoves(),
            new PlugOrderMoves(),
            new LoopMoves(),
            new StepMoves(),
            new OwnReturnMoves(),
            new PlaceMoves(),
            new ThickAndFusedMoves(),
            new LeadMoves(),
            new RingMoves());

    private Moves() {}

    /** Changes around a mistake, the cheapest first; equal ones in the order of the list. */
    public static List<Candidate> of(Fault fault) {
        Stream<Candidate> all = ALL.stream().flatMap(move -> move.around(fault));
        return all.distinct().sorted(Comparator.comparingInt(Candidate::cost)).toList();
    }
}
