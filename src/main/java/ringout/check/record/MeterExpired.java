package ringout.check.record;

import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.model.Datum;
import ringout.model.Instrument;
import ringout.model.Reading;

/**
 * A reading taken with a meter out of calibration.
 *
 * <p>Why it matters: nobody can say any more what the reading proves.
 *
 * <p>Condition: the day of a reading lies after the day until which its meter is calibrated. A meter marked n/a needs none.
 *
 * <p>Does not see: whether the meter is right.
 *
 * <p>Reference: common practice, no source; days as YYYY-MM-DD (ISO 8601).
 */
@CheckInfo(
        code = "X17",
        name = "meter-out-of-calibration",
        severity = Severity.S4,
        since = "0.3",
        needs = {"meter and day of each reading", "day until which the meter is calibrated"})
public final class MeterExpired implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        for (Reading reading : at.aircraft().record().readings()) {
            if (!reading.instrument().isNotApplicable()) {
                look(at, out, reading, gaps);
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("ask who measured, look at the label of the meter", 2));
    }

    private static void look(Situation at, Outcomes out, Reading reading, Gaps gaps) {
        String name = "reading " + reading.where();
        if (!reading.instrument().isKnown()) {
            gaps.add("meter", name);
            return;
        }
        String meter = reading.instrument().or("");
        Optional<Instrument> found = at.aircraft().record().instruments().stream()
                .filter(one -> one.name().strip().equalsIgnoreCase(meter.strip()))
                .findFirst();
        Datum<String> until = found.map(Instrument::calibratedUntil).orElse(Datum.unknown());
        if (until.isMissing()) {
            gaps.add("calibration", meter);
        } else if (until.isKnown() && reading.date().isMissing()) {
            gaps.add("day", name);
        } else if (until.isKnown() && reading.date().or("").compareTo(until.or("")) > 0) {
            out.finding(draft(reading, found.orElseThrow(), until.or("")));
        } else {
            out.looked();
        }
    }

    private static Draft draft(Reading reading, Instrument meter, String until) {
        String day = reading.date().or("");
        return Draft.of(
                        Severity.S4,
                        "meter out of calibration: " + meter.name() + " read " + reading.where() + " on " + day
                                + ", calibrated until " + until)
                .about(meter.name(), reading.where())
                .at(new Place(reading.at(), reading.where(), "reading " + reading.where()))
                .at(new Place(meter.at(), meter.name(), meter.name() + ": meter"))
                .cause("meter " + meter.name())
                .sum(day + " is after " + until)
                .why("nobody can say what the reading proves")
                .fix("have " + meter.name() + " calibrated, or take its readings again with another meter");
    }
}
