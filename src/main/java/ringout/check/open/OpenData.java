package ringout.check.open;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import ringout.graph.Circuit;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.Event;
import ringout.model.InnerPart;
import ringout.model.PartRating;
import ringout.model.UnitType;
import ringout.model.shape.Shape;

/**
 * The data of an aircraft that currents rest on and nobody gave.
 *
 * @param aircraft the aircraft
 * @param all what is missing, in the order of the list
 */
public record OpenData(Aircraft aircraft, List<OpenDatum> all) {
    /** Nothing is missing. */
    public static final OpenData NONE = new OpenData(Shape.of(Aircraft.class).empty(), List.of());

    /** What is missing where current flows in one of the states. */
    public static OpenData of(List<Circuit> circuits) {
        return new OpenData(circuits.get(0).wiring().aircraft(), new OpenDataFinder(circuits).find());
    }

    /** The aircraft with some of the data at one end of what they usually are. */
    public Aircraft supposing(Predicate<OpenDatum> which, int way) {
        Map<String, Map<String, Datum<?>>> values = new HashMap<>();
        all.stream()
                .filter(which)
                .forEach(open -> values.computeIfAbsent(open.record(), key -> new HashMap<>())
                        .put(open.field(), open.at(way)));
        Shape<Aircraft> shape = Shape.of(Aircraft.class);
        Aircraft changed = shape.with(
                aircraft, "leads", each(aircraft.leads(), (lead, i) -> changed(lead, values, OpenDataFinder.lead(i))));
        changed = shape.with(
                changed,
                "joints",
                each(aircraft.joints(), (joint, i) -> changed(joint, values, OpenDataFinder.joint(i))));
        changed = shape.with(changed, "types", each(aircraft.types(), (type, i) -> type(type, values, i)));
        changed = shape.with(changed, "events", each(aircraft.events(), (event, i) -> event(event, values, i)));
        return shape.with(changed, "project", changed(aircraft.project(), values, OpenDataFinder.PROJECT));
    }

    private static UnitType type(UnitType type, Map<String, Map<String, Datum<?>>> values, int index) {
        Shape<UnitType> shape = Shape.of(UnitType.class);
        UnitType changed = shape.with(
                type, "plugs", each(type.plugs(), (plug, i) -> changed(plug, values, OpenDataFinder.plug(index, i))));
        return shape.with(changed, "parts", each(type.parts(), (part, i) -> part(part, values, index, i)));
    }

    private static InnerPart part(InnerPart part, Map<String, Map<String, Datum<?>>> values, int type, int index) {
        PartRating rating = changed(part.rating(), values, OpenDataFinder.part(type, index));
        return Shape.of(InnerPart.class).with(part, "rating", rating);
    }

    private static Event event(Event event, Map<String, Map<String, Datum<?>>> values, int index) {
        return Shape.of(Event.class)
                .with(
                        event,
                        "loads",
                        each(event.loads(), (load, i) -> changed(load, values, OpenDataFinder.event(index, i))));
    }

    private static <R> List<R> each(List<R> records, BiFunction<R, Integer, R> change) {
        List<R> changed = new ArrayList<>(records.size());
        for (int i = 0; i < records.size(); i++) {
            changed.add(change.apply(records.get(i), i));
        }
        return List.copyOf(changed);
    }

    private static <R> R changed(R record, Map<String, Map<String, Datum<?>>> values, String place) {
        @SuppressWarnings("unchecked")
        Shape<R> shape = Shape.of((Class<R>) record.getClass());
        R changed = record;
        for (Map.Entry<String, Datum<?>> value :
                values.getOrDefault(place, Map.of()).entrySet()) {
            changed = shape.with(changed, value.getKey(), value.getValue());
        }
        return changed;
    }
}
