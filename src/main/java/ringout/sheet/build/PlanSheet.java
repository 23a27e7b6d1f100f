package ringout.sheet.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import ringout.graph.order.Before;
import ringout.graph.order.StepKind;
import ringout.plan.Ring;
import ringout.plan.Stage;
import ringout.plan.StagedPlan;
import ringout.plan.late.Exposure;
import ringout.plan.late.LastChance;
import ringout.sheet.Cautions;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Row;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;

/** The first sheet: stages and hold points, what is at stake under lids, and orders that cannot be kept. */
final class PlanSheet {
    private final StagedPlan plan;

    private PlanSheet(StagedPlan plan) {
        this.plan = plan;
    }

    static Document of(BuildSource from) {
        PlanSheet sheet = new PlanSheet(from.plan());
        List<Section> sections = new ArrayList<>();
        if (!from.plan().rings().isEmpty()) {
            sections.add(new Section("Orders that cannot be kept", sheet.rings()));
        }
        sections.add(new Section("Stages", sheet.stages()));
        sections.add(new Section("At stake under lids", sheet.exposure()));
        sections.add(new Section(
                "What this plan does not see",
                List.of(new Paragraph(
                        "The minutes of walking, turning and testing again and the probabilities are judgement, not data: put your own"
                                + " in their place. It knows covers, holes and zones as the list has them, and nothing of tools,"
                                + " glue, curing times, or who is free. It is no airworthiness document."))));
        return from.sheet("build-plan", "Plan of the build", Cautions.FOOT, sections);
    }

    private List<Block> rings() {
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < plan.rings().size(); i++) {
            Ring ring = plan.rings().get(i);
            TableBuilder table =
                    Table.named("ring-" + (i + 1), Column.number("#", ""), Column.text("each waits for the next"));
            for (int line = 0; line < ring.words().size(); line++) {
                table.row(String.valueOf(line + 1), ring.words().get(line));
            }
            blocks.add(table.table());
            blocks.add(new Paragraph(
                    ring.cut().isEmpty()
                            ? "No way out is known: one of these must change in the list or in the procedure. There is no plan until then."
                            : "The cheapest way out, taken in this plan: "
                                    + ring.cut().stream().map(PlanSheet::cut).collect(Collectors.joining("; ")) + "."));
        }
        return blocks;
    }

    private static String cut(Before link) {
        return link.cut() + ", about " + String.format(Locale.ROOT, "%.0f", link.minutes()) + " min";
    }

    private List<Block> stages() {
        TableBuilder table = Table.named(
                "stages",
                Column.number("stage", ""),
                Column.text("up to"),
                Column.text("hold point"),
                Column.text("then close"),
                Column.number("tasks", ""),
                Column.number("of them not in the procedure", ""),
                Column.number("walking and turning", "min"),
                Column.number("in the order of the list", "min"));
        double sum = 0;
        double plain = 0;
        for (Stage stage : plan.stages()) {
            sum += stage.minutes();
            plain += stage.plainMinutes();
            long added = stage.tasks().stream()
                    .filter(task -> !plan.task(task).written())
                    .count();
            table.row(
                    String.valueOf(stage.number()),
                    stage.name(),
                    hold(stage),
                    stage.hold().then() < 0
                            ? ""
                            : plan.task(stage.hold().then()).what(),
                    String.valueOf(stage.tasks().size()),
                    String.valueOf(added),
                    minutes(stage.minutes()),
                    minutes(stage.plainMinutes()));
        }
        table.row(
                Row.Kind.SUM,
                "",
                "all stages",
                "",
                "",
                String.valueOf(plan.order().size()),
                "",
                minutes(sum),
                minutes(plain));
        return List.of(
                new Caution(
                        List.of("a hold point is a place where work stops until another person has looked and signed")),
                table.table());
    }

    private String hold(Stage stage) {
        return plan.task(stage.hold().sign()).what().replaceFirst("^hold: ", "");
    }

    private static String minutes(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }

    private List<Block> exposure() {
        Exposure exposure = plan.exposure();
        List<Block> blocks = new ArrayList<>();
        TableBuilder table = Table.named(
                "lids",
                Column.text("lid"),
                Column.number("closed in stage", ""),
                Column.number("joints under it first", ""),
                Column.number("of them with hidden far ends", ""),
                Column.number("off and on again", "min"),
                Column.number("late, at most", "min"));
        for (LastChance lid : plan.lastChances()) {
            table.row(
                    lid.cover(),
                    lid.stage() == 0 ? "" : String.valueOf(lid.stage()),
                    String.valueOf(lid.joints().size()),
                    String.valueOf(lid.joints().stream()
                            .filter(joint -> joint.outside().isEmpty())
                            .count()),
                    lid.openMinutes().isPresent()
                            ? Words.whole(lid.openMinutes().getAsDouble())
                            : "?",
                    lid.joints().stream().flatMapToDouble(joint -> joint.lateMinutes().stream()).max().stream()
                            .mapToObj(Words::whole)
                            .findFirst()
                            .orElse("?"));
        }
        blocks.add(table.table());
        boolean procedure =
                plan.net().tasks().stream().anyMatch(task -> task.kind() == StepKind.CHECK && task.written());
        blocks.add(new Paragraph(String.format(
                Locale.ROOT,
                "At stake, the sum over %d hidden joints of probability wrong times minutes to open again: %.2f min %s, %.2f min in"
                        + " this plan. A test before the lid is taken to miss one wrong joint in ten.",
                exposure.terms().size(),
                exposure.before(),
                procedure ? "in the procedure as written" : "with all tests after the lids",
                exposure.after())));
        plan.lastChances()
                .forEach(lid ->
                        lid.open().forEach(words -> blocks.add(new Paragraph("Cannot tell: needs " + words + "."))));
        if (plan.lastChances().isEmpty()) {
            blocks.add(new Paragraph(
                    "Cannot tell: needs the lids and what lies under each. None is listed, so nothing counts as"
                            + " hidden."));
        }
        if (!exposure.untold().isEmpty()) {
            blocks.add(new Paragraph(
                    "Not in these sums, cannot tell: needs the minutes of " + String.join(", ", exposure.untold())
                            + ", off and on again; open and close it once with a watch."));
        }
        return blocks;
    }
}
