package ringout.check.installation;

import java.util.Locale;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A plug family as the trade writes it, with or without a number of poles before it: {@code 4-pole 1.25 mm}.
 *
 * @param series the family without the number of poles, in lower case
 * @param poles the number of poles, where it is written
 */
record Family(String series, OptionalInt poles) {
    private static final Pattern POLES = Pattern.compile("(\\d{1,3})[ -]?(?:pole|way|pin|position)s?\\b[ -]?(.*)");

    /** Reads a family. */
    static Family of(String text) {
        String plain = text.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
        Matcher matcher = POLES.matcher(plain);
        return matcher.matches()
                ? new Family(matcher.group(2), OptionalInt.of(Integer.parseInt(matcher.group(1))))
                : new Family(plain, OptionalInt.empty());
    }
}
