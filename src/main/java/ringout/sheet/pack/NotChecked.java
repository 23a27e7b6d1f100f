package ringout.sheet.pack;

import java.util.List;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;

/** What nobody may believe to be checked because this pack exists. */
final class NotChecked {
    private NotChecked() {}

    static Document of(PackSource from) {
        TableBuilder table = Table.named("not-checked", Column.text("not checked"), Column.text("who does"));
        table.row(
                "whether the aircraft is as the list says",
                "the ring-out, the as-fitted readings, the eyes of two people");
        table.row(
                "workmanship of a crimp, a solder joint, a splice: pull, shape, strands",
                "whoever made it and whoever looks");
        table.row(
                "chafing, strain and bend where no route is given, ties, drip loops",
                "inspection of the routed harness");
        table.row("what is inside a unit beyond its plugs, joins and ratings as typed", "its maker");
        table.row(
                "whether the data typed are right: roles, ratings, loads, lengths",
                "measuring; each number names its origin");
        table.row(
                "software: logic, tuning, failsafe behaviour, messages", "bench and flight tests of the configuration");
        table.row(
                "electromagnetic compatibility beyond distances and pairs declared",
                "measurement with everything transmitting");
        table.row("two failures at once, slow failures, wear, corrosion, water", "maintenance, and readings over time");
        table.row("heat inside closed spaces beyond the ratings given", "a thermal picture after the first hover");
        table.row("structure, propulsion, weight and balance, flight behaviour", "the airframe's own tests");
        table.row("airworthiness, and whether the flight is allowed", "the authority, and the operator");
        return from.upright(
                "not-checked",
                "What is not checked",
                List.of(new Section(
                        "",
                        List.of(
                                new Paragraph(
                                        "Computed from the list and the types it names. A check without a finding says that"
                                                + " the list is sound in that point and nothing more. "
                                                + from.report().cannotTell().size()
                                                + " questions could not be decided for lack of data, and "
                                                + from.report().notApplicable()
                                                + " checks had nothing to look at."),
                                table.table()))));
    }
}
