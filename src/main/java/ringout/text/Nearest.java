package ringout.text;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/** Finds the name a mistyped one most likely means. Never corrects by itself: it only feeds a hint. */
public final class Nearest {
    private static final int LONGEST = 64;

    private Nearest() {}

    /**
     * The candidate with the fewest edits (Levenshtein, case and separators ignored), when it is near enough: at most
     * a third of the letters, and at least one edit allowed.
     */
    public static Optional<String> to(String word, Collection<String> candidates) {
        if (word.length() > LONGEST) {
            return Optional.empty();
        }
        String plain = plain(word);
        String best = "";
        int fewest = Math.max(1, plain.length() / 3) + 1;
        for (String candidate : candidates) {
            if (Math.abs(candidate.length() - word.length()) > fewest + 3 || candidate.length() > LONGEST) {
                continue;
            }
            int edits = edits(plain, plain(candidate));
            if (edits < fewest) {
                fewest = edits;
                best = candidate;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(best);
    }

    /** "did you mean X?" or nothing. */
    public static String hint(String word, Collection<String> candidates) {
        return to(word, candidates).map(name -> "did you mean " + name + "?").orElse("");
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[\\s_\\-.:/]", "");
    }

    private static int edits(String a, String b) {
        int[] above = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swap = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(swap, Math.min(above[j], row[j - 1]) + 1);
            }
            int[] spare = above;
            above = row;
            row = spare;
        }
        return above[b.length()];
    }
}
