package ringout.check.signal;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.signal.SignalWays;
import ringout.model.AircraftFunction;
import ringout.model.Datum;
import ringout.model.UnitKind;
import ringout.model.UnitType;

/**
 * A failsafe whose trigger the acting unit cannot sense, or that has nothing to act through.
 *
 * <p>Why it matters: the action everyone counts on at loss of command, of the link, of the battery or at the fence never comes, and
 * nothing shows it before.
 *
 * <p>Condition: of a declared failsafe (a function with a trigger, or one named after receiver loss, link loss, low battery or
 * geofence) the triggering unit or the chain from it has no signal way to the unit that acts, one of the two is without supply, or
 * the unit that acts has no signal way to what follows it in the chain, nor to any speed controller, actuator or ejector. Asks what
 * happens at each of the four for which a unit is aboard and no function is declared.
 *
 * <p>Does not see: whether the action is switched on in the parameters; a failsafe that shares its failure (R08); silent loss (R09).
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "S22",
        name = "failsafe-chain",
        severity = Severity.S2,
        since = "0.1",
        needs = {"function table with trigger and acting unit of each failsafe"})
public final class FailsafeChain implements Check {
    /** The losses every aircraft must have an answer to, and a unit that can tell of each. */
    private enum Loss {
        RECEIVER("command receiver loss", "receiver"),
        LINK("link loss", "link"),
        BATTERY("low battery", "battery"),
        FENCE("geofence", "fence");

        private final String words;
        private final String key;

        Loss(String words, String key) {
            this.words = words;
            this.key = key;
        }

        private boolean named(String function) {
            boolean loss = this == FENCE || function.contains("loss") || function.contains("low");
            return loss && function.contains(key);
        }

        private boolean told(UnitType type) {
            return switch (this) {
                case RECEIVER -> type.kind().is(UnitKind.COMMAND_RECEIVER);
                case LINK ->
                    type.kind().is(UnitKind.RADIO)
                            && !type.emits().isEmpty()
                            && !type.receives().isEmpty();
                case BATTERY -> type.kind().is(UnitKind.MONITOR);
                case FENCE -> type.kind().is(UnitKind.SATELLITE_RECEIVER);
            };
        }
    }

    @Override
    public void look(Situation at, Outcomes out) {
        SignalWays ways = SignalWays.of(at.circuit());
        Map<Integer, Boolean> acts = new HashMap<>();
        Gaps gaps = new Gaps();
        for (AircraftFunction function : at.aircraft().functions()) {
            if (failsafe(function)) {
                look(at, out, ways, function, acts, gaps);
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("read it from the failsafe parameters of the flight controller", 5));
        undeclared(at, out);
    }

    private static boolean failsafe(AircraftFunction function) {
        String name = function.name().toLowerCase(Locale.ROOT);
        return function.trigger().isKnown()
                || function.actor().isKnown()
                || java.util.Arrays.stream(Loss.values()).anyMatch(loss -> loss.named(name));
    }

    private static void undeclared(Situation at, Outcomes out) {
        EnumSet<Loss> missing = EnumSet.allOf(Loss.class);
        for (AircraftFunction function : at.aircraft().functions()) {
            String name = function.name().toLowerCase(Locale.ROOT);
            missing.removeIf(loss -> loss.named(name));
        }
        boolean controller = false;
        TreeSet<String> open = new TreeSet<>();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            UnitType type = at.directory().type(unit);
            controller |= type.kind().is(UnitKind.CONTROLLER);
            for (Loss loss : missing) {
                if (loss.told(type)) {
                    open.add(loss.words);
                }
            }
        }
        if (controller && !open.isEmpty()) {
            out.cannotTell(
                    "failsafe action at " + String.join(", ", open),
                    "declare each as a function with its trigger and the unit that acts, as the parameters say",
                    5 * open.size(),
                    open.toArray(new String[0]));
        }
    }

    private static void look(
            Situation at,
            Outcomes out,
            SignalWays ways,
            AircraftFunction function,
            Map<Integer, Boolean> acts,
            Gaps gaps) {
        List<String> chain = function.chain();
        Datum<String> trigger = function.trigger().orElse(chain.isEmpty() ? Datum.notAsked() : Datum.of(chain.get(0)));
        Datum<String> actor =
                function.actor().orElse(chain.size() < 2 ? Datum.notAsked() : Datum.of(chain.get(chain.size() - 1)));
        if (trigger.isMissing()) {
            gaps.add("trigger", "failsafe " + function.name());
        }
        if (actor.isMissing()) {
            gaps.add("acting unit", "failsafe " + function.name());
        }
        if (!trigger.isKnown() || !actor.isKnown()) {
            return;
        }
        Optional<Integer> from = at.directory().find(trigger.or(""));
        Optional<Integer> to = at.directory().find(actor.or(""));
        if (from.isEmpty() || to.isEmpty()) {
            String nobody = from.isEmpty() ? trigger.or("") : actor.or("");
            out.finding(draft(function, nobody + " is not aboard")
                    .fix("correct " + nobody + " in the failsafe " + function.name())
                    .cause("function " + function.name()));
            return;
        }
        new FailsafeWays(at, ways, function, from.get(), to.get(), acts).look(out);
    }

    /** A finding about a failsafe, its fault in words. */
    static Draft draft(AircraftFunction function, String fault) {
        List<String> names = new ArrayList<>(function.chain());
        return Draft.of(Severity.S2, "failsafe chain: " + function.name() + " cannot act, " + fault)
                .about("failsafe " + function.name())
                .at(new Place(function.at(), function.name(), "function " + function.name()))
                .sum(fault + (names.isEmpty() ? "" : "; chain " + String.join(" to ", names)))
                .why("the action everyone counts on never comes, and nothing shows it before")
                .meter("propellers off: take the trigger away and see whether the ground station reports the action");
    }
}
