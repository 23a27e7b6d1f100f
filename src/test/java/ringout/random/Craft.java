package ringout.random;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import ringout.model.Aircraft;
import ringout.model.BusKind;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.model.edit.Edited;
import ringout.model.edit.Edits;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.edit.EditReader;
import ringout.read.source.MemoryFolder;
import ringout.synthetic.Specimen;
import ringout.synthetic.Specimen.Joined;
import ringout.text.Problem;

/**
 * A random valid aircraft and what a test may want to know of it.
 *
 * @param seed what it is made from
 * @param aircraft as read
 * @param leads what its leads are for
 */
record Craft(long seed, Aircraft aircraft, List<Joined> leads) {
    private static final int LEAST = 55;
    /** From here on there are several packs and more than four rotors. */
    private static final int LARGER = 121;

    private static final int SPREAD = 60;
    private static final String FILE = "aircraft.json";

    /** The aircraft of a seed; about half have states besides the one flown. */
    static Craft of(long seed) {
        Random random = new Random(seed);
        Specimen specimen = Specimen.of(
                seed, random.nextInt(4) == 0 ? LARGER + random.nextInt(SPREAD) : LEAST + random.nextInt(SPREAD));
        ReadResult read = AircraftReader.read(MemoryFolder.named("random").with(FILE, specimen.json()), FILE);
        if (!read.problems().isEmpty()) {
            throw new AssertionError(words(read.problems()));
        }
        Craft bare = new Craft(seed, read.aircraft(), specimen.leads());
        Craft craft = new Craft(seed, bare.with(bare.rest()), bare.leads());
        return random.nextBoolean() ? craft : new Craft(seed, craft.with(craft.states(random)), craft.leads());
    }

    /** What the maker of shapes leaves out: messages, the mission, what isolates the packs, the step that compares packs; and no places at odds with lengths. */
    private List<String> rest() {
        List<String> lines = new ArrayList<>();
        aircraft.buses().stream()
                .filter(bus -> bus.kind().is(BusKind.CAN))
                .forEach(bus -> bus.members().forEach(member -> lines.add(message(bus.name(), member))));
        aircraft.units().forEach(unit -> {
            boolean sided =
                    List.of("left", "right").contains(unit.positionRole().or(""));
            for (String axis : sided ? List.of("x", "z") : List.of("x", "y", "z")) {
                lines.add("clear units[" + quoted(unit.ref()) + "]." + axis + "Mm");
            }
        });
        lines.add("set airframe.missionMin 8");
        lines.add("set airframe.missionReserveMin 2");
        lines.add("set airframe.isolator "
                + tagged("pack plus").stream().map(this::packPlug).collect(Collectors.joining("; ", "", ";")));
        List<String> packs = units(unit -> isPack(unit.ref())).stream()
                .map(Unit::ref)
                .map(Craft::quoted)
                .toList();
        lines.add("add record.steps {\"id\": \"1\", \"action\": \"check\", \"attribute\": \"voltage\", \"objects\": "
                + packs + "}");
        return lines;
    }

    private static String message(String bus, String member) {
        String sender = member.substring(0, member.indexOf(':'));
        return "add messages {\"name\": " + quoted("status of " + member) + ", \"bus\": " + quoted(bus)
                + ", \"sender\": " + quoted(sender)
                + ", \"bytes\": 8, \"extended\": true, \"priority\": 20, \"periodMs\": 100, \"jitterMs\": 0.2}";
    }

    private static List<String> words(List<Problem> problems) {
        return problems.stream().map(Problem::words).toList();
    }

    /** States that only take off what nothing else hangs on. */
    private List<String> states(Random random) {
        List<String> lines = new ArrayList<>(List.of("add states {\"name\": \"as flown\"}"));
        List<String> payload = Stream.of(tagged("payload"), tagged("light"))
                .flatMap(List::stream)
                .flatMap(lead -> Stream.of(lead.from(), lead.to()))
                .filter(unit -> leads.stream()
                                .filter(lead ->
                                        lead.from().equals(unit) || lead.to().equals(unit))
                                .count()
                        == 1)
                .distinct()
                .toList();
        if (!payload.isEmpty()) {
            String unit = payload.get(random.nextInt(payload.size()));
            lines.add("set units[" + quoted(unit) + "].removable yes");
            lines.add("add states {\"name\": \"payload off\", \"absent\": [" + quoted(unit) + "]}");
        }
        String pack = packPlug(tagged("pack plus").get(0));
        lines.add("add states {\"name\": \"pack open\", \"pulled\": [" + quoted(pack) + "], \"bench\": true}");
        return lines;
    }

    private String packPlug(Joined plus) {
        return isPack(plus.from()) ? plus.from() + "-" + plus.fromPlug() : plus.to() + "-" + plus.toPlug();
    }

    private boolean isPack(String ref) {
        return type(ref).name().startsWith("PACK");
    }

    static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    /** The aircraft after edits, one a line. */
    Aircraft with(List<String> lines) {
        EditReader.Result read = EditReader.read("fault.edit", String.join("\n", lines));
        if (!read.problems().isEmpty()) {
            throw new AssertionError(lines + " " + words(read.problems()));
        }
        Edited edited = Edits.apply(aircraft, read.edits());
        if (!edited.problems().isEmpty()) {
            throw new AssertionError(lines + " " + words(edited.problems()));
        }
        return edited.aircraft();
    }

    /** Leads that are for something. */
    List<Joined> tagged(String... tags) {
        List<String> wanted = List.of(tags);
        return leads.stream().filter(lead -> wanted.contains(lead.tag())).toList();
    }

    /** The unit of a name. */
    Unit unit(String ref) {
        return units(unit -> unit.ref().equals(ref)).get(0);
    }

    /** Units of a kind. */
    List<Unit> units(Predicate<Unit> wanted) {
        return aircraft.units().stream().filter(wanted).toList();
    }

    /** The type of a unit. */
    UnitType type(String ref) {
        String name = unit(ref).type();
        return aircraft.types().stream()
                .filter(type -> type.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    @Override
    public String toString() {
        return "aircraft " + seed;
    }
}
