package ringout.compare.fleet;

import java.util.List;
import ringout.compare.judge.Case;
import ringout.compare.judge.Judgement;
import ringout.model.Aircraft;

/**
 * One tail held against the base.
 *
 * @param name what it is called in the table
 * @param aircraft its list
 * @param judgement its differences from the base
 * @param cases the differences by matter
 * @param trends its readings over the hours
 */
public record Tail(String name, Aircraft aircraft, Judgement judgement, List<Case> cases, List<Trend> trends) {
    /** Keeps its own copies. */
    public Tail {
        cases = List.copyOf(cases);
        trends = List.copyOf(trends);
    }

    /** A tail with its differences by matter. */
    public static Tail of(String name, Aircraft aircraft, Judgement judgement, List<Trend> trends) {
        return new Tail(name, aircraft, judgement, Case.of(judgement), trends);
    }
}
