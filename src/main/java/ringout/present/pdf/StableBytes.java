package ringout.present.pdf;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Takes out of a PDF what would differ from run to run: its identity and the date of its description, which the formatter
 * takes from the clock, and the tags of embedded fonts, which it counts through a process. All are replaced by texts of equal length, so that every offset in
 * the file stays right.
 */
final class StableBytes {
    private static final Pattern IDENTITY = Pattern.compile("/ID \\[<([0-9A-F]{32})> <([0-9A-F]{32})>\\]");
    private static final Pattern WRITTEN =
            Pattern.compile("(<xmp:MetadataDate>)[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9]{2}:[0-9]{2}:[0-9]{2}");
    private static final String MOMENT = "2000-01-01T12:00:00";
    private static final Pattern TAG = Pattern.compile("/([A-Z]{6})(?=\\+[A-Za-z]+)");

    private StableBytes() {}

    static byte[] of(byte[] file) {
        String text = WRITTEN.matcher(tagged(new String(file, ISO_8859_1))).replaceFirst("$1" + MOMENT);
        Matcher identity = IDENTITY.matcher(text);
        if (!identity.find()) {
            throw new IllegalStateException("the formatter wrote a file without an identity");
        }
        String without = text.substring(0, identity.start()) + text.substring(identity.end());
        String print = print(without);
        return (text.substring(0, identity.start()) + "/ID [<" + print + "> <" + print + ">]"
                        + text.substring(identity.end()))
                .getBytes(ISO_8859_1);
    }

    private static String tagged(String text) {
        Map<String, String> tags = new LinkedHashMap<>();
        Matcher matcher = TAG.matcher(text);
        StringBuilder out = new StringBuilder(text.length());
        while (matcher.find()) {
            String tag = tags.computeIfAbsent(matcher.group(1), key -> "FACE" + letters(tags.size()));
            matcher.appendReplacement(out, "/" + tag);
        }
        return matcher.appendTail(out).toString();
    }

    private static String letters(int number) {
        return "" + (char) ('A' + number / 26 % 26) + (char) ('A' + number % 26);
    }

    private static String print(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(ISO_8859_1));
            return HexFormat.of().formatHex(digest).substring(0, 32).toUpperCase(Locale.ROOT);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
