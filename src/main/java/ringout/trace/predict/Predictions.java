package ringout.trace.predict;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.solve.meter.Change;
import ringout.solve.meter.Reading;
import ringout.trace.candidate.Candidate;
import ringout.trace.candidate.Defect;
import ringout.trace.candidate.FaultKind;

/**
 * What every test shows with every candidate, from the graph and the operating point. Each outcome carries its probability:
 * readings spread over their tolerance, and one in twenty-five is misread.
 */
public final class Predictions {
    /** A load of 10 ohm in a pulled plug of up to 6 V: 0.6 A, 3.6 W. */
    private static final double TEST_LOAD_OHM = 10;

    /** How often a look finds a plug half seated; a mark of touching, heat or water; wires exchanged in a plug. Judgement, no source. */
    private static final double HALF_SEEN = 0.6;

    private static final double MARK_SEEN = 0.95;
    private static final double SWAP_SEEN = 0.25;

    private final Circuit circuit;
    private final Wiring wiring;
    private final LegLevels levels;
    private final Map<String, Signature> signatures = new HashMap<>();

    private Predictions(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.levels = new LegLevels(circuit);
    }

    /** The predictions of a circuit. */
    public static Predictions of(Circuit circuit) {
        return circuit.know(Predictions.class, Predictions::new);
    }

    /** What the modules show with a candidate; found once. */
    public Signature signature(Candidate candidate) {
        Signature known = signatures.get(candidate.id());
        if (known == null) {
            known = Behaviour.of(circuit).signature(candidate);
            signatures.put(candidate.id(), known);
        }
        return known;
    }

    private String name(int unit) {
        return wiring.directory().name(unit);
    }

    /** What a test shows with a candidate. */
    public Prediction of(Candidate candidate, FieldTest test) {
        if (test instanceof FieldTest.BusOhms ohms) {
            return ohms(BusMeter.of(circuit).reading(candidate, ohms));
        }
        if (test instanceof FieldTest.LegToZero leg) {
            return toZero(BusMeter.of(circuit).between(candidate, leg.pin(), leg.zero()));
        }
        if (test instanceof FieldTest.Volts at) {
            return volts(rest().with(candidate, at.plus(), at.zero()), healthy(at.plus(), at.zero()));
        }
        if (test instanceof FieldTest.LoadedVolts at) {
            return loaded(candidate, at);
        }
        if (test instanceof FieldTest.Drop drop) {
            return drop(candidate, drop);
        }
        return seen(candidate, test, signature(candidate));
    }

    private SupplyVolts rest() {
        return SupplyVolts.atRest(circuit);
    }

    private double healthy(int plus, int zero) {
        return rest().healthy(plus, zero).orElse(1);
    }

    private static Prediction ohms(Reading reading) {
        String words = reading instanceof Reading.Ohms ohms ? ohmWords(ohms.ohm()) : "open";
        return new Prediction(words, Classes.ohms(reading));
    }

    private static String ohmWords(double ohm) {
        return ohm < 1000
                ? String.format(Locale.ROOT, "%.0f ohm", ohm)
                : String.format(Locale.ROOT, "%.1f kilohm", ohm / 1000);
    }

    private static Prediction toZero(Reading reading) {
        boolean shorted = reading instanceof Reading.Ohms ohms && ohms.ohm() < 200;
        return sure(
                Classes.TO_ZERO,
                shorted ? "short" : "kilohm and more",
                ohms(reading).shows());
    }

    private static Prediction sure(List<String> outcomes, String one, String words) {
        return new Prediction(words, Classes.sure(outcomes, one));
    }

    private static Prediction sure(List<String> outcomes, String one) {
        return sure(outcomes, one, one);
    }

    private static Prediction volts(OptionalDouble found, double right) {
        String words = found.isPresent() ? String.format(Locale.ROOT, "%.2f V", found.getAsDouble()) : "floating";
        return sure(Classes.VOLTS, Classes.volts(found, right), words);
    }

    /**
     * The plug is pulled and 10 ohm put between its contacts, on the side of the lead. What is wrong between the two halves of
     * this very contact is pulled with it and does not show.
     */
    private Prediction loaded(Candidate candidate, FieldTest.LoadedVolts at) {
        int unit = wiring.unitOf(at.plus());
        List<Change> pulled = BusMeter.of(circuit).pulled(unit, wiring.plugIndex(at.plus()));
        int plus = end(at.plus());
        int zero = end(at.zero());
        List<Change> done = new java.util.ArrayList<>(pulled);
        done.removeIf(change -> candidate.changes().contains(change));
        done.add(new Change.Added(plus, zero, TEST_LOAD_OHM));
        double right = healthy(at.plus(), at.zero());
        return volts(rest().with(candidate, done, plus, zero), right);
    }

    private int end(int pin) {
        int[] wires = wiring.wiresAt(pin);
        return wires.length == 0 ? pin : wiring.wires().get(wires[0]).endAt(pin);
    }

    private Prediction drop(Candidate candidate, FieldTest.Drop at) {
        int end = wiring.wires().get(at.wire()).endAt(at.pin());
        if (isLoose(candidate.defect(), at.pin())) {
            return sure(Classes.DROP, "too much", "all of the supply, the contact is open");
        }
        double volts =
                Math.abs(SupplyVolts.of(circuit).with(candidate, end, at.pin()).orElse(0));
        return sure(Classes.DROP, Classes.drop(volts), String.format(Locale.ROOT, "%.0f mV", volts * 1000));
    }

    /** Across a contact that does not make stands what the rest of its circuit would have. */
    private boolean isLoose(Defect defect, int pin) {
        return defect instanceof Defect.Unseated loose
                && loose.unit() == wiring.unitOf(pin)
                && loose.plug() == wiring.plugIndex(pin);
    }

    private Prediction seen(Candidate candidate, FieldTest test, Signature seen) {
        if (test instanceof FieldTest.Answers at) {
            return answers(seen, name(at.unit()));
        }
        if (test instanceof FieldTest.Light at) {
            return sure(Classes.LIGHT, seen.dark().contains(name(at.unit())) ? "dark" : "lit");
        }
        if (test instanceof FieldTest.SupplyCurrent) {
            return current(candidate);
        }
        if (test instanceof FieldTest.LegVolts at) {
            return sure(Classes.LEG, levels.leg(candidate, seen, at.pin()));
        }
        if (test instanceof FieldTest.LegSign at) {
            return sure(Classes.SIGN, levels.sign(candidate, seen, at.high(), at.low()));
        }
        if (test instanceof FieldTest.WireVolts at) {
            List<Change> pulled = BusMeter.of(circuit).pulled(at.unit(), at.plug());
            return sure(Classes.WIRES, levels.wires(candidate, seen, pulled, at.unit(), at.plug()));
        }
        return tried(candidate, test, seen);
    }

    private static Prediction answers(Signature seen, String unit) {
        return sure(
                Classes.ANSWERS,
                seen.silent().contains(unit) ? "silent" : seen.erratic().contains(unit) ? "comes and goes" : "answers");
    }

    private Prediction current(Candidate candidate) {
        double right = rest().packAmps().orElse(0);
        double now = rest().packAmps(candidate).orElse(right);
        return sure(Classes.CURRENT, Classes.current(now, right), String.format(Locale.ROOT, "%.2f A", now));
    }

    private Prediction tried(Candidate candidate, FieldTest test, Signature seen) {
        if (test instanceof FieldTest.Unplug at) {
            return sure(Classes.RECOVER, recovers(candidate, seen, at) ? "rest recovers" : "no change");
        }
        if (test instanceof FieldTest.ReadSettings at) {
            return sure(Classes.RECORD, setWrong(candidate.defect(), at.unit()) ? "differs" : "as record");
        }
        if (test instanceof FieldTest.Look at) {
            return look(candidate, at);
        }
        if (test instanceof FieldTest.RingLead at) {
            return sure(Classes.RING, rings(candidate.defect(), at.lead()));
        }
        if (test instanceof FieldTest.SwapLead at) {
            boolean lead = candidate.repair().object().equals(at.lead())
                    || (candidate.rows().contains(at.lead()) && plug(candidate.kind()));
            return sure(Classes.SWAP, lead ? "works" : "as before");
        }
        int unit = test instanceof FieldTest.SwapUnit swap ? swap.unit() : ((FieldTest.BenchUnit) test).unit();
        return sure(Classes.SWAP, inUnit(candidate.defect(), unit) ? "works" : "as before");
    }

    /** What is wrong in the lead itself; what is wrong with how it is plugged does not show. */
    private String rings(Defect defect, String lead) {
        if (defect instanceof Defect.Open open
                && open.wires().stream().anyMatch(wire -> wire.lead().id().equals(lead))) {
            return "open";
        }
        if (defect instanceof Defect.Crossed crossed
                && crossed.one().lead().id().equals(lead)) {
            return "exchanged";
        }
        boolean touching = defect instanceof Defect.Shorted touch && isEnd(touch.a(), lead) && isEnd(touch.b(), lead);
        return touching ? "touching" : "as listed";
    }

    private boolean isEnd(int vertex, String lead) {
        return wiring.wires().stream()
                .anyMatch(
                        wire -> wire.lead().id().equals(lead) && (wire.fromEnd() == vertex || wire.toEnd() == vertex));
    }

    /** A new lead is plugged anew: what was not seated, or in the wrong socket, is then right. */
    private static boolean plug(FaultKind kind) {
        return kind == FaultKind.NOT_SEATED || kind == FaultKind.WRONG_PORT || kind == FaultKind.POOR_CONTACT;
    }

    private static boolean inUnit(Defect defect, int unit) {
        return (defect instanceof Defect.Inside in && in.unit() == unit)
                || (defect instanceof Defect.HoldsBus holds && holds.unit() == unit)
                || (defect instanceof Defect.PassThroughOpen open && open.unit() == unit)
                || (defect instanceof Defect.SourceDown down && down.source().unit() == unit)
                || (defect instanceof Defect.SourceSags sags && sags.source().unit() == unit);
    }

    private static boolean setWrong(Defect defect, int unit) {
        return (defect instanceof Defect.SameAddress same && (same.unit() == unit || same.other() == unit))
                || (defect instanceof Defect.WrongSetting wrong && wrong.unit() == unit);
    }

    /** The rest is all that was not steady or silent and does not hang on the pulled plug. */
    private boolean recovers(Candidate candidate, Signature seen, FieldTest.Unplug at) {
        Signature without = Behaviour.of(circuit).unplugged(candidate, at.unit(), at.plug());
        Set<String> gone = Behaviour.of(circuit).beyond(at.unit(), at.plug());
        return better(seen.silent(), without.silent(), gone) || better(seen.erratic(), without.erratic(), gone);
    }

    private static boolean better(Set<String> before, Set<String> after, Set<String> gone) {
        return before.stream().anyMatch(unit -> !after.contains(unit) && !gone.contains(unit));
    }

    private Prediction look(Candidate candidate, FieldTest.Look at) {
        String plug = wiring.plugName(at.unit(), at.plug());
        double chance = 0;
        if (candidate.defect() instanceof Defect.Unseated loose) {
            chance = loose.unit() == at.unit() && loose.plug() == at.plug() ? HALF_SEEN : 0;
        } else if (candidate.defect() instanceof Defect.WrongSocket wrong) {
            boolean here = (wrong.unit() == at.unit() && wrong.plug() == at.plug())
                    || (wrong.otherUnit() == at.unit() && wrong.otherPlug() == at.plug());
            chance = here ? MARK_SEEN : 0;
        } else if (candidate.defect() instanceof Defect.Crossed crossed) {
            boolean here = wiring.name(crossed.one().toPin()).startsWith(plug + "-");
            chance = here ? SWAP_SEEN : 0;
        }
        double seen = Math.max(chance, Classes.MISREAD);
        return new Prediction(seen >= 0.5 ? "seen" : "nothing", Classes.likely(Classes.LOOK, "seen", seen));
    }
}
