package ringout.sheet.build;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import ringout.plan.power.Expected;
import ringout.plan.power.PlugOrder;
import ringout.plan.power.PowerStage;
import ringout.plan.power.PowerUp;
import ringout.plan.power.Supply;
import ringout.sheet.Cautions;
import ringout.sheet.document.Block;
import ringout.sheet.document.Caution;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.KeyValues;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Row;
import ringout.sheet.document.Section;
import ringout.sheet.document.SignOff;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;

/** The sheet of the first power-up: a section a stage, with what must be read and when to switch off. */
public final class PowerUpDocument {
    private static final double READING_MM = 20;
    private static final double INITIALS_MM = 14;

    private final PowerUp powerUp;

    private PowerUpDocument(PowerUp powerUp) {
        this.powerUp = powerUp;
    }

    /**
     * {@return the sheet}
     *
     * @param powerUp what it tells
     * @param mark on every page
     * @param signOff where it is signed
     */
    public static Document of(PowerUp powerUp, RevisionMark mark, SignOff signOff) {
        PowerUpDocument sheet = new PowerUpDocument(powerUp);
        List<Section> sections = new ArrayList<>();
        List<Block> first = new ArrayList<>(List.of(new Caution(BuildCautions.POWER)));
        first.add(
                new Paragraph(
                        "Ring-out, short and as-fitted sheets are signed first. A stage is left only when all its readings are in their"
                                + " bands: a reading outside is a fault to find, not a figure to note. Every volt and ampere is computed for the"
                                + " circuit of its stage from the list, with a bench supply in place of the packs where one is named, units at"
                                + " rest, conductors at 20 degC. Not in them: inrush, current limits of regulators, what signal contacts draw."));
        powerUp.open().forEach(words -> first.add(new Paragraph(words)));
        sections.add(new Section("Before any power", first));
        powerUp.stages().forEach(stage -> sections.add(sheet.section(stage)));
        if (powerUp.stages().isEmpty() && !powerUp.plugs().making().isEmpty()) {
            sections.add(new Section("Pack plugs", sheet.plugs()));
        }
        sections.add(new Section("", List.of(signOff)));
        return new Document(
                "power-up", "First power-up", mark, 1, 1, Document.Form.PORTRAIT, Cautions.FOOT_POWER, sections);
    }

    private Section section(PowerStage stage) {
        List<Block> blocks = new ArrayList<>();
        BuildCautions.before(stage.kind()).ifPresent(lines -> blocks.add(new Caution(lines)));
        blocks.add(new KeyValues(facts(stage)));
        if (stage.kind() == PowerStage.Kind.PACKS) {
            blocks.addAll(plugs());
        }
        blocks.add(readings(stage));
        blocks.add(new Caution(List.of(ending(stage.kind()) + ": " + String.join("; ", stage.stop()))));
        stage.notes().forEach(note -> blocks.add(new Paragraph("Note: " + note + ".")));
        return new Section(stage.id() + ": " + stage.what(), blocks);
    }

    /** What is done when something is not right. */
    private static String ending(PowerStage.Kind kind) {
        return switch (kind) {
            case OHMS -> "no power at all if";
            case HOVER -> "land at once";
            default -> "switch off at once";
        };
    }

    private static List<KeyValues.Pair> facts(PowerStage stage) {
        List<KeyValues.Pair> facts = new ArrayList<>();
        add(facts, "step of the procedure", stage.step());
        add(facts, "before", String.join("; ", stage.before()));
        add(facts, "plug in, power off", String.join(", ", stage.plugged()));
        add(facts, "leave open", String.join(", ", stage.pulled()));
        add(facts, "gets power now", String.join(", ", stage.units()));
        add(facts, "supply", supply(stage.supply()));
        add(facts, "at", stage.supply().where());
        if (facts.isEmpty()) {
            add(facts, "supply", "as in the stage before");
        }
        return facts;
    }

    private static void add(List<KeyValues.Pair> facts, String key, String value) {
        if (!value.isEmpty()) {
            facts.add(new KeyValues.Pair(key, value));
        }
    }

    /** The supply in words: {@code 48.0 V, limit 1.0 A, capacitors down, switched on at that voltage}. */
    static String supply(Supply supply) {
        return switch (supply.kind()) {
            case NONE -> "none";
            case PACKS ->
                supply.volts().isPresent()
                        ? "packs, " + Words.reading(supply.volts().getAsDouble()) + " V when full"
                        : "packs";
            case BENCH ->
                String.format(
                                Locale.ROOT,
                                "bench supply %.1f V, ",
                                supply.volts().orElse(0))
                        + (supply.limitA().isPresent()
                                ? String.format(
                                        Locale.ROOT,
                                        "limit %.1f A",
                                        supply.limitA().getAsDouble())
                                : "limit: cannot tell, see the current below")
                        + "; capacitors down, then switched on at that voltage: a slow ramp starves what draws constant power";
        };
    }

    private List<Block> plugs() {
        PlugOrder order = powerUp.plugs();
        TableBuilder table = Table.named(
                "plug-order",
                Column.number("#", ""),
                Column.text("pack plugs, made in this order, broken from the last line up"),
                Column.tick("made"),
                Column.tick("broken"));
        int line = 1;
        for (PlugOrder.Act act : order.making()) {
            boolean last = act instanceof PlugOrder.Make make && make.suppressed();
            table.row(last ? Row.Kind.GRAVE : Row.Kind.LINE, String.valueOf(line++), act.words(), "", "");
        }
        List<Block> blocks = new ArrayList<>(List.of(table.table()));
        blocks.add(new Paragraph("Broken: " + String.join(", ", order.broken())
                + "; then wait until rails are below 5 V, a light that is out proves nothing."));
        order.cannotTell().forEach(words -> blocks.add(new Paragraph("Cannot tell " + words + ".")));
        order.disagrees().forEach(words -> blocks.add(new Paragraph("Mind: " + words + ".")));
        return blocks;
    }

    private static Table readings(PowerStage stage) {
        TableBuilder table = Table.named(
                "power-" + stage.id().toLowerCase(Locale.ROOT),
                Column.text("where"),
                Column.number("expect", ""),
                Column.number("from", ""),
                Column.number("to", ""),
                Column.text("unit"),
                Column.text("band"),
                Column.writeIn("reading", "", READING_MM),
                Column.writeIn("initials", "", INITIALS_MM));
        for (Expected expected : stage.readings()) {
            if (expected instanceof Expected.Reading read) {
                table.row(
                        read.at(),
                        Words.reading(read.value()),
                        Words.reading(read.low()),
                        Words.reading(read.high()),
                        read.unit(),
                        read.band(),
                        "",
                        "");
            } else if (expected instanceof Expected.Look look) {
                table.row(look.at() + ": " + look.words(), "", "", "", "", "", "", "");
            } else if (expected instanceof Expected.CannotTell open) {
                table.row(
                        Row.Kind.GRAVE, open.at() + ": cannot tell, needs " + open.needs(), "", "", "", "", "", "", "");
            }
        }
        return table.table();
    }
}
