package ringout.model.seal;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import ringout.model.Aircraft;

/**
 * The hash of an aircraft's data: SHA-256 (FIPS 180-4) over its {@link Canonical canonical} text. It does not change with
 * the form the data came in, nor with the order of the user's rows; it does with every value.
 *
 * @param hex 64 hexadecimal digits, lower case
 */
public record Seal(String hex) {
    private static final int MARK = 8;

    /**
     * Of the list and the plan: what drawings and sheets are made from. What is written on them afterwards is left out
     * (ticks, readings, signatures, photos, changes, differences, waivers, what units report, when a step was done), so that a
     * filled-in page still carries the mark of the list it was printed from.
     */
    public static Seal ofList(Aircraft aircraft) {
        return of(Canonical.list(aircraft));
    }

    /** Of everything, the record with its signatures included: what a frozen revision is verified by. */
    public static Seal ofAll(Aircraft aircraft) {
        return of(Canonical.all(aircraft));
    }

    /** The hash of a text, as UTF-8. */
    static Seal of(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return new Seal(HexFormat.of().formatHex(hash));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    /** The first eight digits, as printed on every page. */
    public String mark() {
        return hex.substring(0, Math.min(MARK, hex.length()));
    }
}
