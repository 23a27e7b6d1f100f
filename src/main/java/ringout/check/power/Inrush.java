package ringout.check.power;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.check.form.Assumed;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Sound;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.graph.power.Volts;
import ringout.model.Datum;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.UnitKind;
import ringout.model.UnitType;

/**
 * A pack that is plugged onto large capacitors without pre-charge.
 *
 * <p>Why it matters: the arc burns the contacts away bit by bit, and the surge stresses the capacitors and whatever shares the supply.
 *
 * <p>Formula: E = C V^2 / 2 in J, C the sum of the input capacitances behind the pack in F, V the voltage of the full pack. More
 * than 1 J needs a pre-charge: a suppressing contact at a pack, or a unit that limits its own inrush.
 *
 * <p>Does not see: whether the suppressing contact is the last one made (B05), and whether loads that are on keep a pre-charge resistor
 * from ever charging the capacitors.
 *
 * <p>Reference: energy of a capacitor; the limit of 1 J is common practice, no source.
 */
@CheckInfo(
        code = "P26",
        name = "inrush",
        severity = Severity.S3,
        since = "0.1",
        needs = {"input capacitance of each speed controller", "voltage of a full cell", "suppressing contacts"})
public final class Inrush implements Sound {
    private static final double MICRO = 1e-6;
    private static final String CAPACITANCE = "input capacitance";
    private static final String SUPPRESSOR = "whether its contact has a pre-charge, of the plug";

    @Override
    public void look(Situation at, Outcomes out) {
        PowerGraph power = PowerGraph.of(at.circuit());
        Map<Integer, List<Pack>> byTie = new LinkedHashMap<>();
        for (List<Pack> stack : Pack.stacks(at)) {
            int tie = power.ties().of(stack.get(stack.size() - 1).source().plus());
            byTie.computeIfAbsent(tie, key -> new ArrayList<>()).addAll(stack);
        }
        Gaps gaps = new Gaps();
        byTie.forEach((tie, packs) -> judge(at, out, gaps, tie, packs));
        gaps.tell(
                out,
                datum -> datum.equals(CAPACITANCE)
                        ? new Gaps.Way("look it up in the maker's data, or read the print on the capacitors", 5)
                        : new Gaps.Way("look at the contact", 1));
    }

    private static void judge(Situation at, Outcomes out, Gaps gaps, int tie, List<Pack> packs) {
        List<Consumer> charged = PowerGraph.of(at.circuit()).consumersOn(tie).stream()
                .filter(consumer -> !type(at, consumer).inputPrecharge().is(true))
                .filter(consumer -> type(at, consumer).inputMicrofarad().isKnown() || controller(at, consumer))
                .toList();
        if (charged.isEmpty()) {
            return;
        }
        Datum<Boolean> softened = softened(at, packs);
        if (softened.is(true)) {
            out.looked();
            return;
        }
        Volts volts = PowerGraph.of(at.circuit())
                .between(charged.get(0).plus(), packs.get(0).source().minus())
                .orElse(Volts.ZERO);
        Threshold most = at.limit(Thresholds.INRUSH);
        double farad = charged.stream()
                        .mapToDouble(
                                consumer -> type(at, consumer).inputMicrofarad().or(0.0))
                        .sum()
                * MICRO;
        double joule = farad * volts.high() * volts.high() / 2;
        List<Consumer> open = charged.stream()
                .filter(consumer -> !type(at, consumer).inputMicrofarad().isKnown())
                .toList();
        if (!volts.isBounded()) {
            packs.forEach(pack -> gaps.add("voltage of a full cell", pack.name()));
        } else if (joule > most.value() && softened.isMissing()) {
            plugs(at, packs).stream()
                    .filter(pin -> at.wiring().plug(pin).suppressor().isMissing())
                    .forEach(pin -> gaps.add(
                            SUPPRESSOR,
                            at.wiring()
                                    .plugName(
                                            at.wiring().unitOf(pin), at.wiring().plugIndex(pin))));
        } else if (joule > most.value()) {
            out.finding(draft(at, packs, charged, farad, volts, most));
        } else if (open.isEmpty()) {
            out.looked();
        } else {
            open.forEach(consumer -> gaps.add(CAPACITANCE, at.directory().name(consumer.unit())));
        }
    }

    private static UnitType type(Situation at, Consumer consumer) {
        return at.directory().type(consumer.unit());
    }

    private static boolean controller(Situation at, Consumer consumer) {
        return type(at, consumer).kind().is(UnitKind.SPEED_CONTROLLER);
    }

    /** Whether a pack has a pre-charge; not known when a plug of it does not say and none has. */
    private static Datum<Boolean> softened(Situation at, List<Pack> packs) {
        List<Plug> plugs = plugs(at, packs).stream().map(at.wiring()::plug).toList();
        boolean inside = packs.stream()
                .anyMatch(pack -> at.directory()
                        .type(pack.source().unit())
                        .inputPrecharge()
                        .is(true));
        if (inside || plugs.stream().anyMatch(plug -> plug.suppressor().is(true))) {
            return Datum.of(true);
        }
        return plugs.stream().anyMatch(plug -> plug.suppressor().isMissing()) ? Datum.unknown() : Datum.of(false);
    }

    /** The first plus contact of each plug of the packs that has one. */
    private static List<Integer> plugs(Situation at, List<Pack> packs) {
        List<Integer> pins = new ArrayList<>();
        for (Pack pack : packs) {
            int unit = pack.source().unit();
            for (int pin = at.wiring().firstPin(unit); pin < at.wiring().endPin(unit); pin++) {
                int plug = at.wiring().plugIndex(pin);
                boolean again = pins.stream()
                        .anyMatch(other ->
                                at.wiring().unitOf(other) == unit && at.wiring().plugIndex(other) == plug);
                if (at.wiring().is(pin, PinRole.PACK_PLUS) && !again) {
                    pins.add(pin);
                }
            }
        }
        return pins;
    }

    private static Draft draft(
            Situation at, List<Pack> packs, List<Consumer> charged, double farad, Volts volts, Threshold most) {
        double joule = farad * volts.high() * volts.high() / 2;
        List<String> names = packs.stream().map(Pack::name).toList();
        String energy = Figures.of(joule) + " J";
        Draft draft = Draft.of(
                        Severity.S3,
                        "inrush without pre-charge: " + energy + " when " + String.join(" + ", names)
                                + " is plugged in")
                .about(names)
                .sum(charged.size() + " inputs, " + Figures.of(farad / MICRO) + " uF at " + Figures.of(volts.high())
                        + " V: C V^2 / 2 = " + energy + ", at most " + Figures.of(most.value()) + " J")
                .judged(joule, most.value(), "J", most.source())
                .onAssumption(charged.stream()
                        .anyMatch(consumer -> Assumed.turns(
                                type(at, consumer).inputMicrofarad(), factor -> joule * factor - most.value())))
                .why("the arc eats the contacts and the surge stresses the capacitors")
                .meter("look at the contacts: burnt spots where they touch first")
                .fix("fit a pre-charge contact as the last one made at " + names.get(names.size() - 1));
        charged.forEach(consumer -> draft.input(type(at, consumer).inputMicrofarad()));
        packs.forEach(pack -> draft.at(pack.unit(), "pre-charge"));
        return draft;
    }
}
