package ringout.sheet.build;

import java.util.ArrayList;
import java.util.List;
import ringout.graph.order.StepKind;
import ringout.plan.Stage;
import ringout.plan.StagedPlan;
import ringout.plan.late.LastChance;
import ringout.plan.order.Side;
import ringout.plan.task.Task;
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

/** A sheet a stage: what is done in it and nothing else, with a box to tick for each thing, in the order of walking. */
final class StageSheets {
    private static final double INITIALS_MM = 14;

    private final BuildSource from;
    private final StagedPlan plan;

    private StageSheets(BuildSource from) {
        this.from = from;
        this.plan = from.plan();
    }

    static List<Document> of(BuildSource from) {
        StageSheets sheets = new StageSheets(from);
        return from.plan().stages().stream().map(sheets::sheet).toList();
    }

    private Document sheet(Stage stage) {
        List<Section> sections = new ArrayList<>();
        List<Block> work = new ArrayList<>();
        boolean power = stage.tasks().stream().anyMatch(task -> plan.task(task).kind() == StepKind.ENERGISE);
        work.add(new Caution(power ? BuildCautions.POWER : BuildCautions.COLD));
        if (power) {
            work.add(new Caution(BuildCautions.PACKS));
        }
        work.add(work(stage));
        sections.add(new Section("Do, in this order", work));
        plan.lastChances().stream()
                .filter(lid -> lid.stage() == stage.number() && !lid.joints().isEmpty())
                .forEach(lid ->
                        sections.add(new Section("Last chance before the " + lid.cover(), List.of(lastChance(lid)))));
        Table photos = photos(stage);
        if (!photos.rows().isEmpty()) {
            sections.add(new Section("Photos, with the tail number in the picture", List.of(photos)));
        }
        sections.add(new Section("Hold point " + hold(stage), List.of(from.signOff())));
        return from.sheet(
                "stage-" + stage.number(),
                "Stage " + stage.number() + ": up to " + stage.name(),
                power ? Cautions.FOOT_POWER : Cautions.FOOT_OHMS,
                sections);
    }

    private String hold(Stage stage) {
        return plan.task(stage.hold().sign()).what().replaceFirst("^hold: ", "");
    }

    private static Block lastChance(LastChance lid) {
        return new Paragraph(
                "It hides " + lid.joints().size() + " joints for the first time. Work through the sheet \"Last chance: "
                        + lid.cover() + "\" before it is closed.");
    }

    private Table work(Stage stage) {
        TableBuilder table = Table.named(
                        "stage-" + stage.number(),
                        Column.number("#", ""),
                        Column.text("do"),
                        Column.text("step"),
                        Column.tick("done"),
                        Column.tick("seen"))
                .by("zone");
        Side lies = stage.lies();
        String zone = "";
        boolean first = true;
        int line = 1;
        for (int number : stage.tasks()) {
            Task task = plan.task(number);
            if (first || (!task.zone().isEmpty() && !task.zone().equals(zone))) {
                zone = task.zone();
                table.group(zone.isEmpty() ? "anywhere" : zone);
                first = false;
            }
            if (task.side() != Side.EITHER && task.side() != lies) {
                lies = task.side();
                String how = lies == Side.BELLY_UP ? "turn the aircraft belly up" : "turn the aircraft on its legs";
                table.row(Row.Kind.GRAVE, "", how + ", two people, no pack plugged", "", "", "");
            }
            table.row(
                    task.kind() == StepKind.SIGN || task.kind() == StepKind.CLOSE ? Row.Kind.GRAVE : Row.Kind.LINE,
                    String.valueOf(line++),
                    task.words(),
                    step(task),
                    "",
                    "");
        }
        return table.table();
    }

    /** The step of the procedure that does it; where there is a procedure and none does, that it is added. */
    private String step(Task task) {
        boolean procedure = plan.net().tasks().stream().anyMatch(Task::written);
        return procedure && !task.written() ? "added" : task.step();
    }

    private Table photos(Stage stage) {
        TableBuilder table = Table.named(
                "photos-" + stage.number(),
                Column.text("what must be seen in it"),
                Column.text("step"),
                Column.tick("taken"),
                Column.writeIn("file", "", 40),
                Column.writeIn("by", "", INITIALS_MM));
        stage.tasks().stream()
                .map(plan::task)
                .filter(task -> task.kind() == StepKind.PHOTO)
                .forEach(task -> table.row(task.what(), step(task), "", "", ""));
        return table.table();
    }
}
