package ringout.check.power;

import ringout.check.form.Figures;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Trail;
import ringout.graph.Wire;
import ringout.graph.wire.Ampacity;
import ringout.solve.rating.WireRules;

/** Writes the finding that a thin conductor takes too much of a return. */
final class ReturnShareDraft {
    private ReturnShareDraft() {}

    static Draft of(Situation at, ReturnShare.Main of, Wire thin, ReturnShare.Share share) {
        Wire main = of.wire();
        WireRules rules = WireRules.of(at.aircraft());
        Ampacity carries = rules.ampacity(thin);
        Threshold part = at.limit(Thresholds.RETURN_SHARE);
        double limit = carries.high() * part.value() / 100;
        boolean sound = Overload.over(share.healthy(), limit);
        double amps = sound ? share.healthy() : share.worn();
        String unit = at.directory().name(of.need().unit());
        String id = thin.lead().id();
        String thick = main.lead().id();
        String worn = Figures.of(at.limit(Thresholds.RETURN_WORN).value()) + " mohm";
        return Draft.of(
                        at.flightCritical(unit) ? Severity.S2 : Severity.S3,
                        "return shared with a thin wire: " + id + " beside " + thick + " of " + unit + " takes "
                                + Figures.of(amps) + " A" + (sound ? "" : " once " + thick + " has " + worn + " more")
                                + ", should carry " + Figures.of(limit) + " A at most")
                .about(unit, id)
                .path(at.circuit().trail(thin.fromPin(), thin.toPin()).orElse(Trail.NONE))
                .sum(id + " " + Figures.of(share.healthy()) + " A, " + thick + " " + Figures.of(share.mainA())
                        + " A, all at their average; with " + worn + " more in one contact of " + thick + ", loop "
                        + Figures.of(1000 * share.ohm()) + " mohm: " + Figures.of(share.worn()) + " A; "
                        + rules.words(thin) + " " + Figures.of(carries.high()) + " A by " + rules.title() + ", x "
                        + Figures.of(part.value()) + " % = " + Figures.of(limit) + " A")
                .judged(amps, limit, "A", part.source())
                .input(thin.areaMm2())
                .input(thin.lengthMm())
                .input(main.lengthMm())
                .why("a signal wire carries the return of " + unit + "; it gets hot and lifts the 0V of the signal")
                .meter("power on, all at their average, clamp a meter around the 0V conductor of " + id + ": "
                        + Figures.of(share.healthy()) + " A by the list")
                .fix("a thicker or shorter " + thick + " with better contacts, or no second 0V of " + unit + " through "
                        + id)
                .at(thin.lead())
                .at(main.lead())
                .seen(at.directory().unit(of.need().unit()))
                .explains("P13", "P14", "P15", "P16");
    }
}
