package ringout.sheet.harness;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import ringout.graph.Wire;
import ringout.graph.Wiring;
import ringout.graph.wire.WireColour;
import ringout.model.Awg;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.shape.Scalars;

/** Conductors in the words of a table: name, ends, signal, size, colour. */
public final class Conductors {
    private final Wiring wiring;
    private final Map<Integer, Integer> perLead = new HashMap<>();

    /** Knows the conductors of a wiring. */
    public Conductors(Wiring wiring) {
        this.wiring = wiring;
        wiring.wires().forEach(wire -> perLead.merge(wire.leadIndex(), 1, Integer::sum));
    }

    /** {@return its own identity, else its lead, with the pin it starts at where the lead has several} */
    public String name(Wire wire) {
        Optional<String> own = wire.own().flatMap(conductor -> conductor.id().known());
        String pin = wiring.directory().isJoint(wiring.unitOf(wire.fromPin()))
                ? ""
                : wiring.pin(wire.fromPin()).number();
        boolean one = perLead.getOrDefault(wire.leadIndex(), 0) == 1 || pin.isEmpty();
        return own.orElse(one ? wire.lead().id() : wire.lead().id() + "." + pin);
    }

    /** {@return UNIT-PLUG-PIN, or the joint} */
    public String pin(int pin) {
        return wiring.name(pin);
    }

    /** {@return what a conductor carries: name of the contact that tells, and what kind of contact that is} */
    public String signal(Wire wire) {
        return signal(wire.fromPin())
                .or(() -> signal(wire.toPin()))
                .orElse(wire.lead().kind().known().map(Scalars::write).orElse(""));
    }

    /** {@return what a contact carries; nothing for a contact that passes whatever comes} */
    public Optional<String> signal(int pin) {
        Optional<PinRole> role = wiring.role(pin).filter(known -> known != PinRole.PASSIVE && known != PinRole.NONE);
        String name = wiring.pin(pin).name().or("");
        String word = role.map(PinRole::word).orElse("");
        // A bare sign says no more than the kind of contact.
        if (word.isEmpty() || name.chars().noneMatch(Character::isLetterOrDigit)) {
            return word.isEmpty() ? Optional.empty() : Optional.of(word);
        }
        boolean same = name.equalsIgnoreCase(word) || word.contains(name) || name.contains(word);
        return Optional.of(same ? (name.length() > word.length() ? name : word) : name + ", " + word);
    }

    /** {@return the size: {@code 26 AWG}, {@code 0.5 mm2}, or why it is not told} */
    public static String size(Wire wire) {
        Optional<Awg> gauge = wire.awg().known();
        if (gauge.isPresent()) {
            return gauge.get() + " AWG";
        }
        return wire.areaMm2().known().map(area -> Scalars.number(area) + " mm2").orElse("?");
    }

    /** {@return letters of the colour by IEC 60757; a dash when the list gives none} */
    public String colour(Wire wire) {
        String colour = WireColour.of(wiring, wire);
        return colour.isEmpty() ? "-" : colour;
    }

    /** {@return the length in mm, or why it is not told} */
    public static String length(Wire wire) {
        return cell(wire.lengthMm());
    }

    /** {@return twist and shield of a lead in words} */
    public static String cover(Lead lead) {
        String twist = lead.twisted().is(true) ? "twisted" : "";
        String shield = lead.shield()
                .known()
                .map(Scalars::write)
                .filter(word -> !word.equals("none"))
                .map(word -> "shield " + word)
                .orElse("");
        return twist.isEmpty() || shield.isEmpty() ? twist + shield : twist + ", " + shield;
    }

    /** {@return how a conductor ends at a pin: family of the plug the lead carries there, and its key} */
    public String termination(Wire wire, int pin) {
        if (wiring.directory().isJoint(wiring.unitOf(pin))) {
            return wiring.directory()
                    .joint(wiring.unitOf(pin))
                    .kind()
                    .known()
                    .map(Scalars::write)
                    .orElse("joint");
        }
        boolean from = pin == wire.fromPin();
        Plug plug = wiring.plug(pin);
        Datum<String> own = from ? wire.lead().fromFamily() : wire.lead().toFamily();
        return own.orElse(plug.family()).or("?");
    }

    /** {@return text of the label at an end: as listed, else the name of the lead} */
    public static String label(Wire wire, int pin) {
        Lead lead = wire.lead();
        return (pin == wire.fromPin() ? lead.fromLabel() : lead.toLabel()).or(lead.id());
    }

    /** {@return a datum as a cell: its value, "?", "n/a", or nothing} */
    public static String cell(Datum<?> datum) {
        if (datum instanceof Datum.Known<?> known) {
            return Scalars.write(known.value());
        }
        return datum instanceof Datum.Unknown<?> ? "?" : datum.isNotApplicable() ? "n/a" : "";
    }
}
