package ringout.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import ringout.check.UnknownContact.Place;
import ringout.finding.CannotTell;
import ringout.finding.Finding;
import ringout.graph.Circuit;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Pin;
import ringout.model.Plug;
import ringout.model.UnitType;
import ringout.model.shape.Shape;

/**
 * What an aircraft may be where the list does not say what a contact is, or which contacts a lead joins. Only what suits the
 * wires is supposed: a verdict that falls under one of these rests on what nobody knows.
 *
 * @param contacts the contacts of which too little is known
 * @param leads the leads whose contacts are marked "?"
 * @param parts the parts inside units whose kind is missing
 * @param aircraft the aircraft with each of them supposed, one way or another
 */
record Suppositions(
        List<UnknownContact> contacts, List<UnknownLead> leads, List<UnknownPart> parts, List<Aircraft> aircraft) {
    /** More ways are not tried: a contact rarely has more that suit. */
    private static final int MOST = 6;

    private static final int MINUTES = 5;

    /** The suppositions about an aircraft; none when nothing of that is missing. */
    static Suppositions of(Circuit circuit) {
        Circuit whole = circuit.whole();
        Wiring wiring = whole.wiring();
        Map<Place, UnknownContact> found = new LinkedHashMap<>();
        for (Wire wire : wiring.wires()) {
            note(found, whole, wire.fromPin(), wire.toPin());
            note(found, whole, wire.toPin(), wire.fromPin());
        }
        Map<Place, List<Pin>> candidates = new LinkedHashMap<>();
        found.forEach((place, contact) -> candidates.put(place, contact.candidates()));
        List<UnknownLead> leads = UnknownLead.all(wiring);
        List<UnknownPart> parts = UnknownPart.all(wiring.aircraft());
        int ways = IntStream.of(
                        candidates.values().stream().mapToInt(List::size).max().orElse(0),
                        leads.isEmpty() ? 0 : UnknownLead.WAYS,
                        parts.isEmpty() ? 0 : UnknownPart.KINDS.size())
                .max()
                .orElse(0);
        List<Aircraft> supposed = new ArrayList<>();
        for (int way = 0; way < Math.min(ways, MOST); way++) {
            Aircraft contacts = with(wiring.aircraft(), candidates, way);
            supposed.add(UnknownPart.with(UnknownLead.with(contacts, leads, way), way));
        }
        return new Suppositions(List.copyOf(found.values()), leads, parts, List.copyOf(supposed));
    }

    private static void note(Map<Place, UnknownContact> found, Circuit whole, int pin, int other) {
        Wiring wiring = whole.wiring();
        if (UnknownContact.is(wiring.pin(pin)) && wiring.directory().typeKnown(wiring.unitOf(pin))) {
            UnknownContact contact = UnknownContact.at(wiring, pin);
            found.computeIfAbsent(contact.place(), key -> contact).wired(whole, pin, other);
        }
    }

    private static Aircraft with(Aircraft aircraft, Map<Place, List<Pin>> candidates, int way) {
        Shape<UnitType> shape = Shape.of(UnitType.class);
        List<UnitType> types = aircraft.types().stream()
                .map(type -> shape.with(
                        type,
                        "plugs",
                        type.plugs().stream()
                                .map(plug -> with(type, plug, candidates, way))
                                .toList()))
                .toList();
        return Shape.of(Aircraft.class).with(aircraft, "types", types);
    }

    private static Plug with(UnitType type, Plug plug, Map<Place, List<Pin>> candidates, int way) {
        List<Pin> pins = new ArrayList<>();
        for (Pin pin : plug.pins()) {
            List<Pin> ones = UnknownContact.is(pin)
                    ? candidates.getOrDefault(new Place(type.name(), plug.name(), pin.number()), List.of())
                    : List.of();
            pins.add(ones.isEmpty() ? pin : ones.get(way % ones.size()));
        }
        return Shape.of(Plug.class).with(plug, "pins", List.copyOf(pins));
    }

    /** What a check has to ask for instead of a finding. */
    CannotTell ask(Finding finding) {
        return new CannotTell(
                finding.code(),
                finding.name(),
                Stream.of(
                                contacts.stream().flatMap(contact -> contact.units().stream()),
                                leads.stream().map(lead -> lead.lead().id()),
                                parts.stream().flatMap(part -> part.units().stream()))
                        .flatMap(names -> names)
                        .distinct()
                        .sorted()
                        .toList(),
                Stream.of(
                                contacts.stream().map(UnknownContact::missing),
                                leads.stream().map(UnknownLead::missing),
                                parts.stream().map(UnknownPart::missing))
                        .flatMap(data -> data)
                        .sorted()
                        .collect(Collectors.joining(", ")),
                leads.isEmpty()
                        ? "look it up in the maker's data"
                        : "ring the lead out, look the rest up in the maker's data",
                MINUTES * (contacts.size() + leads.size() + parts.size()),
                finding.states());
    }

    /** The same circuits, one a state, under each supposition. */
    List<List<Circuit>> circuits(List<Circuit> told) {
        return aircraft.stream()
                .map(Wiring::of)
                .map(wiring -> told.stream()
                        .map(circuit -> Circuit.of(wiring, circuit.state()))
                        .toList())
                .toList();
    }
}
