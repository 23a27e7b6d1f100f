package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;

/**
 * How far a transmitter is from a unit that minds it, as check M14 sees it.
 *
 * @param sender unit that transmits
 * @param bands its transmitter bands
 * @param other unit that receives, or holds a compass
 * @param apartMm distance in mm; empty when a position is missing
 * @param limitMm the least it should be, in mm
 * @param source of the limit
 */
public record AntennaDistance(
        String sender, String bands, String other, OptionalDouble apartMm, double limitMm, String source) {
    /** {@return every pair that minds each other} */
    public static List<AntennaDistance> of(Situation at) {
        List<Aerial> aerials = Aerial.all(at, new Gaps());
        List<AntennaDistance> distances = new ArrayList<>();
        for (Aerial sender : aerials) {
            for (Aerial other : aerials) {
                boolean twice = other.transmits()
                        && other.sharesBand(sender)
                        && other.ref().compareTo(sender.ref()) < 0;
                if (sender.transmits() && !other.ref().equals(sender.ref()) && !twice) {
                    AntennaTooClose.limit(at, sender, other)
                            .ifPresent(limit -> distances.add(new AntennaDistance(
                                    sender.ref(),
                                    sender.bands(),
                                    other.ref(),
                                    Apart.mm(sender.place(), other.place()),
                                    limit.value(),
                                    limit.source())));
                }
            }
        }
        return distances;
    }
}
