package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.graph.loss.LossTable;
import ringout.model.AircraftFunction;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Row;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;

/** The loss table: what goes with each plug, lead, fuse, clamp and regulator, and what the crew sees of it. */
final class LossSheet {
    private LossSheet() {}

    static Document of(PackSource from) {
        Paragraph how = new Paragraph(
                "Each thing alone lets go, everything else whole. Things that take the same are in one row."
                        + " A bar in front: a function flight depends on stops. What the crew sees is what the list names as indication of the"
                        + " functions lost; nothing there means nobody notices. Two failures at once are not looked at.");
        return from.flat("loss-table", "Loss table", List.of(new Section("", List.of(how, table(from)))));
    }

    private record Taken(List<String> units, List<String> functions, List<String> seen, boolean grave) {}

    static Table table(PackSource from) {
        Map<Taken, List<String>> rows = new LinkedHashMap<>();
        for (LossTable.Line line : LossTable.of(from.circuit()).lines()) {
            Taken taken = new Taken(line.units(), line.functionNames(), seen(line), line.flightCritical() > 0);
            rows.computeIfAbsent(taken, key -> new ArrayList<>())
                    .add(line.item().kind().word() + " " + line.item().name());
        }
        TableBuilder table = Table.named(
                "loss-table",
                Column.text("lets go"),
                Column.text("functions lost"),
                Column.text("units without supply or bus"),
                Column.text("the crew sees"));
        rows.forEach((taken, items) -> table.row(
                taken.grave() ? Row.Kind.GRAVE : Row.Kind.LINE,
                String.join(", ", items),
                String.join(", ", taken.functions()),
                String.join(" ", taken.units()),
                String.join(", ", taken.seen())));
        return table.table();
    }

    private static List<String> seen(LossTable.Line line) {
        Set<String> seen = new LinkedHashSet<>();
        for (AircraftFunction function : line.functions()) {
            function.indications().stream()
                    .filter(sign -> !function.indicationsOff().contains(sign))
                    .forEach(seen::add);
        }
        return List.copyOf(seen);
    }
}
