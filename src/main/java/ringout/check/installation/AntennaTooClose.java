package ringout.check.installation;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Band;

/**
 * A transmitter too near a receiver or a compass, or with a harmonic in a satellite band.
 *
 * <p>Why it matters: satellite signals lie below the noise: a transmitter next to the antenna, or a harmonic of one anywhere aboard,
 * costs the position, often only at full transmitting power in the air.
 *
 * <p>Formula: free space takes 20 log10(4 pi d/wavelength) dB between two antennas, which is 22 dB and 20 log10(d/wavelength); 25.9 dB at 0.3 m and 1575.42 MHz.
 *
 * <p>Condition: transmitter and satellite receiver closer than 300 mm, two units in one band closer than 500 mm, transmitter and
 * compass closer than 100 mm; or one to three times a transmitter band falls into 1559-1610, 1215-1240 or 1164-1189 MHz and a
 * satellite receiver aboard listens there.
 *
 * <p>Does not see: where on a unit its antenna sits, unless a coaxial lead leads to a unit of its own; gain and direction of antennas,
 * shielding by the frame, filters, noise of processors and switching regulators.
 *
 * <p>Reference: distances common practice, no source; bands by the ITU Radio Regulations; path loss by Friis, exact in free space.
 */
@CheckInfo(
        code = "M14",
        name = "antenna-too-close",
        severity = Severity.S3,
        since = "0.3",
        needs = {"transmitter and receiver bands", "position of units with antennas"})
public final class AntennaTooClose implements Check {
    private static final String RECEIVES = "bands received";

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        List<Aerial> aerials = Aerial.all(at, gaps);
        for (Aerial sender : aerials) {
            for (Aerial other : aerials) {
                if (sender.transmits() && !other.ref().equals(sender.ref())) {
                    distance(at, out, gaps, sender, other);
                }
            }
            for (Band band : sender.emits()) {
                SatelliteBand.ALL.forEach(satellite -> harmonic(out, gaps, aerials, sender, band, satellite));
            }
        }
        gaps.tell(out, AntennaTooClose::way);
    }

    private static void distance(Situation at, Outcomes out, Gaps gaps, Aerial sender, Aerial other) {
        if (other.transmits() && other.sharesBand(sender) && other.ref().compareTo(sender.ref()) < 0) {
            return; // told from the other side
        }
        Optional<Threshold> asked = limit(at, sender, other);
        if (asked.isEmpty()) {
            return;
        }
        Threshold limit = asked.get();
        OptionalDouble apart = Apart.mm(sender.place(), other.place());
        if (apart.isEmpty()) {
            Apart.unplaced(sender.place(), other.place()).forEach(ref -> gaps.add(Magnets.POSITION, ref));
        } else if (apart.getAsDouble() < limit.value()) {
            out.finding(AntennaDraft.close(sender, other, apart.getAsDouble(), limit));
        } else {
            out.looked();
        }
    }

    /** The distance a transmitter must keep from another unit; nothing when they do not mind each other. */
    static Optional<Threshold> limit(Situation at, Aerial sender, Aerial other) {
        if (sender.sharesBand(other)) {
            return Optional.of(at.limit(Thresholds.ANTENNA_SAME_BAND));
        }
        if (other.satellite()) {
            return Optional.of(at.limit(Thresholds.ANTENNA_SATELLITE));
        }
        return other.type().compass().is(true) ? Optional.of(at.limit(Thresholds.ANTENNA_COMPASS)) : Optional.empty();
    }

    private static void harmonic(
            Outcomes out, Gaps gaps, List<Aerial> aerials, Aerial sender, Band band, SatelliteBand satellite) {
        List<Aerial> receivers = aerials.stream()
                .filter(Aerial::satellite)
                .filter(other -> !other.ref().equals(sender.ref()))
                .toList();
        if (receivers.isEmpty()) {
            return;
        }
        var hit = satellite.hit(band.lowMhz().or(0.0), band.highMhz().or(0.0));
        if (hit.isEmpty()) {
            out.looked();
            return;
        }
        List<Aerial> disturbed = receivers.stream()
                .filter(other -> other.listens(satellite)
                        || (satellite.equals(SatelliteBand.L1)
                                && other.type().receives().isEmpty()))
                .toList();
        if (!disturbed.isEmpty()) {
            Draft draft = AntennaDraft.harmonic(sender, disturbed, hit.get(), satellite);
            out.finding(draft);
            return;
        }
        receivers.stream()
                .filter(other -> other.type().receives().isEmpty())
                .forEach(other -> gaps.add(RECEIVES, other.ref()));
    }

    private static Gaps.Way way(String datum) {
        return datum.equals(Magnets.POSITION)
                ? new Gaps.Way("measure it from the hub", 2)
                : new Gaps.Way("look them up in the maker's data", 5);
    }
}
