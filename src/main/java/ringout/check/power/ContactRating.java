package ringout.check.power;

import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import ringout.check.form.Assumed;
import ringout.model.Datum;
import ringout.model.Origin;
import ringout.model.Plug;

/**
 * What one contact of a plug carries all day. The maker's figure where there is one; else only a figure taken from its size,
 * which is an assumption.
 *
 * @param amps rating in A
 * @param given whether the maker, a measurement or the list says so
 */
record ContactRating(double amps, boolean given) {
    /** Usual ratings of flat contacts by pitch in mm, in A: common practice, no source. */
    private static final Map<Double, Double> BY_PITCH = new TreeMap<>(Map.of(1.25, 1.0, 2.0, 2.0, 2.5, 3.0, 2.54, 3.0));

    /** Usual ratings of round contacts by diameter in mm, in A: common practice, no source. */
    private static final Map<Double, Double> BY_DIAMETER = new TreeMap<>(Map.of(3.5, 40.0, 4.0, 70.0, 5.5, 110.0));

    private static final Pattern MM = Pattern.compile("(\\d+(?:[.,]\\d+)?) ?mm");
    private static final double SERVO_A = 3;
    private static final double LEAST_A = 1;

    /** The rating of the contacts of a plug; a usual one counts as 20 % less, so that what it clears is clear without it; less than 1 A no contact carries. */
    static ContactRating of(Plug plug) {
        Datum<Double> said = plug.contactRatingA();
        if (said.isKnown()) {
            boolean given = said.source() != Origin.ASSUMED;
            return new ContactRating(said.or(0.0) * (given ? 1 : 1 - Assumed.MOVE), given);
        }
        String family = plug.family().or("").toLowerCase(Locale.ROOT);
        return new ContactRating(Math.max(LEAST_A, usual(family).orElse(LEAST_A) * (1 - Assumed.MOVE)), false);
    }

    private static OptionalDouble usual(String family) {
        Matcher mm = MM.matcher(family);
        boolean round = family.contains("round") || family.contains("bullet");
        Double amps = mm.find()
                ? (round ? BY_DIAMETER : BY_PITCH)
                        .get(Double.parseDouble(mm.group(1).replace(',', '.')))
                : null;
        if (amps == null) {
            return family.contains("servo") ? OptionalDouble.of(SERVO_A) : OptionalDouble.empty();
        }
        return OptionalDouble.of(amps);
    }
}
