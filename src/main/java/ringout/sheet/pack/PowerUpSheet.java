package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.plan.power.Expected;
import ringout.plan.power.PlugOrder;
import ringout.plan.power.PowerStage;
import ringout.plan.power.PowerUp;
import ringout.plan.power.PowerUps;
import ringout.plan.power.Supply;
import ringout.sheet.Cautions;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.KeyValues;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;

/** The power-up sheet: the first power-up in stages, each with what is plugged, what must be read and when to switch off. */
final class PowerUpSheet {
    private static final double READING_MM = 24;
    private static final double INITIALS_MM = 16;

    private PowerUpSheet() {}

    static Document of(PackSource from) {
        PowerUp plan = PowerUps.of(from.circuit());
        List<Section> sections = new ArrayList<>();
        List<Block> first = new ArrayList<>();
        first.add(new Caution(Cautions.VOLTS));
        first.add(new Caution(Cautions.PACKS));
        first.add(
                new Paragraph(
                        "Ring-out, short and as-fitted sheets are signed first. Plugs are made and broken with the power"
                                + " off. A stage is left only when all its readings are in their bands; a reading outside is a fault to find,"
                                + " not a figure to note. Expected figures are computed from the list for the circuit of each stage."));
        plan.open().forEach(words -> first.add(new Paragraph("Open: " + words)));
        first.add(plugs(plan.plugs()));
        sections.add(new Section("Before anything is plugged", first));
        plan.stages().forEach(stage -> sections.add(stage(stage)));
        sections.add(new Section("", List.of(from.signOff())));
        return from.upright("power-up", "Power-up sheet", Cautions.FOOT_POWER, sections);
    }

    private static Table plugs(PlugOrder order) {
        TableBuilder table = Table.named(
                        "pack-plugs",
                        Column.number("no", ""),
                        Column.text("to do"),
                        Column.tick("made"),
                        Column.tick("broken"))
                .titled("Pack plugs, made in this order, broken from the last row up");
        for (PlugOrder.Act act : order.making()) {
            table.row(Integer.toString(table.size() + 1), act.words(), "", act instanceof PlugOrder.Make ? "" : "-");
        }
        order.cannotTell().forEach(words -> table.row("", "cannot tell: " + words, "-", "-"));
        order.disagrees().forEach(words -> table.row("", "the list says otherwise: " + words, "-", "-"));
        return table.table();
    }

    private static Section stage(PowerStage stage) {
        List<KeyValues.Pair> facts = new ArrayList<>();
        add(facts, "before", stage.before(), "; ");
        add(facts, "leave open", stage.pulled(), ", ");
        add(facts, "plug now", stage.plugged(), ", ");
        facts.add(new KeyValues.Pair("supply", supply(stage.supply())));
        add(facts, "stop at", stage.stop(), "; ");
        add(facts, "note", stage.notes(), "; ");
        TableBuilder table = Table.named(
                "power-up-" + stage.id().toLowerCase(Locale.ROOT),
                Column.text("at"),
                Column.text("expect"),
                Column.text("right between"),
                Column.writeIn("reading", "", READING_MM),
                Column.writeIn("initials", "", INITIALS_MM));
        for (Expected expected : stage.readings()) {
            if (expected instanceof Expected.Reading reading) {
                String unit = " " + reading.unit();
                table.row(
                        reading.at(),
                        figure(reading.value()) + unit,
                        figure(reading.low()) + " and " + figure(reading.high()) + unit,
                        "",
                        "");
            } else if (expected instanceof Expected.Look look) {
                table.row(look.at(), look.words(), "", "", "");
            } else if (expected instanceof Expected.CannotTell gap) {
                table.row(gap.at(), "cannot tell: needs " + gap.needs(), "", "", "");
            }
        }
        return new Section(stage.id() + ": " + stage.what(), List.of(new KeyValues(facts), table.table()));
    }

    private static void add(List<KeyValues.Pair> facts, String key, List<String> words, String between) {
        if (!words.isEmpty()) {
            facts.add(new KeyValues.Pair(key, String.join(between, words)));
        }
    }

    private static String supply(Supply supply) {
        String volts = supply.volts().isPresent() ? " " + figure(supply.volts().getAsDouble()) + " V" : "";
        String limit = supply.limitA().isPresent()
                ? ", current limit " + figure(supply.limitA().getAsDouble()) + " A"
                : "";
        String where = supply.where().isEmpty() ? "" : ", at " + supply.where();
        return switch (supply.kind()) {
            case NONE -> "none: power off, packs out";
            case BENCH ->
                "bench supply" + (volts.isEmpty() ? ", voltage cannot be told" : volts)
                        + (limit.isEmpty() ? ", current limit cannot be told" : limit) + where;
            case PACKS -> "packs" + volts + where;
        };
    }

    /** Two places below ten, one above. */
    private static String figure(double value) {
        return String.format(Locale.ROOT, Math.abs(value) < 10 ? "%.2f" : "%.1f", value);
    }
}
