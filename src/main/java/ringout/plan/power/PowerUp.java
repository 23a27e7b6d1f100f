package ringout.plan.power;

import java.util.List;

/**
 * The first power-up.
 *
 * @param stages its stages in order
 * @param plugs how the pack plugs are made and broken
 * @param open what keeps it from being complete
 */
public record PowerUp(List<PowerStage> stages, PlugOrder plugs, List<String> open) {
    /** {@return the stages of one kind} */
    public List<PowerStage> stages(PowerStage.Kind kind) {
        return stages.stream().filter(stage -> stage.kind() == kind).toList();
    }
}
