package ringout.present.text;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import ringout.plan.Ring;
import ringout.plan.Stage;
import ringout.plan.StagedPlan;
import ringout.plan.late.LastChance;
import ringout.plan.power.Expected;
import ringout.plan.power.PlugOrder;
import ringout.plan.power.PowerStage;
import ringout.plan.power.Supply;

/** The plan of a build for a terminal: stages, last chances, the first power-up, in a line or two each. */
public final class PlanText {
    private static final int NAME = 12;

    private final Lines lines = new Lines();
    private final StagedPlan plan;

    private PlanText(StagedPlan plan) {
        this.plan = plan;
    }

    /**
     * {@return the plan, lines ending in \n}
     *
     * @param aircraft what it is the plan of, as its sheets say
     */
    public static String of(StagedPlan plan, String aircraft) {
        PlanText text = new PlanText(plan);
        text.lines.line("plan of the build of " + aircraft);
        plan.rings().forEach(text::ring);
        text.stages();
        plan.lastChances().forEach(text::lid);
        text.stake();
        text.power();
        text.notes();
        return text.lines.toString();
    }

    private void ring(Ring ring) {
        lines.line("");
        lines.line("cannot be kept: each waits for the next");
        ring.words().forEach(words -> line("", words));
        line(
                "way out",
                ring.cut().isEmpty()
                        ? "none known; one of these must change, there is no plan until then"
                        : ring.cut().stream()
                                .map(cut -> String.format(Locale.ROOT, "%s, about %.0f min", cut.cut(), cut.minutes()))
                                .collect(Collectors.joining("; ")));
    }

    private void line(String name, String words) {
        lines.hanging("  " + name, NAME, words);
    }

    private void stages() {
        lines.line("");
        for (Stage stage : plan.stages()) {
            String hold = plan.task(stage.hold().sign()).what().replaceFirst("^hold: ", "");
            String lid = stage.hold().then() < 0
                    ? ""
                    : ", then close " + plan.task(stage.hold().then()).what();
            line(
                    "stage " + stage.number(),
                    String.format(
                            Locale.ROOT,
                            "%d tasks up to %s; hold %s%s; walking and turning %.1f min (%.1f in the order of the list)",
                            stage.tasks().size(),
                            stage.name(),
                            hold,
                            lid,
                            stage.minutes(),
                            stage.plainMinutes()));
        }
    }

    private void lid(LastChance lid) {
        lines.line("");
        String minutes = lid.openMinutes().isPresent()
                ? String.format(
                        Locale.ROOT,
                        "%.0f min off and on again",
                        lid.openMinutes().getAsDouble())
                : "cannot tell the minutes: needs those of " + String.join(", ", lid.untold());
        lines.line("last chance before the " + lid.cover() + ", " + minutes);
        List<String> shown = lid.joints().stream()
                .filter(joint -> !joint.outside().isEmpty())
                .map(LastChance.Joint::name)
                .toList();
        List<String> nowhere = lid.joints().stream()
                .filter(joint -> joint.outside().isEmpty())
                .map(LastChance.Joint::name)
                .toList();
        if (!nowhere.isEmpty()) {
            line(
                    "now only",
                    String.join(", ", nowhere) + ": both ends of a lead are hidden, no plug outside reads into it");
        }
        if (!shown.isEmpty()) {
            line("outside too", String.join(", ", shown) + ": by the far end of their leads");
        }
        if (!lid.settings().isEmpty()) {
            line("by hand", String.join(", ", lid.settings()));
        }
        lid.open().forEach(words -> line("cannot tell", "needs " + words));
    }

    private void stake() {
        lines.line("");
        line(
                "at stake",
                String.format(
                        Locale.ROOT,
                        "%.2f min before, %.2f min in this plan: probability wrong times minutes to open again, summed over %d hidden"
                                + " joints (judgement)",
                        plan.exposure().before(),
                        plan.exposure().after(),
                        plan.exposure().terms().size()));
        if (plan.lastChances().isEmpty()) {
            line("cannot tell", "needs the lids and what lies under each: none is listed, so nothing counts as hidden");
        }
        if (!plan.exposure().untold().isEmpty()) {
            line(
                    "",
                    "not in it, cannot tell: needs the minutes of "
                            + String.join(", ", plan.exposure().untold()));
        }
    }

    private void power() {
        lines.line("");
        plan.powerUp().open().forEach(words -> line("power-up", words));
        for (PowerStage stage : plan.powerUp().stages()) {
            line(stage.id(), stage.what() + supply(stage.supply()));
            stage.readings().forEach(one -> line("", reading(one)));
        }
        List<PlugOrder.Act> making = plan.powerUp().plugs().making();
        if (!making.isEmpty()) {
            line("pack plugs", making.stream().map(PlugOrder.Act::words).collect(Collectors.joining("; ")));
            line("broken", String.join(", ", plan.powerUp().plugs().broken()));
        }
        plan.powerUp().plugs().cannotTell().forEach(words -> line("cannot tell", words));
        plan.powerUp().plugs().disagrees().forEach(words -> line("mind", words));
    }

    private static String supply(Supply supply) {
        if (supply.kind() != Supply.Kind.BENCH) {
            return "";
        }
        return String.format(
                        Locale.ROOT, "; bench supply %.1f V, ", supply.volts().orElse(0))
                + (supply.limitA().isPresent()
                        ? String.format(
                                Locale.ROOT, "limit %.1f A", supply.limitA().getAsDouble())
                        : "limit: cannot tell");
    }

    private static String reading(Expected one) {
        if (one instanceof Expected.Reading read) {
            return String.format(
                    Locale.ROOT,
                    "%s: %.2f %s, right from %.2f to %.2f",
                    read.at(),
                    read.value(),
                    read.unit(),
                    read.low(),
                    read.high());
        }
        return one instanceof Expected.Look look
                ? look.at() + ": " + look.words()
                : one.at() + ": cannot tell, needs " + ((Expected.CannotTell) one).needs();
    }

    private void notes() {
        lines.line("");
        line(
                "first",
                "propellers off before any pack; the contact with pre-charge last; supply off before any plug is changed");
        line(
                "not seen",
                "tools, glue, curing times, who is free; minutes and probabilities are judgement; local codes and the"
                        + " makers' data come first");
    }
}
