package ringout.draw.harness;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import ringout.draw.tree.TreeNode;
import ringout.graph.power.PowerSource;
import ringout.sheet.Output;
import ringout.solve.dc.ElementState;

/** The box of a pack, regulator or supply output: what it gives, of what, and what is left. */
final class SourceBox {
    private static final double PERCENT = 100;

    private SourceBox() {}

    static TreeNode of(String id, PowerSource source, Optional<Output> output, String state) {
        boolean pack = source.kind() == PowerSource.Kind.PACK;
        List<String> lines = new ArrayList<>(output.map(o -> lines(o, pack)).orElse(List.of()));
        if (!state.isEmpty()) {
            lines.add(state);
        }
        return new TreeNode(
                id, pack ? "pack" : "regulator", source.name(), lines, lines, false, output.flatMap(SourceBox::share));
    }

    /** What a regulator does, if it does not regulate. */
    static String words(ElementState state) {
        return switch (state) {
            case WORKING -> "";
            case UNFED -> "NOT FED";
            case REVERSED -> "INPUT REVERSED";
            case BLOCKING -> "HELD UP FROM ELSEWHERE";
            case DROPPED_OUT -> "INPUT TOO LOW";
            case LIMITED -> "AT ITS CURRENT LIMIT";
        };
    }

    private static List<String> lines(Output output, boolean pack) {
        String volts = TreeFigures.volts(output.volts()) + " V";
        String given = TreeFigures.both(output.averageA(), output.peakA()) + " A";
        String rated = "of " + TreeFigures.both(output.continuousA(), output.peakRatingA()) + " A";
        String left = "left " + TreeFigures.percent(output.averageMargin()) + " / "
                + TreeFigures.percent(output.peakMargin()) + " %";
        return pack ? List.of(volts, given, rated, left) : List.of(volts + ", " + given, rated + ", " + left);
    }

    private static Optional<TreeNode.Share> share(Output output) {
        return output.averageMargin().isPresent() && output.peakMargin().isPresent()
                ? Optional.of(new TreeNode.Share(
                        1 - output.averageMargin().getAsDouble() / PERCENT,
                        1 - output.peakMargin().getAsDouble() / PERCENT))
                : Optional.empty();
    }
}
