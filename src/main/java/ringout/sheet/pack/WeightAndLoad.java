package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import ringout.graph.Wire;
import ringout.model.Datum;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.model.Weight;
import ringout.sheet.Lasting;
import ringout.sheet.LoadRail;
import ringout.sheet.LoadSheet;
import ringout.sheet.LoadSheets;
import ringout.sheet.Output;
import ringout.sheet.PackLine;
import ringout.sheet.Taker;
import ringout.sheet.document.Block;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.KeyValues;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Row;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.Conductors;

/** The weight and electrical load sheet. */
final class WeightAndLoad {
    /** Density of copper, g per mm2 and m: 8.96 g/cm3 (CRC Handbook of Chemistry and Physics, from memory). */
    private static final double COPPER_G_PER_MM2_M = 8.96;

    private static final double METRE = 1000;

    private WeightAndLoad() {}

    static Document of(PackSource from) {
        LoadSheet sheet = LoadSheets.of(from.circuit());
        List<Block> loads = new ArrayList<>();
        loads.add(
                new Paragraph(
                        "Computed, not measured. Peak is every load at its peak at once, which no event need ask for;"
                                + " margin is what is left of the rating. A pack is rated at its discharge rate times its capacity."));
        loads.add(outputs(sheet));
        loads.add(takers(sheet));
        List<Block> packs = new ArrayList<>(List.of(packs(sheet), lasting(sheet)));
        List<String> open = new ArrayList<>(sheet.open());
        sheet.unfed().forEach(name -> open.add("no power reaches " + name));
        open.forEach(words -> packs.add(new Paragraph("Open: " + words)));
        return from.upright(
                "weight-and-load",
                "Weight and electrical load sheet",
                List.of(
                        new Section("Sources", loads),
                        new Section("Packs and endurance", packs),
                        new Section("Weight", weight(from))));
    }

    static Table outputs(LoadSheet sheet) {
        TableBuilder table = Table.named(
                "load-sources",
                Column.text("source"),
                Column.number("voltage", "V"),
                Column.number("average", "A"),
                Column.number("rated", "A"),
                Column.number("margin", "%"),
                Column.number("peak", "A"),
                Column.number("peak rated", "A"),
                Column.number("peak margin", "%"));
        for (LoadRail rail : sheet.rails()) {
            for (Output output : rail.outputs()) {
                boolean over = negative(output.averageMargin()) || negative(output.peakMargin());
                table.row(
                        over ? Row.Kind.GRAVE : Row.Kind.LINE,
                        output.name(),
                        figure(output.volts(), 2),
                        figure(output.averageA(), 2),
                        figure(output.continuousA(), 1),
                        figure(output.averageMargin(), 0),
                        figure(output.peakA(), 2),
                        figure(output.peakRatingA(), 1),
                        figure(output.peakMargin(), 0));
            }
        }
        return table.table();
    }

    private static boolean negative(OptionalDouble margin) {
        return margin.isPresent() && margin.getAsDouble() < 0;
    }

    static Table takers(LoadSheet sheet) {
        TableBuilder table = Table.named(
                        "loads",
                        Column.text("takes from it"),
                        Column.number("voltage", "V"),
                        Column.number("average", "A"),
                        Column.number("peak", "A"),
                        Column.text("note"))
                .titled("Loads")
                .by("rail");
        for (LoadRail rail : sheet.rails()) {
            table.group(rail.name() + (rail.fedBy().isEmpty() ? "" : ", fed by " + String.join(", ", rail.fedBy())));
            for (Taker taker : rail.takers()) {
                table.row(
                        taker.name(),
                        figure(taker.volts(), 2),
                        figure(taker.averageA(), 2),
                        figure(taker.peakA(), 2),
                        (taker.regulator() ? "regulator input" : "") + (taker.shared() ? " shared" : ""));
            }
            table.row(Row.Kind.SUM, "sum", "", figure(rail.averageA(), 2), figure(rail.peakA(), 2), "");
        }
        return table.table();
    }

    private static Table packs(LoadSheet sheet) {
        TableBuilder table = Table.named(
                "packs",
                Column.text("pack"),
                Column.number("current", "A"),
                Column.number("at rest", "V"),
                Column.number("at poles", "V"),
                Column.number("sag", "V"));
        for (PackLine pack : sheet.packs()) {
            table.row(
                    pack.name(),
                    figure(pack.amps(), 2),
                    figure(pack.openV(), 2),
                    figure(pack.volts(), 2),
                    figure(pack.sag(), 2));
        }
        return table.table();
    }

    private static Table lasting(LoadSheet sheet) {
        TableBuilder table = Table.named(
                        "endurance",
                        Column.text("packs"),
                        Column.number("usable", "Wh"),
                        Column.number("consumers", "W"),
                        Column.number("lasts", "min"),
                        Column.number("with losses", "min"))
                .titled("Endurance, all loads at their average all the time");
        for (Lasting lasting : sheet.lasting()) {
            lasting.endurance()
                    .ifPresentOrElse(
                            e -> table.row(
                                    lasting.name(),
                                    figure(e.usableWh(), 0),
                                    figure(e.consumersW(), 0),
                                    figure(e.minutes(), 1),
                                    figure(e.minutesWithLosses(), 1)),
                            () -> table.row(lasting.name(), "?", "?", "cannot tell", ""));
        }
        return table.table();
    }

    private static List<Block> weight(PackSource from) {
        List<KeyValues.Pair> pairs = new ArrayList<>();
        for (Weight weight : from.aircraft().airframe().weights()) {
            pairs.add(new KeyValues.Pair(weight.name(), Conductors.cell(weight.kg()) + " kg"));
        }
        double copper = 0;
        int unknown = 0;
        for (Wire wire : from.wiring().wires()) {
            copper += COPPER_G_PER_MM2_M
                    * wire.areaMm2().or(0.0)
                    * wire.lengthMm().or(0.0)
                    / METRE;
            unknown += wire.areaMm2().isKnown() && wire.lengthMm().isKnown() ? 0 : 1;
        }
        pairs.add(new KeyValues.Pair(
                "copper of the harness",
                figure(copper, 0) + " g, without insulation, sleeve, plugs and stranding"
                        + (unknown == 0 ? "" : "; " + unknown + " conductors without size or length not in it")));
        List<Block> blocks = new ArrayList<>();
        blocks.add(new KeyValues(pairs));
        blocks.add(
                from.aircraft().types().stream().anyMatch(type -> type.massG().isKnown())
                        ? units(from)
                        : new Paragraph(
                                "No unit type gives its mass: the weight of the units cannot be told from the list."));
        return blocks;
    }

    private static Table units(PackSource from) {
        Map<String, List<Unit>> byType = new TreeMap<>();
        from.aircraft()
                .units()
                .forEach(unit -> byType.computeIfAbsent(unit.type(), key -> new ArrayList<>())
                        .add(unit));
        TableBuilder table = Table.named(
                        "unit-weights",
                        Column.text("unit type"),
                        Column.number("count", ""),
                        Column.number("one", "g"),
                        Column.number("all", "g"))
                .titled("Units");
        double sum = 0;
        int open = 0;
        for (Map.Entry<String, List<Unit>> entry : byType.entrySet()) {
            int count = entry.getValue().size();
            Datum<Double> mass =
                    from.type(entry.getValue().get(0)).map(UnitType::massG).orElse(Datum.notAsked());
            sum += mass.or(0.0) * count;
            open += mass.isKnown() ? 0 : count;
            table.row(
                    entry.getKey(),
                    Integer.toString(count),
                    mass.isKnown() ? figure(mass.or(0.0), 0) : "?",
                    mass.isKnown() ? figure(mass.or(0.0) * count, 0) : "?");
        }
        table.row(
                Row.Kind.SUM,
                "sum" + (open == 0 ? "" : ", without " + open + " units whose weight is not given"),
                Integer.toString(from.aircraft().units().size()),
                "",
                figure(sum, 0));
        return table.table();
    }

    private static String figure(OptionalDouble value, int decimals) {
        return value.isPresent() ? figure(value.getAsDouble(), decimals) : "?";
    }

    private static String figure(double value, int decimals) {
        // Adding zero takes the sign off a zero that was rounded from below.
        String written = String.format(Locale.ROOT, "%." + decimals + "f", value + 0.0);
        return written.matches("-0(\\.0*)?") ? written.substring(1) : written;
    }
}
