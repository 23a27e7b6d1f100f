package ringout.sheet.build;

import java.util.ArrayList;
import java.util.List;
import ringout.plan.late.LastChance;
import ringout.sheet.Cautions;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.KeyValues;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Row;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;

/** A sheet a lid: everything it hides for the first time, with the minutes it costs to be late. */
final class LastChanceSheets {
    private static final double READING_MM = 18;

    private final BuildSource from;

    private LastChanceSheets(BuildSource from) {
        this.from = from;
    }

    static List<Document> of(BuildSource from) {
        LastChanceSheets sheets = new LastChanceSheets(from);
        return from.plan().lastChances().stream()
                .filter(lid -> !lid.joints().isEmpty()
                        || !lid.settings().isEmpty()
                        || !lid.open().isEmpty())
                .map(sheets::sheet)
                .toList();
    }

    private Document sheet(LastChance lid) {
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Caution(BuildCautions.COLD));
        blocks.add(new KeyValues(List.of(
                new KeyValues.Pair("lid", lid.cover()),
                new KeyValues.Pair("closed in stage", lid.stage() == 0 ? "no stage" : String.valueOf(lid.stage())),
                new KeyValues.Pair(
                        "off and on again, with all over it",
                        lid.openMinutes().isPresent()
                                ? Words.whole(lid.openMinutes().getAsDouble()) + " min"
                                : "cannot tell: needs the minutes of " + String.join(", ", lid.untold())))));
        lid.open().forEach(words -> blocks.add(new Paragraph("Cannot tell: needs " + words + ".")));
        blocks.add(joints(lid));
        if (!lid.settings().isEmpty()) {
            TableBuilder settings = Table.named(
                    "settings-" + Words.file(lid.cover()),
                    Column.text("set by hand, out of reach afterwards"),
                    Column.tick("set"));
            lid.settings().forEach(setting -> settings.row(setting, ""));
            blocks.add(settings.table());
        }
        blocks.add(new Paragraph(
                "\"Far end in reach\": pulled there with all lids on, a meter reads into the lead up to the joint; what the unit"
                        + " itself does not join shows by function only. Where it says nowhere, only taking the lid off shows the joint"
                        + " again. \"Late\" adds opening, the test again and the tests of what opening"
                        + " disturbs."));
        return from.sheet(
                "last-chance-" + Words.file(lid.cover()),
                "Last chance: " + lid.cover(),
                Cautions.FOOT_OHMS,
                List.of(new Section("", blocks), new Section("Nothing of this is open", List.of(from.signOff()))));
    }

    private static Table joints(LastChance lid) {
        TableBuilder table = Table.named(
                "last-chance-" + Words.file(lid.cover()),
                Column.text("joint"),
                Column.text("leads"),
                Column.text("far end in reach"),
                Column.number("late", "min"),
                Column.tick("proved"),
                Column.writeIn("reading", "", READING_MM),
                Column.tick("photo"));
        for (LastChance.Joint joint : lid.joints()) {
            table.row(
                    joint.outside().isEmpty() ? Row.Kind.GRAVE : Row.Kind.LINE,
                    joint.name(),
                    String.join(" ", joint.leads()),
                    joint.outside().isEmpty() ? "nowhere" : joint.outside(),
                    joint.lateMinutes().isPresent()
                            ? Words.whole(joint.lateMinutes().getAsDouble())
                            : "?",
                    "",
                    "",
                    "");
        }
        return table.table();
    }
}
