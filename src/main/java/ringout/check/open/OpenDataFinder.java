package ringout.check.open;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.graph.Circuit;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.Event;
import ringout.model.EventLoad;
import ringout.model.InnerPart;
import ringout.model.Joint;
import ringout.model.Lead;
import ringout.model.LoadSpec;
import ringout.model.PartKind;
import ringout.model.PartRating;
import ringout.model.Plug;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.text.Ranges;

/** Finds the missing data that currents rest on. */
final class OpenDataFinder {
    static final String PROJECT = "project";
    private static final String MAKER = "look it up in the maker's data";
    private static final String LABEL = "read the label of the pack";

    private final List<Circuit> circuits;
    private final Aircraft aircraft;
    private final List<OpenDatum> found = new ArrayList<>();

    OpenDataFinder(List<Circuit> circuits) {
        this.circuits = circuits;
        this.aircraft = circuits.get(0).wiring().aircraft();
    }

    static String lead(int index) {
        return "lead " + index;
    }

    static String joint(int index) {
        return "joint " + index;
    }

    static String plug(int type, int index) {
        return "type " + type + " plug " + index;
    }

    static String part(int type, int index) {
        return "type " + type + " part " + index;
    }

    static String event(int event, int index) {
        return "event " + event + " load " + index;
    }

    List<OpenDatum> find() {
        leads();
        joints();
        Map<String, List<String>> units = new HashMap<>();
        for (Unit unit : aircraft.units()) {
            units.computeIfAbsent(unit.type().toLowerCase(Locale.ROOT), key -> new ArrayList<>())
                    .add(unit.ref());
        }
        for (int i = 0; i < aircraft.types().size(); i++) {
            UnitType type = aircraft.types().get(i);
            List<String> of = units.getOrDefault(type.name().toLowerCase(Locale.ROOT), List.of());
            if (!of.isEmpty()) {
                type(type, i, of);
            }
        }
        for (int i = 0; i < aircraft.events().size(); i++) {
            event(aircraft.events().get(i), i);
        }
        if (aircraft.project().ruleSet() instanceof Datum.Unknown) {
            add(
                    PROJECT,
                    "ruleSet",
                    "wire rule set",
                    "ask who signs the harness",
                    1,
                    List.of("the project"),
                    UsualRange.RULES);
        }
        return found.isEmpty() ? found : Carrying.current(circuits).only(found);
    }

    private void add(
            String record, String field, String datum, String how, int minutes, List<String> of, List<Datum<?>> ends) {
        if (!ends.isEmpty()) {
            found.add(new OpenDatum(record, field, datum, how, minutes, of, ends));
        }
    }

    private void leads() {
        for (int i = 0; i < aircraft.leads().size(); i++) {
            Lead lead = aircraft.leads().get(i);
            List<String> of = List.of(lead.id());
            if (lead.lengthMm().isMissing()) {
                add(lead(i), "lengthMm", "length", "lay a tape along the lead", 2, of, UsualRange.LENGTH_MM);
            }
            if (lead.awg().isMissing() && lead.areaMm2().isMissing()) {
                String how = "read the print on the wire, or measure the bare conductor";
                add(lead(i), "awg", "wire size", how, 2, of, UsualRange.SIZE);
            }
            if (lead.insulationC() instanceof Datum.Unknown) {
                String how = "read the print on the wire";
                add(lead(i), "insulationC", "insulation temperature", how, 2, of, UsualRange.INSULATION_C);
            }
            if (lead.movingAir() instanceof Datum.Unknown) {
                String how = "look at the lead where it runs";
                add(lead(i), "movingAir", "whether it lies in moving air, of the lead", how, 2, of, UsualRange.EITHER);
            }
        }
    }

    private void joints() {
        for (int i = 0; i < aircraft.joints().size(); i++) {
            Joint joint = aircraft.joints().get(i);
            if (joint.milliohm().isMissing()) {
                String how = "measure it with four wires";
                add(joint(i), "milliohm", "contact resistance", how, 5, List.of(joint.id()), UsualRange.JOINT_MILLIOHM);
            }
        }
    }

    private void type(UnitType type, int index, List<String> units) {
        for (int i = 0; i < type.plugs().size(); i++) {
            Plug plug = type.plugs().get(i);
            if (plug.contactMilliohm().isMissing()) {
                add(
                        plug(index, i),
                        "contactMilliohm",
                        "contact resistance",
                        "take the maker's figure for the plug, or measure the mated contact with four wires",
                        5,
                        units.stream().map(unit -> unit + "-" + plug.name()).toList(),
                        UsualRange.contactMilliohm(plug));
            }
        }
        for (int i = 0; i < type.parts().size(); i++) {
            part(type, part(index, i), type.parts().get(i), units);
        }
    }

    private void part(UnitType type, String place, InnerPart part, List<String> units) {
        PartRating rating = part.rating();
        boolean converts = part.kind().is(PartKind.REGULATOR) || part.kind().is(PartKind.ISOLATED_CONVERTER);
        boolean regulates = converts || part.kind().is(PartKind.LINEAR_REGULATOR);
        if (converts && rating.efficiency().isMissing()) {
            add(place, "efficiency", "efficiency", MAKER, 5, units, UsualRange.EFFICIENCY);
        }
        if (regulates && rating.quiescentA() instanceof Datum.Unknown) {
            add(place, "quiescentA", "current at no load", MAKER, 5, units, UsualRange.QUIESCENT_A);
        }
        if (regulates && rating.dropoutV() instanceof Datum.Unknown) {
            add(place, "dropoutV", "dropout", MAKER, 5, units, UsualRange.DROPOUT_V);
        }
        if (regulates && rating.outputV() instanceof Datum.Unknown) {
            String how = "measure the output";
            add(place, "outputV", "output voltage", how, 2, units, UsualRange.outputV(type, part));
        }
        if (UsualRange.isLink(part)
                && rating.milliohm() instanceof Datum.Unknown
                && !rating.ohm().isKnown()) {
            String datum = "resistance of " + part.name();
            add(place, "milliohm", datum, MAKER, 5, units, UsualRange.LINK_MILLIOHM);
        }
        if (part.kind().is(PartKind.SOURCE)) {
            cells(place, rating, units);
        }
    }

    private void cells(String place, PartRating rating, List<String> units) {
        if (rating.cellMilliohm().isMissing()) {
            String how = "measure it with the charger";
            add(place, "cellMilliohm", "resistance of a cell", how, 5, units, UsualRange.cellMilliohm(rating));
        }
        if (rating.parallel() instanceof Datum.Unknown) {
            add(place, "parallel", "cells in parallel", LABEL, 1, units, UsualRange.PARALLEL);
        }
        if (rating.nominalV().isMissing()) {
            add(place, "nominalV", "nominal voltage of a cell", LABEL, 1, units, UsualRange.CELL_V);
        }
    }

    private void event(Event event, int index) {
        for (int i = 0; i < event.loads().size(); i++) {
            EventLoad load = event.loads().get(i);
            Set<String> units = new TreeSet<>(Ranges.items(List.of(load.unit())));
            List<String> of = List.of(load.unit() + " during " + event.name());
            String how = "log the current during " + event.name();
            boolean other = load.amps().isKnown() || load.watts().isKnown();
            if (load.amps() instanceof Datum.Unknown && !other) {
                add(event(index, i), "amps", "current", how, 10, of, UsualRange.NOTHING);
            }
            if (load.watts() instanceof Datum.Unknown && !other) {
                add(event(index, i), "watts", "power", how, 10, of, UsualRange.NOTHING);
            }
            if (load.rail() instanceof Datum.Unknown) {
                how = "ask which supply of the unit is meant";
                add(event(index, i), "rail", "rail", how, 2, of, UsualRange.rails(rails(units)));
            }
        }
    }

    private List<String> rails(Set<String> units) {
        Set<String> types = new HashSet<>();
        aircraft.units().stream()
                .filter(unit -> units.stream().anyMatch(unit.ref()::equalsIgnoreCase))
                .forEach(unit -> types.add(unit.type().toLowerCase(Locale.ROOT)));
        return aircraft.types().stream()
                .filter(type -> types.contains(type.name().toLowerCase(Locale.ROOT)))
                .flatMap(type -> type.loads().stream())
                .map(LoadSpec::rail)
                .flatMap(rail -> rail.known().stream())
                .toList();
    }
}
