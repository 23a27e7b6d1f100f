package ringout.read.draft;

import ringout.model.LeadKind;
import ringout.read.intake.Question;

/** What to ask about the pins of a plug, in the words of what its leads carry. */
final class PlugQuestion {
    private PlugQuestion() {}

    static Question of(PlugUse use, String about, String before, String named) {
        String what = use.kind().map(PlugQuestion::what).orElse("which pin carries what");
        String example = use.kind().map(PlugQuestion::example).orElse("in=1 0V=2");
        String kind = use.kind().map(found -> word(found) + " plug ").orElse("plug ");
        return new Question(
                use.at(),
                about,
                before + kind + use.name() + " of "
                        + about.substring(0, about.length() - use.name().length() - 1) + named + ": " + what + "?",
                "such as " + example + "; or don't know",
                false);
    }

    private static String word(LeadKind kind) {
        return kind == LeadKind.CAN ? "CAN" : kind == LeadKind.I2C ? "I2C" : kind.word();
    }

    private static String what(LeadKind kind) {
        return switch (kind) {
            case CAN -> "which pins are H and L, and which 0V and supply";
            case SERIAL, DATA -> "which pin sends (TX), which receives (RX), which is 0V";
            case PULSE -> "which pin is the signal, and does it give (pwm out) or take it (pwm in); which is 0V";
            case I2C -> "which pins are SCL, SDA and 0V";
            case POWER, POWER_5V, RETURN ->
                "which pin is supply, and does it take (in) or give (out) or pass it" + " (through); which is 0V";
            case PHASE -> "which pins are the phases";
            default -> "which pin carries what";
        };
    }

    private static String example(LeadKind kind) {
        return switch (kind) {
            case CAN -> "in=1 H=2 L=3 0V=4";
            case SERIAL, DATA -> "out=1 TX=2 RX=3 0V=4";
            case PULSE -> "pwm in=1 0V=2";
            case I2C -> "out=1 SCL=2 SDA=3 0V=4";
            case POWER, POWER_5V, RETURN -> "in=1 0V=2, of a pack: pack plus=1 pack minus=2";
            case PHASE -> "phase=1,2,3";
            default -> "in=1 0V=2";
        };
    }
}
