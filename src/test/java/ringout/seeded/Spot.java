package ringout.seeded;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.Message;
import ringout.model.Plug;
import ringout.model.Unit;
import ringout.model.shape.Identity;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;

/**
 * One known datum of an aircraft and the way to put another in its place.
 *
 * @param path where it stands: {@code types[GNSS].plugs[C1].pins[2].role}
 * @param field record and name of the field: {@code Pin.role}
 * @param owners names of the things it tells about, with the units of a type
 * @param slot the field
 * @param value the known value
 * @param put makes the aircraft with another datum in its place
 */
record Spot(String path, String field, Set<String> owners, Slot slot, Object value, Function<Datum<?>, Aircraft> put) {

    /** All known data, in the order of the list. */
    static List<Spot> all(Aircraft aircraft) {
        List<Spot> spots = new ArrayList<>();
        walk(aircraft, aircraft, "", Set.of(), other -> (Aircraft) other, spots);
        return spots;
    }

    private static <R> void walk(
            Aircraft all, R record, String path, Set<String> owners, Function<Object, Aircraft> put, List<Spot> spots) {
        @SuppressWarnings("unchecked")
        Shape<R> shape = Shape.of((Class<R>) record.getClass());
        for (Slot slot : shape.slots()) {
            Object value = slot.get(record);
            String here = path + slot.name();
            Function<Object, Aircraft> with = other -> put.apply(shape.with(record, slot.name(), other));
            if (value instanceof Datum.Known<?> known) {
                String field = record.getClass().getSimpleName() + "." + slot.name();
                spots.add(new Spot(here, field, owners, slot, known.value(), with::apply));
            } else if (slot.kind() == Slot.Kind.RECORD) {
                walk(all, value, here + ".", owners, with, spots);
            } else if (slot.kind() == Slot.Kind.RECORDS) {
                each(all, (List<?>) value, here, owners, with, spots);
            }
        }
    }

    private static void each(
            Aircraft all,
            List<?> records,
            String path,
            Set<String> owners,
            Function<Object, Aircraft> put,
            List<Spot> spots) {
        for (int i = 0; i < records.size(); i++) {
            int place = i;
            Object record = records.get(i);
            String key = Identity.key(Shape.of(record.getClass()), record);
            Function<Object, Aircraft> with = other -> {
                List<Object> changed = new ArrayList<>(records);
                changed.set(place, other);
                return put.apply(List.copyOf(changed));
            };
            Set<String> names = new LinkedHashSet<>(owners);
            if (owners.isEmpty()) {
                names.add(key);
                names.addAll(users(all, path, key));
            }
            if (record instanceof Plug plug) {
                plug.family().known().ifPresent(names::add);
            }
            if (record instanceof Message message) {
                message.bus().known().ifPresent(names::add);
                message.sender().known().ifPresent(names::add);
            }
            walk(all, record, path + "[" + (key.isEmpty() ? i : key) + "].", names, with, spots);
        }
    }

    /** The units of a type, the members of a bus. */
    private static List<String> users(Aircraft all, String list, String name) {
        return switch (list) {
            case "types" ->
                all.units().stream()
                        .filter(unit -> unit.type().equals(name))
                        .map(Unit::ref)
                        .toList();
            case "buses" ->
                all.buses().stream()
                        .filter(bus -> bus.name().equals(name))
                        .flatMap(bus -> bus.members().stream())
                        .map(member -> member.split(":")[0])
                        .toList();
            default -> List.of();
        };
    }
}
