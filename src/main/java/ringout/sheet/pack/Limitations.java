package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.graph.Directory;
import ringout.graph.loss.LossTable;
import ringout.model.Limit;
import ringout.model.Plug;
import ringout.model.Prerequisite;
import ringout.model.State;
import ringout.model.Waiver;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.Conductors;

/** What whoever flies and maintains the aircraft must keep to: from waivers, from the parts, from the states. */
final class Limitations {
    private final PackSource from;
    private final TableBuilder table = Table.named("limitations", Column.text("limitation"), Column.text("because"))
            .by("about");

    private Limitations(PackSource from) {
        this.from = from;
    }

    static Document of(PackSource from) {
        Paragraph how = new Paragraph(
                "Drawn from the list and its review. The maker's manual, the operator's rules and the local"
                        + " code may ask for more.");
        return from.upright(
                "limitations", "Limitations", List.of(new Section("", List.of(how, new Limitations(from).table()))));
    }

    private Table table() {
        waivers();
        packs();
        units();
        table.group("states of the aircraft");
        for (State state : from.aircraft().states()) {
            if (state.bench().is(true)) {
                table.row(
                        "do not fly in the state " + state.name(), state.note().or("declared for the bench"));
            }
        }
        long single = LossTable.of(from.circuit()).grave().size();
        table.group("single failures");
        if (single > 0) {
            table.row(
                    single + " single things end a function flight depends on: look at them before each flight",
                    "loss table, rows with a bar in front");
        }
        table.group("limits of this project that differ from the usual");
        for (Limit limit : from.aircraft().project().limits()) {
            table.row(
                    limit.name() + " = " + Conductors.cell(limit.value()),
                    limit.reason().or("no reason given"));
        }
        table.group("what could not be decided");
        int open = from.report().cannotTell().size();
        if (open > 0) {
            table.row(
                    open + (open == 1 ? " question is open" : " questions are open"),
                    "sheet Findings and waivers; none of them is a pass");
        }
        return table.table();
    }

    private void waivers() {
        table.group("waivers");
        for (Waiver waiver : from.aircraft().waivers()) {
            boolean lapsed = from.report().lapsed().stream()
                    .anyMatch(one -> one.finding().equals(waiver.finding()));
            String words = waiver.conditions()
                    .known()
                    .or(() -> waiver.measure().known())
                    .orElse("no condition given");
            table.row(
                    (lapsed ? "lapsed: " : "") + words,
                    "waiver of " + waiver.finding() + ", until " + FindingSheet.ends(waiver));
        }
    }

    private void packs() {
        table.group("packs");
        List<String> order = from.aircraft().airframe().plugOrder();
        if (!order.isEmpty()) {
            table.row("plug in this order and pull in reverse: " + String.join(", ", order), "declared plug order");
        }
        Directory directory = from.wiring().directory();
        for (int unit = 0; unit < from.aircraft().units().size(); unit++) {
            for (int plug = 0; plug < directory.type(unit).plugs().size(); plug++) {
                Plug record = directory.type(unit).plugs().get(plug);
                if (record.suppressor().is(true)) {
                    table.row(
                            "close " + from.wiring().plugName(unit, plug) + " last, in one push, and open it first",
                            "its contact suppresses the spark, no other does");
                }
            }
        }
    }

    private void units() {
        table.group("units");
        Map<String, List<String>> needed = new LinkedHashMap<>();
        List<String> loaded = new ArrayList<>();
        Directory directory = from.wiring().directory();
        for (int unit = 0; unit < from.aircraft().units().size(); unit++) {
            String name = directory.name(unit);
            for (Prerequisite need : directory.type(unit).prerequisites()) {
                needed.computeIfAbsent(need.what(), key -> new ArrayList<>()).add(name);
            }
            if (directory.type(unit).antenna().is(true)) {
                loaded.add(name);
            }
            if (directory.type(unit).ejector().is(true)) {
                table.row("safe pin in " + name + " before power, line of fire clear", "it throws something out");
            }
            if (directory.type(unit).compass().is(true)) {
                table.row(
                        "swing the compass of " + name + " after a change of payload, wiring or pack",
                        "currents and iron near it turn it");
            }
        }
        needed.forEach((what, units) ->
                table.row("before power: " + what + ": " + String.join(", ", units), "their type asks for it"));
        if (!loaded.isEmpty()) {
            table.row(
                    "before power: antenna or dummy load on " + String.join(", ", loaded),
                    "a transmitter without a load burns out");
        }
    }
}
