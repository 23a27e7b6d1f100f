package ringout.present.text;

/** Lines of a text with a name in front, wrapped at blanks. */
final class Lines {
    private static final int NAME = 9;
    private static final int WIDTH = 110;

    private final StringBuilder text = new StringBuilder();

    Lines() {}

    /** A line as it is. */
    Lines line(String words) {
        text.append(words).append('\n');
        return this;
    }

    /** A named line; nothing when there are no words. */
    Lines field(String name, String words) {
        return words.isEmpty() ? this : hanging("  " + name, NAME + 2, words);
    }

    /** Words behind a name, the following lines under the first word. */
    Lines hanging(String name, int indent, String words) {
        String start = name.length() < indent ? name + " ".repeat(indent - name.length()) : name + " ";
        StringBuilder line = new StringBuilder(start);
        boolean empty = true;
        for (String word : words.split(" ")) {
            if (!empty && line.length() + 1 + word.length() > WIDTH) {
                text.append(line).append('\n');
                line = new StringBuilder(" ".repeat(indent));
                empty = true;
            }
            line.append(empty ? "" : " ").append(word);
            empty = false;
        }
        text.append(line).append('\n');
        return this;
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
