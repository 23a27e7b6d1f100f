package ringout.finding;

import java.util.OptionalDouble;
import ringout.graph.Trail;
import ringout.model.Origin;

/**
 * Why a finding is true.
 *
 * @param path the way through the user's rows, pin by pin
 * @param sum the arithmetic in words: formula, inputs, result, limit
 * @param value the value judged
 * @param limit the limit it is held against
 * @param unit unit of both
 * @param source where the limit comes from: standard and clause, or "common practice"
 * @param origin the weakest origin among the inputs
 * @param onAssumption whether the verdict turns when an assumed input moves by 20 %
 */
public record Evidence(
        Trail path,
        String sum,
        OptionalDouble value,
        OptionalDouble limit,
        String unit,
        String source,
        Origin origin,
        boolean onAssumption) {}
