package ringout.check.redundancy;

import java.util.ArrayList;
import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.model.AircraftFunction;
import ringout.model.Datum;

/**
 * A function that can be lost without anybody noticing.
 *
 * <p>Why it matters: a protection that nobody sees go is believed in until the day it is needed.
 *
 * <p>Condition: no indication is listed for a function, none of a unit type aboard is listed as telling of it, and no pre-flight
 * step shows it ("n/a"); or all its indications are switched off by a setting. S2 for a protection, S3 for another function.
 *
 * <p>Does not see: whether the crew looks; indications that die with what they tell of.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "R09",
        name = "silent-loss",
        severity = Severity.S2,
        since = "0.3",
        needs = {"indications of each function and which are switched off", "pre-flight step of each function"})
public final class SilentLoss implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        if (!Shown.begun(at)) {
            return;
        }
        List<String> unsaid = new ArrayList<>();
        for (AircraftFunction function : at.aircraft().functions()) {
            Datum<String> step = function.preflight();
            if (Shown.indicated(at, function) || step.isKnown()) {
                out.looked();
            } else if (step instanceof Datum.Unknown
                    || (step.isMissing() && function.indications().isEmpty())) {
                unsaid.add(function.name());
            } else {
                out.finding(draft(function));
            }
        }
        if (!unsaid.isEmpty()) {
            out.cannotTell(
                    "what shows the loss of " + String.join(", ", unsaid),
                    "take it away on the bench and write down what changes, or n/a when nothing does",
                    5 * unsaid.size(),
                    unsaid.toArray(new String[0]));
        }
    }

    private static Draft draft(AircraftFunction function) {
        boolean protection = function.protection().is(true);
        boolean off = !function.indications().isEmpty();
        return Draft.of(
                        protection ? Severity.S2 : Severity.S3,
                        "silent loss: nobody sees when " + function.name() + " is lost")
                .about("function " + function.name())
                .at(new Place(function.at(), function.name(), "function " + function.name()))
                .sum(
                        off
                                ? "switched off by a setting: " + String.join(", ", function.indicationsOff())
                                        + "; pre-flight step: none"
                                : "indications: none; pre-flight step: none")
                .why(
                        protection
                                ? "a protection that nobody sees go is believed in until it is needed"
                                : "it is found missing in the air")
                .fix((off ? "switch on " + String.join(", ", function.indicationsOff()) + ", or add" : "add")
                        + " a pre-flight step that shows " + function.name())
                .cause("function " + function.name() + " silent");
    }
}
