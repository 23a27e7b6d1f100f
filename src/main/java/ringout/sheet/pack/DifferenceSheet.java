package ringout.sheet.pack;

import java.util.List;
import ringout.compare.difference.Difference;
import ringout.compare.find.Differences;
import ringout.graph.Circuit;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Row;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;

/** What differs from an earlier revision or another tail, by the meaning of the connections. */
final class DifferenceSheet {
    private static final double HAND_MM = 24;

    private DifferenceSheet() {}

    static Document of(PackSource from, Circuit base) {
        RevisionMark earlier =
                RevisionMark.of(base.wiring().aircraft(), base.state().name());
        Paragraph how = new Paragraph(
                "Against " + earlier.words() + ". A bar in front: what is joined to what has changed. What is"
                        + " usually decided is common practice; whoever answers for the aircraft decides. What was opened or disturbed"
                        + " for a difference is tested again, and signatures for it lapse.");
        return from.flat(
                "differences",
                "Differences from an earlier revision",
                List.of(new Section("", List.of(how, table(from, base), from.signOff()))));
    }

    static Table table(PackSource from, Circuit base) {
        TableBuilder table = Table.named(
                "differences",
                Column.text("severity"),
                Column.text("kind"),
                Column.text("what"),
                Column.text("earlier"),
                Column.text("now"),
                Column.text("nets"),
                Column.text("usually"),
                Column.writeIn("decision, by", "", HAND_MM));
        List<Difference> all = Differences.of(base, from.circuit()).all().stream()
                .sorted((a, b) -> a.kind().severity().compareTo(b.kind().severity()))
                .toList();
        for (Difference one : all) {
            boolean joins = one.kind().ofConnections();
            table.row(
                    joins ? Row.Kind.GRAVE : Row.Kind.LINE,
                    one.kind().severity().toString(),
                    one.kind().word(),
                    one.what(),
                    one.before(),
                    one.after(),
                    String.join("; ", one.effects()),
                    one.kind().fate().words(),
                    "");
        }
        return table.table();
    }
}
