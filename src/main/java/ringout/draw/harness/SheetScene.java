package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import ringout.draw.scene.Box;
import ringout.draw.scene.Earlier;
import ringout.draw.scene.Fitting;
import ringout.draw.scene.Pin;
import ringout.draw.scene.Plug;
import ringout.draw.scene.Presence;
import ringout.draw.scene.Row;
import ringout.draw.scene.SheetInfo;
import ringout.draw.scene.Splice;
import ringout.draw.scene.WiringScene;
import ringout.draw.scene.WiringSceneBuilder;
import ringout.finding.Headline;
import ringout.graph.Circuit;
import ringout.graph.Part;
import ringout.graph.Terminators;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.PinRole;
import ringout.model.Unit;

/** Builds the scene of one sheet: the units its leads touch with those plugs, the conductors, and the marks. */
final class SheetScene {
    private final Circuit circuit;
    private final Wiring wiring;
    private final WireLook look;
    private final Portion portion;
    private final Focus focus;
    private final Ids ids = new Ids();
    private final Map<Integer, Set<Integer>> plugsOf = new TreeMap<>();
    private final List<Wire> wires = new ArrayList<>();
    private final Map<String, List<String>> wiresOfLead = new HashMap<>();
    private final Map<String, String> wireByPins = new HashMap<>();
    private final Map<String, String> boxOf = new LinkedHashMap<>();
    private final Map<String, String> rowOf = new HashMap<>();
    private final Map<String, String> terminatorOf = new HashMap<>();
    private final MarkPlan marks;

    SheetScene(Circuit circuit, Portion portion, List<Headline> headlines) {
        this(circuit, portion, headlines, Focus.NONE);
    }

    /** A scene of one finding, with the steps of its path numbered at the pins. */
    SheetScene(Circuit circuit, Portion portion, List<Headline> headlines, Focus focus) {
        this.focus = focus;
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.look = new WireLook(circuit);
        this.portion = portion;
        Set<Integer> leads = new HashSet<>(portion.leads());
        for (Wire wire : wiring.wires()) {
            if (leads.contains(wire.leadIndex())) {
                wires.add(wire);
                plug(wire.fromPin());
                plug(wire.toPin());
            }
        }
        this.marks = new MarkPlan(circuit, headlines, focus);
        marks.plugsWanted(plugsOf);
    }

    private void plug(int pin) {
        plugsOf.computeIfAbsent(wiring.unitOf(pin), key -> new TreeSet<>()).add(wiring.plugIndex(pin));
    }

    /** The scene with its title block. */
    WiringScene scene(SheetInfo info) {
        return scene(info, Earlier.NONE);
    }

    /** The scene with its title block, its things held where they stood. */
    WiringScene scene(SheetInfo info, Earlier earlier) {
        WiringSceneBuilder scene = WiringScene.builder(info);
        plugsOf.forEach((unit, plugs) -> unit(scene, unit, plugs));
        wires.forEach(wire -> wire(scene, wire));
        marks.draw(scene, new Seen());
        focus.remarks().forEach(scene::remark);
        List<String> names = wires.stream().map(wire -> nameOf(wiring, wire)).toList();
        earlier.spots(names, Set.copyOf(boxOf.values())).forEach(scene::hold);
        return scene.build();
    }

    /** Findings that show on this sheet, counted for the title block. */
    int openFindings() {
        unitsAndWires();
        return marks.shown(new Seen());
    }

    private void unitsAndWires() {
        scene(SheetInfo.of(portion.title(), "", "", ""));
    }

    private void unit(WiringSceneBuilder scene, int unit, Set<Integer> plugs) {
        String name = wiring.directory().name(unit);
        if (wiring.directory().isJoint(unit)) {
            String id = ids.of("unit " + unit, name);
            scene.splice(new Splice(id, name));
            rowOf.put(name, id);
            boxOf.put(name, id);
            return;
        }
        String id = ids.of("unit " + unit, name);
        boxOf.put(name, id);
        List<Plug> drawn = new ArrayList<>();
        for (int plug : plugs) {
            drawn.add(plug(unit, plug));
        }
        Unit row = wiring.directory().unit(unit);
        scene.box(new Box(id, name, row.what().or(row.type()), row.zone().or(""), drawn));
    }

    private Plug plug(int unit, int plug) {
        String name = wiring.plugName(unit, plug);
        List<Row> rows = new ArrayList<>();
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            String id = ids.of("pin " + pin, wiring.name(pin));
            rowOf.put(wiring.name(pin), id);
            rows.add(new Pin(id, wiring.pin(pin).number(), focus.signal(wiring.name(pin), PinSignal.of(wiring, pin))));
        }
        fitting(unit, plug).ifPresent(rows::add);
        String id = ids.of("plug " + unit + " " + plug, name);
        boxOf.put(name, id);
        return new Plug(id, wiring.directory().type(unit).plugs().get(plug).name(), rows);
    }

    /** The terminator of the bus port this plug belongs to, at the first such plug of the unit on the sheet. */
    private Optional<Row> fitting(int unit, int plug) {
        for (Part part : wiring.parts()) {
            if (part.origin() instanceof Part.Terminator terminator
                    && terminator.unit() == unit
                    && carries(unit, plug, terminator.port().name())) {
                String name = wiring.directory().name(unit);
                String key = name + ":" + terminator.port().name();
                if (terminatorOf.containsKey(key)) {
                    return Optional.empty();
                }
                boolean on = Terminators.state(circuit, terminator) == Terminators.Seen.ON;
                String id = ids.of("terminator " + key, wiring.plugName(unit, plug) + "-R");
                terminatorOf.put(key, id);
                terminatorOf.putIfAbsent(name, id);
                return Optional.of(new Fitting(
                        id,
                        on ? Fitting.Symbol.TERMINATOR_ON : Fitting.Symbol.TERMINATOR_OFF,
                        on ? "120 ohm on" : "120 ohm off",
                        marks.terminator(name)));
            }
        }
        return ghost(unit, plug);
    }

    /** A terminator that ought to be at a unit which has none. */
    private Optional<Row> ghost(int unit, int plug) {
        String name = wiring.directory().name(unit);
        boolean bus = carries(unit, plug, "");
        if (!bus || marks.terminator(name) != Presence.MISSING || terminatorOf.containsKey(name)) {
            return Optional.empty();
        }
        String id = ids.of("terminator " + name, wiring.plugName(unit, plug) + "-R");
        terminatorOf.put(name, id);
        return Optional.of(new Fitting(id, Fitting.Symbol.TERMINATOR_OFF, "120 ohm missing", Presence.MISSING));
    }

    private boolean carries(int unit, int plug, String port) {
        for (int pin = wiring.firstPin(unit, plug); pin < wiring.endPin(unit, plug); pin++) {
            if (wiring.is(pin, PinRole.CAN_H)
                    && (port.isEmpty() || wiring.pin(pin).inside().is(port))) {
                return true;
            }
        }
        return false;
    }

    /** The name of a conductor on a sheet: its lead and its pin. */
    static String nameOf(Wiring wiring, Wire wire) {
        String lead = wire.lead().id();
        return (lead.isEmpty() ? "row" + (wire.leadIndex() + 1) : lead) + "."
                + wiring.pin(wire.fromPin()).number();
    }

    private void wire(WiringSceneBuilder scene, Wire wire) {
        String lead = wire.lead().id();
        String id = ids.of("wire " + wire.index(), nameOf(wiring, wire));
        wiresOfLead.computeIfAbsent(lead, key -> new ArrayList<>()).add(id);
        wireByPins.put(lead + " " + wiring.name(wire.fromPin()), id);
        wireByPins.put(lead + " " + wiring.name(wire.toPin()), id);
        scene.wire(new ringout.draw.scene.Wire(
                id,
                lead,
                look.size(wire),
                look.colour(wire),
                look.kind(wire),
                look.net(wire),
                end(wire.fromPin()),
                end(wire.toPin()),
                marks.wire(lead),
                look.fuse(wire)));
    }

    private String end(int pin) {
        return rowOf.getOrDefault(wiring.name(pin), "?");
    }

    /** What of the aircraft is on the sheet, by the names findings use. */
    final class Seen {
        /** Identifiers of the conductors of a lead that a path passes, or of all of them. */
        List<String> wires(String lead, Set<String> pins) {
            List<String> all = wiresOfLead.getOrDefault(lead, List.of());
            Set<String> passed = new TreeSet<>();
            for (String pin : pins) {
                String id = wireByPins.get(lead + " " + pin);
                if (id != null) {
                    passed.add(id);
                }
            }
            return passed.isEmpty() ? all : List.copyOf(passed);
        }

        /** Identifier of a unit, plug or joint on the sheet. */
        Optional<String> box(String name) {
            return Optional.ofNullable(boxOf.get(name));
        }

        /** Identifier of a pin or joint on the sheet. */
        Optional<String> row(String name) {
            return Optional.ofNullable(rowOf.get(name));
        }

        /** Identifier of the terminator of a unit on the sheet. */
        Optional<String> terminator(String unit) {
            return Optional.ofNullable(terminatorOf.get(unit));
        }

        /** A free identifier. */
        String free(String name) {
            return ids.of("extra " + name, name);
        }
    }
}
