package ringout.graph.power;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Gap;
import ringout.graph.Part;
import ringout.graph.TypeLayout;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.InnerPart;
import ringout.model.PartKind;
import ringout.model.PartRating;
import ringout.model.PinRole;
import ringout.model.Rail;
import ringout.model.Unit;

/** Finds the sources and consumers of an aircraft, the same in every state, in time linear in its units and pins. */
final class SupplyFinder {
    private static final double ONE_STRING = 1;

    private final Wiring wiring;
    private final Map<TypeLayout, TypeSupplies> byType = new HashMap<>();
    final List<PowerSource> sources = new ArrayList<>();
    final List<Consumer> consumers = new ArrayList<>();
    final List<PlacedLoad> loads = new ArrayList<>();

    SupplyFinder(Wiring wiring) {
        this.wiring = wiring;
        int units = wiring.aircraft().units().size();
        TypeSupplies[] supplies = new TypeSupplies[units];
        for (int u = 0; u < units; u++) {
            supplies[u] = supplies(u);
            unit(u, supplies[u]);
        }
        for (Part part : wiring.parts()) {
            if (part.origin() instanceof Part.Inner inner) {
                part(part, inner, supplies[inner.unit()]);
            }
        }
    }

    private TypeSupplies supplies(int u) {
        TypeLayout layout = wiring.directory().layout(u);
        Unit unit = wiring.directory().unit(u);
        if (!unit.loads().isEmpty()) {
            return new TypeSupplies(layout, Load.of(unit, layout.type()));
        }
        return byType.computeIfAbsent(layout, key -> new TypeSupplies(key, Load.of(unit, key.type())));
    }

    private int vertex(int unit, int spot) {
        int pins = wiring.directory().layout(unit).pinCount();
        return spot < pins ? wiring.firstPin(unit) + spot : wiring.firstPoint(unit) + spot - pins;
    }

    private int vertexOrNone(int unit, int spot) {
        return spot < 0 ? -1 : vertex(unit, spot);
    }

    private void unit(int unit, TypeSupplies supplies) {
        for (SupplySpot spot : supplies.spots()) {
            place(unit, spot);
            if (spot.consumes()) {
                consumers.add(new Consumer(
                        consumers.size(),
                        unit,
                        spot.name,
                        spot.rail,
                        vertex(unit, spot.spot),
                        vertexOrNone(unit, spot.zeroSpot),
                        spot.frameReturn,
                        spot.inputs.stream().map(pin -> vertex(unit, pin)).toList(),
                        spot.takes && !spot.feeds && !supplies.passesOnly(),
                        List.copyOf(spot.loads)));
            }
            if (spot.outputOfUnknown()) {
                output(unit, spot, supplies);
            }
        }
    }

    private void place(int unit, SupplySpot spot) {
        for (Load load : spot.loads) {
            loads.add(new PlacedLoad(
                    loads.size(),
                    unit,
                    spot.name,
                    spot.rail,
                    vertex(unit, spot.spot),
                    vertexOrNone(unit, spot.zeroSpot),
                    spot.frameReturn,
                    load));
        }
    }

    private void output(int unit, SupplySpot spot, TypeSupplies supplies) {
        TypeLayout layout = wiring.directory().layout(unit);
        int minus = vertexOrNone(unit, spot.zeroSpot);
        for (int pin = 0; pin < layout.pinCount(); pin++) {
            if (layout.pin(pin).role().is(PinRole.PACK_MINUS)) {
                minus = wiring.firstPoint(unit) + layout.pointOf(pin);
            }
        }
        SourceVolts gives = spot.rail
                .map(rail -> SourceVolts.ofRail(rail, "output"))
                .orElseGet(() -> SourceVolts.unknown(spot.name));
        List<Integer> inputs =
                supplies.takers().stream().map(taker -> vertex(unit, taker)).toList();
        PowerSource.Kind kind = PowerSource.Kind.OUTPUT;
        add(unit, kind, spot.name, minus, vertex(unit, spot.spot), inputs, gives, Datum.notApplicable(), -1, spot.rail);
    }

    private void part(Part part, Part.Inner inner, TypeSupplies supplies) {
        InnerPart own = inner.part();
        switch (own.kind().or(PartKind.LINK)) {
            case SOURCE -> {
                SourceVolts gives = SourceVolts.pack(own.rating(), supplies.rail(own.to()));
                Datum<Double> milliohm = milliohm(own.rating());
                add(
                        inner.unit(),
                        PowerSource.Kind.PACK,
                        own.to(),
                        part.from(),
                        part.to(),
                        List.of(),
                        gives,
                        milliohm,
                        part.index(),
                        supplies.rail(own.to()));
            }
            case REGULATOR, LINEAR_REGULATOR -> regulator(part, inner, supplies, PowerSource.Kind.REGULATOR);
            case ISOLATED_CONVERTER -> regulator(part, inner, supplies, PowerSource.Kind.CONVERTER);
            default -> {}
        }
    }

    private void regulator(Part part, Part.Inner inner, TypeSupplies supplies, PowerSource.Kind kind) {
        InnerPart own = inner.part();
        SourceVolts gives = SourceVolts.regulator(own.rating(), supplies.rail(own.to()), own.to());
        int zero = vertexOrNone(inner.unit(), supplies.zeroSpot(own.zero().or("0V")));
        add(
                inner.unit(),
                kind,
                own.to(),
                zero,
                part.to(),
                List.of(part.from()),
                gives,
                Datum.notApplicable(),
                part.index(),
                supplies.rail(own.to()));
    }

    /** Resistance of a pack in mOhm: cells in series over strings in parallel. */
    private static Datum<Double> milliohm(PartRating rating) {
        if (rating.milliohm().isKnown()) {
            return rating.milliohm();
        }
        if (!(rating.cellMilliohm() instanceof Datum.Known<Double> cell)
                || !rating.cells().isKnown()) {
            return Datum.notAsked();
        }
        double strings = rating.parallel().known().map(Integer::doubleValue).orElse(ONE_STRING);
        return new Datum.Known<>(cell.value() * rating.cells().or(0) / strings, cell.origin(), cell.date());
    }

    private void add(
            int unit,
            PowerSource.Kind kind,
            String rail,
            int minus,
            int plus,
            List<Integer> inputs,
            SourceVolts gives,
            Datum<Double> milliohm,
            int part,
            Optional<Rail> rated) {
        String ref = wiring.directory().name(unit);
        String name = kind == PowerSource.Kind.PACK ? ref : ref + " " + rail;
        List<Gap> missing =
                gives.missing().stream().map(what -> new Gap(what, ref)).toList();
        sources.add(new PowerSource(
                sources.size(), kind, unit, name, minus, plus, inputs, gives.volts(), missing, milliohm, part, rated));
    }
}
