package ringout.model.shape;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import ringout.model.Word;
import ringout.text.Nearest;

/** Values from closed lists, by any of their words. */
public final class Words {
    private static final Map<Class<?>, Map<String, Object>> TABLES = new ConcurrentHashMap<>();

    private Words() {}

    /** The value a word stands for. */
    public static Parsed parse(Class<?> type, String text) {
        Object value = table(type).get(fold(text));
        if (value != null) {
            return new Parsed.Good(value);
        }
        List<String> words = all(type);
        String hint = Nearest.hint(text, words);
        return new Parsed.Bad(
                "'" + text + "' is not one of " + String.join(", ", words), hint.isEmpty() ? "or write ?" : hint);
    }

    /** The words to write of a closed list. */
    public static List<String> all(Class<?> type) {
        List<String> words = new ArrayList<>();
        for (Object constant : type.getEnumConstants()) {
            words.add(((Word) constant).word());
        }
        return words;
    }

    private static Map<String, Object> table(Class<?> type) {
        Map<String, Object> known = TABLES.get(type);
        if (known == null) {
            known = new HashMap<>();
            for (Object constant : type.getEnumConstants()) {
                for (String word : ((Word) constant).words()) {
                    known.putIfAbsent(fold(word), constant);
                }
            }
            TABLES.put(type, known);
        }
        return known;
    }

    private static String fold(String word) {
        return word.toLowerCase(Locale.ROOT)
                .replace('_', ' ')
                .replace('\u2212', '-')
                .strip();
    }
}
