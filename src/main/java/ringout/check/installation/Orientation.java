package ringout.check.installation;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How a unit is turned, as a setting says it: {@code 0}, {@code yaw 90}, {@code roll 180 yaw 270}. A number alone is yaw.
 *
 * @param yaw bearing of the arrow from the nose in degrees, right positive
 * @param roll roll about the arrow in degrees
 * @param pitch pitch in degrees
 */
record Orientation(double yaw, double roll, double pitch) {
    private static final double FULL = 360;
    private static final double HALF = 180;
    private static final Pattern TURN = Pattern.compile(
            "\\s*(yaw|heading|roll|pitch|)\\s*[=:]?\\s*(-?\\d{1,3}(?:\\.\\d{1,2})?)\\s*(?:deg|°)?[,;]?");

    /** Reads a setting; nothing when it is not written so. */
    static Optional<Orientation> of(String text) {
        String left = text.strip().toLowerCase(Locale.ROOT);
        if (left.equals("none") || left.equals("nose")) {
            return Optional.of(new Orientation(0, 0, 0));
        }
        Orientation turned = new Orientation(0, 0, 0);
        Matcher matcher = TURN.matcher(left);
        int end = 0;
        while (end < left.length() && matcher.find() && matcher.start() == end) {
            turned = turned.with(matcher.group(1), Double.parseDouble(matcher.group(2)));
            end = matcher.end();
        }
        return end > 0 && end == left.length() ? Optional.of(turned) : Optional.empty();
    }

    private Orientation with(String axis, double degrees) {
        return switch (axis) {
            case "roll" -> new Orientation(yaw, degrees, pitch);
            case "pitch" -> new Orientation(yaw, roll, degrees);
            default -> new Orientation(degrees, roll, pitch);
        };
    }

    /** Angle between two directions in degrees, 0 to 180. */
    static double between(double a, double b) {
        double turn = Math.abs(a - b) % FULL;
        return turn > HALF ? FULL - turn : turn;
    }
}
