package ringout.sheet.pack;

import java.util.ArrayList;
import java.util.List;
import ringout.model.AsBuilt;
import ringout.model.OutputSetting;
import ringout.model.PortSetting;
import ringout.model.Unit;
import ringout.model.UnitKind;
import ringout.sheet.document.Block;
import ringout.sheet.document.Column;
import ringout.sheet.document.Document;
import ringout.sheet.document.KeyValues;
import ringout.sheet.document.Paragraph;
import ringout.sheet.document.Section;
import ringout.sheet.document.Table;
import ringout.sheet.document.TableBuilder;
import ringout.sheet.harness.Conductors;

/** The configuration record: what each unit is and how it is set, with room for what was read on this aircraft. */
final class Configuration {
    private static final double READ_MM = 26;

    private Configuration() {}

    static Document of(PackSource from) {
        List<Block> first = new ArrayList<>();
        first.add(new Paragraph(
                "As listed is printed; read it over the service link and write it down where it differs or is"
                        + " empty. Serial numbers from the sticker before it is hidden."));
        first.add(parameters(from.aircraft().record()));
        first.add(units(from));
        return from.flat(
                "configuration",
                "Configuration record",
                List.of(
                        new Section("Units", first),
                        new Section("Ports", List.of(ports(from))),
                        new Section("Outputs", List.of(outputs(from))),
                        new Section("Settings of speed controllers, scales and orientation", List.of(settings(from))),
                        new Section("", List.of(from.signOff()))));
    }

    private static KeyValues parameters(AsBuilt record) {
        return new KeyValues(List.of(
                new KeyValues.Pair(
                        "parameter file",
                        "checksum on record " + record.parameterChecksum().or("not given") + ", as read "
                                + record.parameterChecksumRead().or("not read")),
                new KeyValues.Pair(
                        "parameters that differ",
                        record.parametersDiffer().isEmpty()
                                ? "none listed"
                                : String.join(" ", record.parametersDiffer())),
                new KeyValues.Pair(
                        "links of this tail",
                        "network id " + record.networkId().or("not given") + ", system id "
                                + record.systemId().or("not given") + ", binding "
                                + record.binding().or("not given"))));
    }

    static Table units(PackSource from) {
        TableBuilder table = Table.named(
                "configuration-units",
                Column.text("unit"),
                Column.text("type"),
                Column.text("what it is here"),
                Column.text("zone"),
                Column.text("firmware"),
                Column.writeIn("firmware as read", "", READ_MM),
                Column.text("serial"),
                Column.writeIn("serial as read", "", READ_MM));
        for (Unit unit : from.aircraft().units()) {
            table.row(
                    unit.ref(),
                    unit.type(),
                    unit.what().or(""),
                    unit.zone().or(""),
                    Conductors.cell(unit.firmware()),
                    unit.asRead().firmware().or(""),
                    Conductors.cell(unit.serial()),
                    unit.asRead().serial().or(""));
        }
        return table.table();
    }

    static Table ports(PackSource from) {
        TableBuilder table = Table.named(
                "configuration-ports",
                Column.text("unit"),
                Column.text("port"),
                Column.text("bus"),
                Column.text("address"),
                Column.number("rate", "kbit/s"),
                Column.text("terminator"),
                Column.text("protocol"),
                Column.number("baud", ""),
                Column.text("instance"),
                Column.writeIn("as read", "", READ_MM),
                Column.writeIn("initials", "", READ_MM / 2));
        for (Unit unit : from.aircraft().units()) {
            for (PortSetting port : unit.ports()) {
                table.row(
                        unit.ref(),
                        port.port(),
                        Conductors.cell(port.bus()),
                        Conductors.cell(port.address())
                                + port.i2cAddress().known().orElse(""),
                        Conductors.cell(port.rateKbit()),
                        Conductors.cell(port.terminator()),
                        Conductors.cell(port.protocol()) + (port.inverted().is(true) ? " inverted" : ""),
                        Conductors.cell(port.baud()),
                        Conductors.cell(port.deviceInstance()),
                        unit.ports().size() == 1 ? Conductors.cell(unit.asRead().address()) : "",
                        "");
            }
        }
        return table.table();
    }

    static Table outputs(PackSource from) {
        TableBuilder table = Table.named(
                "configuration-outputs",
                Column.text("unit"),
                Column.text("output"),
                Column.text("function"),
                Column.text("protocol"),
                Column.number("rate", "Hz"),
                Column.text("reversed"),
                Column.writeIn("as read", "", READ_MM));
        for (Unit unit : from.aircraft().units()) {
            for (OutputSetting output : unit.outputs()) {
                table.row(
                        unit.ref(),
                        output.output(),
                        Conductors.cell(output.function()),
                        Conductors.cell(output.protocol()),
                        Conductors.cell(output.rateHz()),
                        Conductors.cell(output.reversed()),
                        "");
            }
        }
        return table.table();
    }

    static Table settings(PackSource from) {
        TableBuilder table = Table.named(
                "configuration-settings",
                Column.text("unit"),
                Column.text("setting"),
                Column.text("as listed"),
                Column.writeIn("as read", "", READ_MM));
        for (Unit unit : from.aircraft().units()) {
            boolean drives = from.wiring().directory().find(unit.ref()).stream()
                    .anyMatch(number ->
                            from.wiring().directory().type(number).kind().is(UnitKind.SPEED_CONTROLLER));
            row(table, unit, "index", Conductors.cell(unit.index()), drives);
            row(table, unit, "direction reversed", Conductors.cell(unit.reversed()), drives);
            row(table, unit, "throttle range", Conductors.cell(unit.throttleRange()), drives);
            row(table, unit, "orientation", Conductors.cell(unit.orientationSetting()), false);
            row(table, unit, "voltage scale", Conductors.cell(unit.voltScaleSet()), false);
            row(table, unit, "current scale", Conductors.cell(unit.ampScaleSet()), false);
            row(table, unit, "offset forward, mm", Conductors.cell(unit.leverXMm()), false);
            row(table, unit, "offset right, mm", Conductors.cell(unit.leverYMm()), false);
            row(table, unit, "offset up, mm", Conductors.cell(unit.leverZMm()), false);
        }
        return table.table();
    }

    private static void row(TableBuilder table, Unit unit, String setting, String listed, boolean always) {
        if (always || !listed.isEmpty()) {
            table.row(unit.ref(), setting, listed, "");
        }
    }
}
