package ringout.trace.candidate;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import ringout.graph.Part;
import ringout.graph.Wiring;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.PowerSource;
import ringout.graph.signal.SerialLinks;
import ringout.model.PartKind;
import ringout.model.UnitKind;
import ringout.solve.meter.Change;

/** What may be wrong inside units and with what feeds them. */
final class UnitCandidates {
    /** The part of its voltage that a tired source lacks under its load. Judgement, no source. */
    private static final double SAG = 0.2;

    /** To find why a fuse or a switch opened, and put it right. Judgement, no source. */
    private static final double PART_MINUTES = 5;

    private final Bench bench;
    private final Wiring wiring;

    private UnitCandidates(Bench bench) {
        this.bench = bench;
        this.wiring = bench.wiring();
    }

    static void addTo(Bench bench) {
        UnitCandidates made = new UnitCandidates(bench);
        for (int unit = 0; unit < made.wiring.aircraft().units().size(); unit++) {
            if (bench.circuit().aboard(unit)) {
                made.unit(unit);
            }
        }
        PowerGraph power = PowerGraph.of(bench.circuit());
        power.sources().stream().filter(power::works).forEach(made::source);
        made.wiring.parts().stream().filter(part -> bench.live(part.edge())).forEach(made::part);
        SerialLinks.of(bench.circuit()).forEach(made::function);
    }

    private boolean draws(int unit) {
        return PowerGraph.of(bench.circuit()).consumersOf(unit).stream()
                .anyMatch(c -> c.draws() || !c.loads().isEmpty());
    }

    private void unit(int unit) {
        boolean pack = wiring.directory().type(unit).kind().is(UnitKind.PACK);
        if (!draws(unit) || pack) {
            return;
        }
        inside(unit, FaultKind.DEAD_UNIT, Defect.Inside.How.DEAD, " dead");
        inside(unit, FaultKind.RESTART_LOOP, Defect.Inside.How.RESTARTS, " restarts over and over");
        inside(unit, FaultKind.DEAD_TRANSCEIVER, Defect.Inside.How.MUTE, " front end dead");
    }

    private void inside(int unit, FaultKind kind, Defect.Inside.How how, String words) {
        String name = bench.unit(unit);
        boolean loop = how == Defect.Inside.How.RESTARTS;
        Repair repair = loop
                ? new Repair(
                        Repair.Sort.SETTING,
                        "firmware of " + name,
                        "load the listed firmware of " + name,
                        Repair.UNIT_MINUTES)
                : Repair.unit(name);
        bench.add(
                kind,
                name,
                new Defect.Inside(unit, how),
                name + words,
                List.of(),
                repair,
                loop ? Opening.NONE : bench.places().atUnit(unit),
                bench.places().ofUnit(unit),
                List.of());
    }

    private void source(PowerSource source) {
        String unit = bench.unit(source.unit());
        List<Change> off = source.part() < 0
                ? List.of()
                : List.of(new Change.Opened(wiring.parts().get(source.part()).edge()));
        Opening opening = bench.places().atUnit(source.unit());
        bench.add(
                FaultKind.RAIL_DOWN,
                source.name(),
                new Defect.SourceDown(source),
                source.name() + " gives nothing",
                List.of(),
                Repair.unit(unit),
                opening,
                bench.places().ofUnit(source.unit()),
                off);
        bench.add(
                FaultKind.RAIL_SAGS,
                source.name(),
                new Defect.SourceSags(source, SAG),
                source.name() + " sags under load",
                List.of(),
                Repair.unit(unit),
                opening,
                bench.places().ofUnit(source.unit()),
                List.of());
    }

    private void part(Part part) {
        String name = name(part);
        if (name.isEmpty()) {
            return;
        }
        List<String> rows = part.origin() instanceof Part.LeadFuse fuse
                ? List.of(wiring.wires().get(fuse.wire()).lead().id())
                : List.of();
        Opening opening = part.origin() instanceof Part.Inner inner
                ? bench.places().atUnit(inner.unit())
                : bench.places().atLead(List.of(wiring.wires().get(((Part.LeadFuse) part.origin()).wire())));
        bench.add(
                FaultKind.OPEN_PART,
                name,
                new Defect.OpenPart(part),
                name + " open",
                rows,
                new Repair(
                        Repair.Sort.PART, name, "find why " + name + " opened, then replace or close it", PART_MINUTES),
                opening,
                new TreeSet<>(),
                List.of(new Change.Opened(part.edge())));
    }

    /** Name of a part that may open: fuse, switch, link, sense resistor; else empty. */
    private String name(Part part) {
        if (part.origin() instanceof Part.LeadFuse fuse) {
            return "fuse in " + wiring.wires().get(fuse.wire()).lead().id();
        }
        if (!(part.origin() instanceof Part.Inner inner)) {
            return "";
        }
        PartKind kind = inner.part().kind().or(PartKind.RESISTOR);
        boolean opens = kind == PartKind.FUSE
                || kind == PartKind.SWITCH
                || kind == PartKind.LINK
                || kind == PartKind.SENSE_RESISTOR
                || PowerGraph.isDiode(part);
        return opens ? bench.unit(inner.unit()) + " " + inner.part().name() : "";
    }

    private void function(SerialLinks.Link link) {
        List<SerialLinks.Side> sides = new ArrayList<>(List.of(link.port(), link.device()));
        for (SerialLinks.Side side : sides.subList(0, 1)) {
            String name = SerialLinks.name(wiring, side);
            bench.add(
                    FaultKind.WRONG_FUNCTION,
                    name,
                    new Defect.WrongSetting(side.unit(), wiring.plug(side.pin()).name(), false),
                    name + " set to another function or rate",
                    List.of(),
                    new Repair(
                            Repair.Sort.SETTING,
                            "function of " + name,
                            "set the function and rate of " + name + " as listed",
                            Repair.SET_MINUTES),
                    Opening.NONE,
                    bench.places().ofUnit(side.unit()),
                    List.of());
        }
    }
}
