package ringout.check.installation;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import ringout.check.form.Figures;
import ringout.check.form.Threshold;
import ringout.finding.Draft;
import ringout.finding.Severity;

/** Words what is wrong between antennas. */
final class AntennaDraft {
    private static final double MM_IN_M = 1000;

    private AntennaDraft() {}

    static Draft close(Aerial sender, Aerial other, double apart, Threshold limit) {
        String what = sender.sharesBand(other)
                ? other.ref() + " in the same band"
                : other.satellite() ? "the satellite receiver " + other.ref() : "the compass of " + other.ref();
        return Draft.of(
                        Severity.S3,
                        "antenna too close: " + sender.ref() + " transmits " + Figures.of(apart) + " mm from " + what)
                .about(sender.ref(), other.ref())
                .at(sender.unit(), "position")
                .seen(other.unit())
                .sum(sender.bands() + "; " + Figures.of(apart) + " mm apart, limit " + Figures.of(limit.value()) + " mm"
                        + (other.satellite() ? coupling(apart) : ""))
                .judged(apart, limit.value(), "mm", limit.source())
                .why(
                        other.satellite() || sender.sharesBand(other)
                                ? other.ref() + " hears " + sender.ref() + " instead of what it listens for"
                                : "the current of the transmitter turns the compass with every burst")
                .meter("watch " + other.ref() + " while " + sender.ref()
                        + " transmits at full power and while it is silent")
                .fix("put the antenna of " + sender.ref() + " at least " + Figures.of(limit.value()) + " mm from "
                        + other.ref());
    }

    static Draft harmonic(
            Aerial sender, List<Aerial> receivers, SatelliteBand.Harmonic harmonic, SatelliteBand satellite) {
        String names = receivers.stream().map(Aerial::ref).collect(Collectors.joining(", "));
        Draft draft = Draft.of(
                        Severity.S3,
                        (harmonic.times() == 1 ? "transmitter" : "harmonic") + " in a satellite band: " + harmonic
                                + " of " + sender.ref() + " falls into " + satellite + " of " + names)
                .about(sender.ref(), satellite.name())
                .about(receivers.stream().map(Aerial::ref).toList())
                .at(sender.unit(), "band")
                .sum(harmonic + ", satellite band " + satellite
                        + receivers.stream()
                                .map(other -> apart(sender, other, satellite))
                                .collect(Collectors.joining()))
                .source("ITU Radio Regulations, radio navigation by satellite")
                .why("satellite signals lie below the noise: the position is lost while " + sender.ref() + " transmits")
                .meter("carrier to noise at " + names + " while " + sender.ref()
                        + " transmits at full power and while it is silent: it must not fall")
                .fix("another band for " + sender.ref()
                        + ", or a low-pass filter at its antenna; and its antenna as far" + " from " + names
                        + " as it goes");
        receivers.forEach(other -> draft.seen(other.unit()));
        return draft;
    }

    private static String apart(Aerial sender, Aerial other, SatelliteBand satellite) {
        OptionalDouble apart = Apart.mm(sender.place(), other.place());
        return "; " + other.ref() + " "
                + (apart.isPresent() ? coupling(apart.getAsDouble(), satellite.centre()) : "at a distance not given");
    }

    private static String coupling(double apart) {
        return ", free space takes " + decibels(apart, SatelliteBand.L1.centre());
    }

    private static String coupling(double apart, double mhz) {
        return Figures.of(apart) + " mm away, free space takes " + decibels(apart, mhz);
    }

    private static String decibels(double apart, double mhz) {
        return String.format(
                Locale.ROOT,
                "20 log10(4 pi x %s m / %.3f m) = %.1f dB",
                Figures.of(apart / MM_IN_M),
                SatelliteBand.wavelengthMm(mhz) / MM_IN_M,
                SatelliteBand.couplingDb(apart, mhz));
    }
}
