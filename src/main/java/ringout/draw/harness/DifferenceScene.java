package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.draw.scene.Box;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Fitting;
import ringout.draw.scene.Mark;
import ringout.draw.scene.Pin;
import ringout.draw.scene.Plug;
import ringout.draw.scene.Row;
import ringout.draw.scene.SheetInfo;
import ringout.draw.scene.Splice;
import ringout.draw.scene.WiringScene;
import ringout.draw.scene.WiringSceneBuilder;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Terminators;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.PinRole;
import ringout.model.Unit;

/** Builds the scene of one difference sheet from both aircraft in one list. */
final class DifferenceScene {
    private final Circuit circuit;
    private final Wiring wiring;
    private final WireLook look;
    private final DifferencePlan plan;
    private final Ids ids = new Ids();
    private final Map<Integer, Set<Integer>> plugsOf = new TreeMap<>();
    private final List<Wire> wires = new ArrayList<>();
    private final Map<String, String> boxOf = new HashMap<>();
    private final Map<Integer, String> rowOf = new HashMap<>();
    private final Map<String, String> terminatorOf = new HashMap<>();

    DifferenceScene(Circuit circuit, Portion portion, DifferencePlan plan) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.look = new WireLook(circuit);
        this.plan = plan;
        Set<Integer> leads = new HashSet<>(portion.leads());
        for (Wire wire : wiring.wires()) {
            if (leads.contains(wire.leadIndex())) {
                wires.add(wire);
                plug(wire.fromPin());
                plug(wire.toPin());
            }
        }
    }

    private void plug(int pin) {
        plugsOf.computeIfAbsent(wiring.unitOf(pin), key -> new TreeSet<>()).add(wiring.plugIndex(pin));
    }

    /** Number of differences with a mark on the sheet that raise a finding. */
    int findings() {
        return (int) scene(SheetInfo.of("", "", "", ""), List.of()).findings().stream()
                .filter(line -> !line.code().isEmpty())
                .count();
    }

    WiringScene scene(SheetInfo info, List<String> notes) {
        WiringSceneBuilder scene = WiringScene.builder(info);
        plugsOf.forEach((unit, plugs) -> unit(scene, unit, plugs));
        wires.forEach(wire -> wire(scene, wire));
        plan.shown().forEach(shown -> mark(scene, shown));
        notes.forEach(scene::note);
        return scene.build();
    }

    private void unit(WiringSceneBuilder scene, int unit, Set<Integer> plugs) {
        String name = wiring.directory().name(unit);
        String id = ids.of("unit " + unit, name);
        boxOf.put(name, id);
        if (wiring.directory().isJoint(unit)) {
            scene.splice(new Splice(id, name));
            rowOf.put(wiring.firstPin(unit), id);
            return;
        }
        List<Plug> drawn = plugs.stream().map(plug -> plug(unit, plug)).toList();
        Unit row = wiring.directory().unit(unit);
        scene.box(new Box(id, name, row.what().or(row.type()), row.zone().or(""), drawn, plan.unit(name)));
    }

    private Plug plug(int unit, int plug) {
        String name = wiring.plugName(unit, plug);
        List<Row> rows = new ArrayList<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            String id = ids.of("pin " + pin, wiring.name(pin));
            rowOf.put(pin, id);
            rows.add(new Pin(id, wiring.pin(pin).number(), PinSignal.of(wiring, pin)));
        }
        terminator(unit, plug).ifPresent(rows::add);
        return new Plug(
                ids.of("plug " + unit + " " + plug, name),
                wiring.directory().type(unit).plugs().get(plug).name(),
                rows);
    }

    /** The terminator of the bus port this plug belongs to, at the first such plug of the unit on the sheet. */
    private Optional<Row> terminator(int unit, int plug) {
        String name = wiring.directory().name(unit);
        for (Part part : wiring.parts()) {
            boolean here = part.origin() instanceof Part.Terminator terminator
                    && terminator.unit() == unit
                    && carries(unit, plug, terminator.port().name());
            if (here && part.origin() instanceof Part.Terminator terminator && !terminatorOf.containsKey(name)) {
                boolean on = Terminators.state(circuit, terminator) == Terminators.Seen.ON;
                String id = ids.of("terminator " + name, wiring.plugName(unit, plug) + "-R");
                terminatorOf.put(name, id);
                Fitting.Symbol symbol = on ? Fitting.Symbol.TERMINATOR_ON : Fitting.Symbol.TERMINATOR_OFF;
                return Optional.of(new Fitting(id, symbol, on ? "120 ohm on" : "120 ohm off"));
            }
        }
        return Optional.empty();
    }

    private boolean carries(int unit, int plug, String port) {
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            if (wiring.is(pin, PinRole.CAN_H) && wiring.pin(pin).inside().is(port)) {
                return true;
            }
        }
        return false;
    }

    private void wire(WiringSceneBuilder scene, Wire wire) {
        scene.wire(new ringout.draw.scene.Wire(
                wireId(wire),
                wire.lead().id(),
                look.size(wire),
                look.colour(wire),
                look.kind(wire),
                look.net(wire),
                rowOf.getOrDefault(wire.fromPin(), "?"),
                rowOf.getOrDefault(wire.toPin(), "?"),
                plan.wire(wire),
                look.fuse(wire)));
    }

    private String wireId(Wire wire) {
        String lead = wire.lead().id();
        String name = (lead.isEmpty() ? "row" + (wire.leadIndex() + 1) : lead) + "."
                + wiring.pin(wire.fromPin()).number();
        return ids.of("wire " + wire.index(), name);
    }

    private void mark(WiringSceneBuilder scene, DifferencePlan.Shown shown) {
        Set<String> targets = new LinkedHashSet<>();
        wires.stream().filter(wire -> plan.about(shown, wire)).forEach(wire -> targets.add(wireId(wire)));
        for (String unit : shown.units()) {
            String box = boxOf.get(unit);
            String terminator = terminatorOf.get(unit);
            if (shown.terminator() && terminator != null) {
                targets.add(terminator);
            } else if (!shown.terminator() && box != null) {
                targets.add(box);
            }
        }
        if (!targets.isEmpty()) {
            scene.mark(new Mark(shown.number(), shown.kind(), false, List.copyOf(targets)));
            scene.finding(new FindingLine(shown.number(), shown.kind(), false, shown.code(), shown.words()));
        }
    }
}
