package ringout.draw.harness;

import ringout.graph.Wiring;
import ringout.model.Pin;
import ringout.model.PinRole;

/** What is printed beside a contact: its signal name, else what it carries. */
final class PinSignal {
    private PinSignal() {}

    /** {@return the words of a pin of a unit; a question mark when nothing is known} */
    static String of(Wiring wiring, int pin) {
        Pin record = wiring.pin(pin);
        return record.name()
                .known()
                .orElseGet(() ->
                        record.role().known().map(role -> words(record, role)).orElse("?"));
    }

    private static String words(Pin record, PinRole role) {
        String inside = record.inside().or("");
        return switch (role) {
            case SUPPLY_IN, SUPPLY_OUT, SUPPLY_THROUGH -> inside.isEmpty() ? role.word() : inside;
            case CAN_H, CAN_L -> (inside.isEmpty() ? "CAN" : inside) + (role == PinRole.CAN_H ? " H" : " L");
            case PULSE_OUT, PULSE_IN ->
                role.word() + record.output().known().map(o -> " " + o).orElse("");
            case PASSIVE -> inside;
            case NONE -> "";
            default -> role.word();
        };
    }
}
