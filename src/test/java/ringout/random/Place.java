package ringout.random;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.Unit;
import ringout.synthetic.Specimen.Joined;
import ringout.synthetic.Specimen.Wire;

/** Where in an aircraft a mistake is made: finds leads, plugs and pins, and words the edits. */
final class Place {
    private final Craft craft;
    private final Random random;

    Place(Craft craft, String kind) {
        this.craft = craft;
        this.random = new Random(craft.seed() * 31 + kind.hashCode());
    }

    Craft craft() {
        return craft;
    }

    /** One of some, if there are any. */
    <T> Optional<T> any(List<T> from) {
        return from.isEmpty() ? Optional.empty() : Optional.of(from.get(random.nextInt(from.size())));
    }

    /** A lead that is for something. */
    Optional<Joined> lead(String... tags) {
        return any(craft.tagged(tags));
    }

    /** A lead that is for something and is as told. */
    Optional<Joined> lead(Predicate<Joined> wanted, String... tags) {
        return any(craft.tagged(tags).stream().filter(wanted).toList());
    }

    /** Name of the type a unit is made as, without the number of its library. */
    String made(String ref) {
        String type = craft.unit(ref).type();
        return type.substring(0, type.indexOf('/'));
    }

    /** The end of a lead that is not the controller, a board, a splice: the device it was made for. */
    String device(Joined lead) {
        if (lead.tag().equals("isolated")) {
            return made(lead.to()).equals("ISOLATED") ? lead.from() : lead.to();
        }
        boolean inner = List.of("CONTROLLER", "BOARD", "SPLICE", "TEE", "REG12", "REG6", "MONITOR", "GEAR")
                .contains(made(lead.to()));
        return inner ? lead.from() : lead.to();
    }

    /** The other end. */
    String other(Joined lead, String unit) {
        return lead.from().equals(unit) ? lead.to() : lead.from();
    }

    /** The plug of a lead at a unit. */
    static String plug(Joined lead, String unit) {
        return lead.from().equals(unit) ? lead.fromPlug() : lead.toPlug();
    }

    /** Leads at a unit. */
    List<Joined> at(String unit) {
        return craft.leads().stream()
                .filter(lead -> lead.from().equals(unit) || lead.to().equals(unit))
                .toList();
    }

    /** How many rows end at a unit, those to splices too. */
    long count(String unit) {
        return craft.aircraft().leads().stream()
                .filter(lead -> lead.from().text().startsWith(unit + "-")
                        || lead.to().text().startsWith(unit + "-"))
                .count();
    }

    boolean free(String unit, String plug) {
        return at(unit).stream().noneMatch(lead -> plug(lead, unit).equals(plug));
    }

    /** A plug of a unit without a lead that has the contacts of all these roles. */
    Optional<Plug> freePlug(String unit, PinRole... roles) {
        return any(craft.type(unit).plugs().stream()
                .filter(plug -> free(unit, plug.name()))
                .filter(plug ->
                        List.of(roles).stream().allMatch(role -> pin(plug, role).isPresent()))
                .toList());
    }

    static Optional<Pin> pin(Plug plug, PinRole role) {
        return plug.pins().stream().filter(pin -> pin.role().is(role)).findFirst();
    }

    static String number(Plug plug, PinRole role) {
        return pin(plug, role).orElseThrow().number();
    }

    Plug plugOf(String unit, String name) {
        return craft.type(unit).plugs().stream()
                .filter(plug -> plug.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The role of a contact. */
    PinRole role(String unit, String plug, String number) {
        return plugOf(unit, plug).pins().stream()
                .filter(pin -> pin.number().equals(number))
                .findFirst()
                .orElseThrow()
                .role()
                .or(PinRole.NONE);
    }

    /** Units whose port of a bus has a setting as told. */
    List<Unit> set(String port, Predicate<ringout.model.PortSetting> wanted) {
        return craft.units(
                unit -> unit.ports().stream().anyMatch(one -> one.port().equals(port) && wanted.test(one)));
    }

    static String unit(String ref, String field) {
        return "units[" + Craft.quoted(ref) + "]." + field;
    }

    static String port(String ref, String port, String field) {
        return unit(ref, "ports[" + port + "]." + field);
    }

    static String row(String id, String field) {
        return "leads[" + Craft.quoted(id) + "]." + field;
    }

    static String remove(Joined lead) {
        return "remove leads[" + Craft.quoted(lead.id()) + "]";
    }

    /** The lead with these conductors. */
    static String wires(Joined lead, List<Wire> wires) {
        return "set " + row(lead.id(), "pins") + " "
                + wires.stream().map(Wire::toString).collect(Collectors.joining(" "));
    }

    /** The lead without one of its conductors. */
    static String without(Joined lead, String function) {
        Wire gone = lead.wire(function);
        return wires(
                lead, lead.wires().stream().filter(wire -> !wire.equals(gone)).toList());
    }

    /** The lead with the far ends of two conductors exchanged. */
    static String crossed(Joined lead, String one, String two) {
        Wire a = lead.wire(one);
        Wire b = lead.wire(two);
        List<Wire> wires = new ArrayList<>();
        for (Wire wire : lead.wires()) {
            String to = wire.equals(a) ? b.toPin() : wire.equals(b) ? a.toPin() : wire.toPin();
            wires.add(new Wire(wire.function(), wire.fromPin(), to));
        }
        return wires(lead, wires);
    }

    static boolean has(Joined lead, String function) {
        return lead.wires().stream().anyMatch(wire -> wire.function().equals(function));
    }

    /** A new lead of a kind between two plugs. */
    static String add(String kind, String from, String to, int lengthMm, String pins) {
        return "add leads {\"id\": \"added\", \"from\": " + Craft.quoted(from) + ", \"to\": " + Craft.quoted(to)
                + ", \"kind\": \"" + kind + "\", \"awg\": 24, \"lengthMm\": " + lengthMm + ", \"routeMm\": "
                + lengthMm * 92 / 100
                + ", \"twisted\": true, \"pins\": \"" + pins + "\"}";
    }

    /** A new lead that joins the pins of equal roles of two plugs. */
    static String add(String kind, String one, Plug a, String two, Plug b, int lengthMm, PinRole... roles) {
        String pins = java.util.Arrays.stream(roles)
                .map(role -> number(a, role) + ">" + number(b, role))
                .collect(Collectors.joining(" "));
        return add(kind, one + "-" + a.name(), two + "-" + b.name(), lengthMm, pins);
    }
}
