package ringout.check.redundancy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.Wiring;
import ringout.graph.loss.Passage;
import ringout.graph.signal.NetRoles;
import ringout.model.AircraftFunction;
import ringout.model.Datum;
import ringout.model.SafeDefault;
import ringout.model.UnitKind;

/**
 * A failsafe that shares the failure it is there for.
 *
 * <p>Why it matters: the parachute that the controller fires does not open when the controller is what failed.
 *
 * <p>Condition: the unit whose loss triggers an action lies on every way of the supply or of the return of the unit that acts (a
 * dominator), or alone drives its input, and that input does nothing when its signal is gone. An input that acts on loss of signal is
 * what is wanted; a controller that notices the absence itself needs no signal, and a monitor triggers by what it measures. S2 for flight termination: an ejector that
 * acts, or a function named after termination or parachute.
 *
 * <p>Does not see: an action inside one box; parameters that switch it off.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "R08",
        name = "failsafe-shares-failure",
        severity = Severity.S2,
        since = "0.3",
        needs = {"function table with trigger and actor", "what the input of the actor does when its signal is gone"})
public final class FailsafeSharesFailure implements Check {
    private static final List<String> TERMINATION = List.of("terminat", "parachute", "recovery", "cut-off", "kill");

    @Override
    public void look(Situation at, Outcomes out) {
        for (AircraftFunction function : at.aircraft().functions()) {
            if (function.trigger().isKnown() && function.actor().isKnown()) {
                Optional<Integer> trigger =
                        at.directory().find(function.trigger().or(""));
                Optional<Integer> actor = at.directory().find(function.actor().or(""));
                if (trigger.isPresent()
                        && actor.isPresent()
                        && !trigger.equals(actor)
                        && !measures(at, trigger.get())
                        && at.circuit().aboard(trigger.get())
                        && at.circuit().aboard(actor.get())) {
                    judge(at, out, function, trigger.get(), actor.get());
                }
            } else if (asked(function.trigger(), function.actor()) || asked(function.actor(), function.trigger())) {
                out.cannotTell(
                        (function.trigger().isKnown() ? "acting unit" : "trigger") + " of " + function.name(),
                        "read it from the failsafe parameters",
                        5,
                        function.name());
            }
        }
    }

    /** Whether a unit triggers by what it measures, not by its loss. */
    private static boolean measures(Situation at, int unit) {
        return !at.directory().isJoint(unit) && at.directory().type(unit).kind().is(UnitKind.MONITOR);
    }

    private static boolean asked(Datum<String> unknown, Datum<String> other) {
        return unknown instanceof Datum.Unknown && !other.isNotApplicable();
    }

    private static void judge(Situation at, Outcomes out, AircraftFunction function, int trigger, int actor) {
        if (!at.directory().typeKnown(actor)) {
            String name = at.directory().name(actor);
            out.cannotTell("unit type of " + name, "add its plugs and pins to the library", 10, name);
            return;
        }
        List<String> shared = new ArrayList<>();
        if (Passage.of(at.circuit()).needs(actor, trigger)) {
            shared.add("the supply or return of " + at.directory().name(actor) + " passes "
                    + at.directory().name(trigger));
        }
        boolean told = signal(at, out, trigger, actor, shared);
        if (!shared.isEmpty()) {
            out.finding(draft(at, function, trigger, actor, shared));
        } else if (told) {
            out.looked();
        }
    }

    /** Whether it could be told that the trigger alone drives an input of the actor that does nothing without it. */
    private static boolean signal(Situation at, Outcomes out, int trigger, int actor, List<String> shared) {
        Wiring wiring = at.wiring();
        if (!at.directory().isJoint(actor) && at.directory().type(actor).kind().is(UnitKind.CONTROLLER)) {
            return true;
        }
        boolean told = true;
        NetRoles roles = NetRoles.of(at.circuit());
        for (int pin = wiring.firstPin(actor); pin < wiring.endPin(actor); pin++) {
            if ((NetRoles.bit(wiring, pin) & NetRoles.RECEIVERS) == 0) {
                continue;
            }
            List<Integer> drivers = roles.pins(at.circuit().nets().of(pin), NetRoles.DRIVERS);
            boolean alone = !drivers.isEmpty() && drivers.stream().allMatch(driver -> dies(at, driver, trigger));
            Datum<SafeDefault> open = wiring.pin(pin).safeDefault();
            if (alone && open.isMissing()) {
                String name = wiring.name(pin);
                out.cannotTell(
                        "what " + name + " does when its signal is gone", "look it up in the maker's manual", 5, name);
                told = false;
            } else if (alone && !open.is(SafeDefault.UNSAFE)) {
                shared.add(wiring.name(pin) + " is driven by " + at.directory().name(wiring.unitOf(drivers.get(0)))
                        + " alone and stays still without it");
            }
        }
        return told;
    }

    /** Whether a driver goes with a unit: it is of it, or takes its supply through it. */
    private static boolean dies(Situation at, int driver, int trigger) {
        int unit = at.wiring().unitOf(driver);
        return unit == trigger || Passage.of(at.circuit()).needs(unit, trigger);
    }

    private static Draft draft(Situation at, AircraftFunction function, int trigger, int actor, List<String> shared) {
        String from = at.directory().name(trigger);
        String to = at.directory().name(actor);
        String name = function.name().toLowerCase(Locale.ROOT);
        boolean ends = at.directory().type(actor).kind().is(UnitKind.EJECTOR)
                || TERMINATION.stream().anyMatch(name::contains);
        Draft draft = Draft.of(
                        ends ? Severity.S2 : Severity.S3,
                        "failsafe shares its failure: " + function.name() + " is triggered by the loss of " + from
                                + ", and " + to + " cannot act without " + from)
                .about("failsafe " + function.name())
                .at(new Place(function.at(), function.name(), "function " + function.name()))
                .sum(String.join("; ", shared))
                .why("the action never comes on the day it is there for")
                .meter("propellers off, ejector made safe: take " + from + " away and see whether " + to + " acts")
                .fix("give " + to + " a supply that does not pass " + from
                        + ", and an input that acts when its signal is gone")
                .cause("failsafe " + function.name() + " shares");
        for (int unit : new int[] {trigger, actor}) {
            if (!at.directory().isJoint(unit)) {
                draft.seen(at.directory().unit(unit));
            }
        }
        return draft;
    }
}
