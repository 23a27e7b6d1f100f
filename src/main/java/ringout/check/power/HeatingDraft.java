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

/** Writes the finding that a peak heats a lead too much. */
final class HeatingDraft {
    private HeatingDraft() {}

    /** A peak in a conductor; how long it lasts is known. */
    static Draft of(Situation at, Wire wire, OwnPeaks peaks, OwnPeaks.Peak peak) {
        Draft draft = draft(
                at,
                wire,
                Math.abs(peak.flow().amps(wire)),
                peaks.seconds(wire, peak.of()).orElseThrow(),
                peak.of());
        ParallelReturn.tell(at, peak.flow(), wire, draft);
        return draft;
    }

    private static Draft draft(Situation at, Wire wire, double amps, double seconds, PeakCase of) {
        WireRules rules = WireRules.of(at.aircraft());
        Ampacity carries = rules.ampacity(wire);
        Threshold rise = at.limit(Thresholds.PEAK_RISE);
        String id = wire.lead().id();
        String peak = Figures.of(amps) + " A for " + Figures.of(seconds) + " s";
        String most = (carries.isKnown() ? "" : "at most ") + Figures.of(carries.high()) + " A";
        double area = wire.areaMm2().or(1.0);
        double kelvin = ShortTimeHeating.kelvin(amps, area, seconds);
        boolean brief = seconds <= at.limit(Thresholds.PEAK_BRIEF).value();
        Draft draft = Draft.of(
                        Severity.S2,
                        "lead too thin for its peak: " + id + " gets " + peak
                                + (brief ? ", which heats it by " + Figures.of(kelvin) + " K" : ", carries " + most))
                .about(id)
                .path(at.circuit().trail(wire.fromPin(), wire.toPin()).orElse(Trail.NONE))
                .sum(Figures.of(amps) + " A, " + of.words() + "; " + rules.words(wire) + " " + most + ", by "
                        + rules.title() + "; 4.99e-15 x (" + Figures.of(amps) + " A / " + Figures.of(area)
                        + " mm2)2 x " + Figures.of(seconds) + " s = " + Figures.of(kelvin) + " K with no heat given off"
                        + (brief ? ", limit " + Figures.of(rise.value()) + " K" : ""))
                .input(wire.areaMm2())
                .why("the insulation softens while the peak lasts; at average current nothing of it shows")
                .meter("clamp a meter around " + id + ", peak hold, " + of.words() + ": " + Figures.of(amps) + " A")
                .fix("thicker " + id + ": for " + Figures.of(amps) + " A")
                .at(wire.lead());
        return brief
                ? draft.judged(kelvin, rise.value(), "K", rise.source())
                : draft.judged(amps, carries.high(), "A", rules.currentSource())
                        .onAssumption(!Overload.over(amps, carries.high() * Ampacity.bonusLeft(wire)));
    }
}
