package ringout.read.draft;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.model.BusKind;
import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.model.LeadKind;
import ringout.model.Origin;
import ringout.model.PassThrough;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.UnitType;
import ringout.model.shape.Shape;
import ringout.read.bind.Bag;
import ringout.read.intake.Intake;
import ringout.read.intake.Question;
import ringout.text.Span;

/** Drafts one unit type from what the rows use of its units, asking for what they need and do not say. */
final class TypeDraft {
    private static final Shape<UnitType> TYPE = Shape.of(UnitType.class);
    private static final Shape<Plug> PLUG = Shape.of(Plug.class);
    private static final Shape<Pin> PIN = Shape.of(Pin.class);
    private static final Shape<BusPort> PORT = Shape.of(BusPort.class);

    private final Intake intake;
    private final String unit;
    private final Bag type;
    private final Set<String> buses = new LinkedHashSet<>();

    private TypeDraft(Intake intake, String name, String unit, Span at) {
        this.intake = intake;
        this.unit = unit;
        this.type = new Bag(TYPE, at);
        type.put(TYPE.slot("name").orElseThrow(), name);
    }

    /**
     * Drafts a type.
     *
     * @param name name of the type
     * @param unit the unit that stands for all of the type in questions
     */
    static Bag of(String name, String unit, List<PlugUse> plugs, Intake intake) {
        TypeDraft draft = new TypeDraft(intake, name, unit, plugs.get(0).at());
        draft.kind(plugs.get(0).at());
        boolean apart = draft.apart(plugs);
        plugs.forEach(plug -> draft.plug(plug, apart));
        draft.ports(apart);
        return draft.type;
    }

    private void kind(Span at) {
        TradeNames.unit(unit).ifPresent(kind -> {
            type.put(TYPE.slot("kind").orElseThrow(), assumed(kind));
            intake.assume(at, unit + " taken for a " + kind.word(), "its name");
        });
    }

    private static Datum<Object> assumed(Object value) {
        return new Datum.Known<>(value, Origin.ASSUMED, "");
    }

    private void plug(PlugUse use, boolean apart) {
        Bag plug = new Bag(PLUG, use.at());
        plug.put(PLUG.slot("name").orElseThrow(), use.name());
        type.children(TYPE.slot("plugs").orElseThrow()).add(plug);
        String about = unit + "-" + use.name();
        Optional<String> text = intake.answers().subject(about);
        Optional<PinAnswer> answer = text.flatMap(PinAnswer::of);
        Map<String, Bag> pins = pins(use, plug, answer);
        List<String> open = new ArrayList<>();
        pins.forEach((name, pin) -> {
            if (role(use, name, pin, answer)) {
                bus(use, pin, apart);
            } else {
                open.add(name);
            }
        });
        if (text.isPresent() && answer.isEmpty()) {
            ask(use, about, "the answer '" + text.get() + "' is not understood; ");
        } else if (answer.isEmpty() && (pins.isEmpty() || !open.isEmpty())) {
            ask(use, about, "");
        }
    }

    /** The pins the rows name and those of the answer; a name of the rows for which the answer has a number is that pin. */
    private Map<String, Bag> pins(PlugUse use, Bag plug, Optional<PinAnswer> answer) {
        Map<String, String> number = new LinkedHashMap<>();
        answer.ifPresent(given ->
                given.names().forEach((pin, word) -> number.putIfAbsent(word.toLowerCase(Locale.ROOT), pin)));
        Set<String> all = new LinkedHashSet<>();
        for (String pin : use.pins()) {
            String known = number.getOrDefault(pin.toLowerCase(Locale.ROOT), pin);
            all.add(known);
        }
        answer.ifPresent(given -> all.addAll(given.roles().keySet()));
        Map<String, Bag> pins = new LinkedHashMap<>();
        for (String pin : all) {
            Bag bag = new Bag(PIN, use.at());
            bag.put(PIN.slot("number").orElseThrow(), pin);
            String word = use.pins().stream()
                    .filter(name -> !name.equals(pin) && pin.equals(number.get(name.toLowerCase(Locale.ROOT))))
                    .findFirst()
                    .orElse(use.signal(pin));
            if (!word.isEmpty()) {
                bag.put(PIN.slot("name").orElseThrow(), Datum.of(word));
            }
            plug.children(PLUG.slot("pins").orElseThrow()).add(bag);
            pins.put(pin, bag);
        }
        return pins;
    }

    /** Gives a pin its role by the answer or by its name; whether there is one. */
    private boolean role(PlugUse use, String name, Bag pin, Optional<PinAnswer> answer) {
        Optional<PinRole> given = answer.map(a -> a.roles().get(name));
        if (given.isPresent()) {
            pin.put(PIN.slot("role").orElseThrow(), Datum.of(given.get()));
            return true;
        }
        String word = use.signal(name).isEmpty() ? name : use.signal(name);
        Optional<PinRole> likely = TradeNames.pin(word).filter(role -> fits(role, use));
        if (likely.isEmpty() && use.kind().filter(LeadKind.PHASE::equals).isPresent()) {
            likely = Optional.of(PinRole.PHASE);
        }
        likely.ifPresent(role -> {
            pin.put(PIN.slot("role").orElseThrow(), assumed(role));
            intake.assume(
                    use.at(),
                    "pin " + name + " of " + unit + "-" + use.name() + " taken for " + role.word(),
                    role == PinRole.PHASE ? "it is at a phase lead" : "the name " + word);
        });
        return likely.isPresent();
    }

    /** A short name such as H means a bus only where the lead is one, or nobody says what it is. */
    private static boolean fits(PinRole role, PlugUse use) {
        boolean can = role == PinRole.CAN_H || role == PinRole.CAN_L;
        return !can || use.kind().isEmpty() || use.kind().get() == LeadKind.CAN;
    }

    private void bus(PlugUse use, Bag pin, boolean apart) {
        Object role = pin.get(PIN.slot("role").orElseThrow())
                .map(datum -> (Object) ((Datum.Known<?>) datum).value())
                .orElse(PinRole.NONE);
        boolean can = role == PinRole.CAN_H || role == PinRole.CAN_L;
        boolean i2c = role == PinRole.SCL || role == PinRole.SDA;
        if (can || i2c) {
            String port = i2c ? "I2C" : apart ? use.name() : "CAN";
            pin.put(PIN.slot("inside").orElseThrow(), Datum.of(port));
            buses.add(port);
        }
    }

    /** Whether several bus plugs of the unit are ports of their own; asked, and taken as one bus until answered. */
    private boolean apart(List<PlugUse> plugs) {
        List<String> can = plugs.stream()
                .filter(plug -> plug.kind().filter(LeadKind.CAN::equals).isPresent())
                .map(PlugUse::name)
                .toList();
        if (can.size() < 2) {
            return false;
        }
        String about = unit + " CAN";
        Optional<String> answer = intake.answers().subject(about);
        if (answer.isEmpty()) {
            Span at = plugs.get(0).at();
            intake.ask(new Question(
                    at,
                    about,
                    unit + " has the CAN plugs " + String.join(", ", can)
                            + ": one bus that passes through, or a bus each?",
                    "one; each; don't know",
                    false));
            intake.assume(at, "the CAN plugs of " + unit + " taken as one bus that passes through", "usual for a node");
        }
        return answer.filter(text -> text.strip().toLowerCase(Locale.ROOT).startsWith("each"))
                .isPresent();
    }

    private void ports(boolean apart) {
        for (String name : buses) {
            Bag port = new Bag(PORT, type.at());
            port.put(PORT.slot("name").orElseThrow(), name);
            port.put(PORT.slot("kind").orElseThrow(), assumed(name.equals("I2C") ? BusKind.I2C : BusKind.CAN));
            if (!apart && name.equals("CAN")) {
                port.put(PORT.slot("passThrough").orElseThrow(), assumed(PassThrough.PASSIVE));
            }
            type.children(TYPE.slot("ports").orElseThrow()).add(port);
        }
    }

    private void ask(PlugUse use, String about, String before) {
        String named = use.isBare()
                ? ""
                : " (the rows use "
                        + use.pins().stream()
                                .map(pin -> use.signal(pin).isEmpty() ? pin : pin + " " + use.signal(pin))
                                .collect(Collectors.joining(", "))
                        + ")";
        intake.ask(PlugQuestion.of(use, about, before, named));
    }
}
