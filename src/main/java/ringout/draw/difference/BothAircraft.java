package ringout.draw.difference;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import ringout.compare.find.Differences;
import ringout.compare.match.Match;
import ringout.graph.Directory;
import ringout.graph.Wire;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.Joint;
import ringout.model.Lead;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.model.shape.Shape;

/**
 * The aircraft as it is now, and with it what only its base has: units, and a row for each conductor, behind the row of its
 * lead. Names are those of the aircraft as it is now. For drawing only; nothing is to be computed from it.
 *
 * @param aircraft both in one list
 * @param rows for each row of leads of the aircraft as it is now, its number in this list
 * @param goneRows numbers of the rows that only the base has
 * @param goneUnits units that only the base has
 * @param notDrawn conductors that only the base has and that end at contacts nothing here has
 */
public record BothAircraft(
        Aircraft aircraft, List<Integer> rows, Set<Integer> goneRows, Set<String> goneUnits, List<String> notDrawn) {
    /** Keeps its own copies. */
    public BothAircraft {
        rows = List.copyOf(rows);
        goneRows = Set.copyOf(goneRows);
        goneUnits = Set.copyOf(goneUnits);
        notDrawn = List.copyOf(notDrawn);
    }

    /** Puts both together. */
    public static BothAircraft of(Differences differences) {
        return new Builder(differences).build();
    }

    /** Gathers the rows. */
    private static final class Builder {
        private final Differences differences;
        private final Match match;
        private final List<Unit> units;
        private final List<Joint> joints;
        private final List<UnitType> types;
        private final Map<String, String> names = new HashMap<>();
        private final Map<String, List<Lead>> behind = new LinkedHashMap<>();
        private final Set<String> gone = new HashSet<>();
        private final List<String> notDrawn = new ArrayList<>();

        Builder(Differences differences) {
            this.differences = differences;
            this.match = differences.match();
            Aircraft now = match.other().aircraft();
            units = new ArrayList<>(now.units());
            joints = new ArrayList<>(now.joints());
            types = new ArrayList<>(now.types());
            match.pairs()
                    .forEach(pair -> names.put(pair.base().id(), pair.other().id()));
        }

        BothAircraft build() {
            Aircraft now = match.other().aircraft();
            Directory here = match.base().directory();
            for (int unit = 0; unit < here.count(); unit++) {
                boolean free = match.other().directory().find(here.name(unit)).isEmpty();
                if (match.unit(unit) < 0 && free) {
                    add(here, unit);
                }
            }
            Set<Integer> done = new HashSet<>();
            differences.all().stream()
                    .flatMap(difference -> difference.touched().before().stream())
                    .filter(wire -> done.add(wire.index()))
                    .forEach(this::add);
            Shape<Aircraft> shape = Shape.of(Aircraft.class);
            Aircraft both = shape.with(now, "units", List.copyOf(units));
            both = shape.with(both, "joints", List.copyOf(joints));
            both = shape.with(both, "types", List.copyOf(types));
            List<Lead> leads = new ArrayList<>();
            List<Integer> rows = new ArrayList<>();
            Set<Integer> goneRows = new HashSet<>();
            for (int row = 0; row < now.leads().size(); row++) {
                Lead lead = now.leads().get(row);
                rows.add(leads.size());
                leads.add(lead);
                boolean last = row + 1 == now.leads().size()
                        || !now.leads().get(row + 1).id().equals(lead.id());
                if (last) {
                    append(behind.remove(lead.id()), leads, goneRows);
                }
            }
            behind.values().forEach(rest -> append(rest, leads, goneRows));
            both = shape.with(both, "leads", List.copyOf(leads));
            return new BothAircraft(both, rows, goneRows, gone, notDrawn);
        }

        private static void append(@Nullable List<Lead> more, List<Lead> leads, Set<Integer> goneRows) {
            if (more != null) {
                more.forEach(lead -> {
                    goneRows.add(leads.size());
                    leads.add(lead);
                });
            }
        }

        private void add(Directory here, int unit) {
            gone.add(here.name(unit));
            if (here.isJoint(unit)) {
                joints.add(here.joint(unit));
                return;
            }
            units.add(here.unit(unit));
            boolean known = types.stream()
                    .anyMatch(type ->
                            fold(type.name()).equals(fold(here.unit(unit).type())));
            if (!known && here.typeKnown(unit)) {
                types.add(here.type(unit));
            }
        }

        private void add(Wire wire) {
            Optional<String> from = end(wire.fromPin());
            Optional<String> to = end(wire.toPin());
            if (from.isEmpty() || to.isEmpty()) {
                notDrawn.add(wire.lead().id() + " " + match.base().name(wire.fromPin()) + " to "
                        + match.base().name(wire.toPin()));
                return;
            }
            Shape<Lead> shape = Shape.of(Lead.class);
            Lead row = shape.with(wire.lead(), "from", new End(from.get()));
            row = shape.with(row, "to", new End(to.get()));
            String id = names.getOrDefault(wire.lead().id(), wire.lead().id());
            behind.computeIfAbsent(id, key -> new ArrayList<>()).add(shape.with(row, "pins", Datum.notAsked()));
        }

        /** A contact of the base by its name now; nothing where neither aircraft has it under this name. */
        private Optional<String> end(int pin) {
            int now = match.pin(pin);
            if (now >= 0) {
                return Optional.of(match.other().name(now));
            }
            String unit = match.base().directory().name(match.base().unitOf(pin));
            return gone.contains(unit) ? Optional.of(match.base().name(pin)) : Optional.empty();
        }

        private static String fold(String name) {
            return name.strip().toUpperCase(Locale.ROOT);
        }
    }
}
