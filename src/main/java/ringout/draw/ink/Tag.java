package ringout.draw.ink;

import java.util.ArrayList;
import java.util.List;

/**
 * What a piece of ink stands for.
 *
 * @param classes class names separated by blanks, such as {@code wire}; may be empty
 * @param id identifier within the sheet, already safe for XML; empty for none
 * @param data further facts, in order
 * @param title what it is in words; empty for none
 * @param description more words; empty for none
 */
public record Tag(String classes, String id, List<Fact> data, String title, String description) {
    /** A fact: attribute {@code data-name}. */
    public record Fact(String name, String value) {}

    /** Ink that stands for nothing by itself. */
    public static final Tag NONE = of("");

    /** Keeps an unmodifiable copy of the facts. */
    public Tag {
        data = List.copyOf(data);
    }

    /** {@return a tag with class names only} */
    public static Tag of(String classes) {
        return new Tag(classes, "", List.of(), "", "");
    }

    /** {@return this tag with an identifier made from a prefix and any text} */
    public Tag withId(String prefix, String text) {
        return new Tag(classes, prefix + "-" + safe(text), data, title, description);
    }

    /** {@return this tag with one more fact} */
    public Tag with(String name, String value) {
        List<Fact> more = new ArrayList<>(data);
        more.add(new Fact(name, value));
        return new Tag(classes, id, more, title, description);
    }

    /** {@return this tag with words} */
    public Tag titled(String newTitle, String newDescription) {
        return new Tag(classes, id, data, newTitle, newDescription);
    }

    /** Letters, digits, dots and dashes stay; anything else becomes _hex_, so that different texts stay different. */
    private static String safe(String text) {
        StringBuilder safe = new StringBuilder();
        for (int c : text.codePoints().toArray()) {
            boolean plain = c < 128 && (Character.isLetterOrDigit(c) || c == '.' || c == '-');
            if (plain) {
                safe.appendCodePoint(c);
            } else {
                safe.append('_').append(Integer.toHexString(c)).append('_');
            }
        }
        return safe.toString();
    }
}
