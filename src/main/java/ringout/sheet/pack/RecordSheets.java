package ringout.sheet.pack;

import java.util.List;
import ringout.model.Change;
import ringout.model.ListedValue;
import ringout.model.Photo;
import ringout.model.Reading;
import ringout.model.Signature;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.Conductors;

/** What the record of the aircraft holds: photos, readings, signatures, changes and differences. */
final class RecordSheets {
    private RecordSheets() {}

    static Document photos(PackSource from) {
        TableBuilder table = Table.named(
                "photos",
                Column.text("shows"),
                Column.text("file"),
                Column.text("hash"),
                Column.text("date"),
                Column.text("by"));
        for (Photo photo : from.aircraft().record().photos()) {
            table.row(
                    photo.item(),
                    photo.file().or(""),
                    photo.hash().or("not given"),
                    photo.date().or(""),
                    photo.by().or(""));
        }
        from.aircraft()
                .units()
                .forEach(unit ->
                        unit.photo().known().ifPresent(file -> table.row(unit.ref(), file, "not given", "", "")));
        return from.upright(
                "photos",
                "Photos index",
                List.of(new Section(
                        "",
                        List.of(
                                new Paragraph("A photo without a hash can be exchanged without anybody noticing."),
                                table.table()))));
    }

    static Document readings(PackSource from) {
        TableBuilder readings = Table.named(
                "readings",
                Column.text("where"),
                Column.text("quantity"),
                Column.text("state, pulled"),
                Column.text("reading"),
                Column.text("band"),
                Column.text("instrument"),
                Column.text("by"),
                Column.text("date"));
        for (Reading reading : from.aircraft().record().readings()) {
            String pulled = reading.pulled().isEmpty() ? "" : ", pulled " + String.join(" ", reading.pulled());
            readings.row(
                    reading.where(),
                    reading.quantity().or(""),
                    reading.state().or("") + pulled,
                    Conductors.cell(reading.value()),
                    Conductors.cell(reading.expectedLow()) + " to " + Conductors.cell(reading.expectedHigh()),
                    reading.instrument().or(""),
                    reading.by().or(""),
                    reading.date().or(""));
        }
        TableBuilder signatures = Table.named(
                "signatures", Column.text("item"), Column.text("role"), Column.text("by"), Column.text("date"));
        for (Signature signature : from.aircraft().record().signatures()) {
            signatures.row(
                    signature.item(),
                    signature.role().or(""),
                    signature.by().or(""),
                    signature.date().or(""));
        }
        return from.upright(
                "readings",
                "Readings and signatures on record",
                List.of(
                        new Section("Readings", List.of(readings.table())),
                        new Section("Signatures", List.of(signatures.table()))));
    }

    static Document changes(PackSource from) {
        TableBuilder changes = Table.named(
                "changes",
                Column.text("change"),
                Column.text("rows touched"),
                Column.text("why"),
                Column.text("by"),
                Column.text("date"));
        for (Change change : from.aircraft().record().changes()) {
            changes.row(
                    change.id(),
                    String.join(" ", change.objects()),
                    change.reason().or("no reason given"),
                    change.by().or(""),
                    change.date().or(""));
        }
        return from.upright(
                "changes",
                "Changes and differences on record",
                List.of(
                        new Section(
                                "Found on the aircraft, against the list",
                                List.of(values("found", from.aircraft().record().found()))),
                        new Section(
                                "Baseline of the type",
                                List.of(values(
                                        "baseline", from.aircraft().record().baseline()))),
                        new Section("Changes on record", List.of(changes.table()))));
    }

    private static Table values(String name, List<ListedValue> values) {
        TableBuilder table = Table.named(
                name,
                Column.text("row"),
                Column.text("field"),
                Column.text("value there"),
                Column.text("decision"),
                Column.text("by"),
                Column.text("date"));
        for (ListedValue value : values) {
            table.row(
                    value.item(),
                    value.field().or(""),
                    value.value().or(""),
                    value.decision().or("open"),
                    value.by().or(""),
                    value.date().or(""));
        }
        return table.table();
    }
}
