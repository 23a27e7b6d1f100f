package ringout.model.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads a path from the start of a text. */
final class PathText {
    private final String text;
    private int next;

    PathText(String text) {
        this.text = text;
    }

    /** The path, or nothing when the text does not start with one. */
    Optional<Path> path() {
        List<Path.Step> steps = new ArrayList<>();
        do {
            Optional<Path.Step> step = step();
            if (step.isEmpty()) {
                return Optional.empty();
            }
            steps.add(step.get());
        } while (take('.'));
        boolean ends = next == text.length() || Character.isWhitespace(text.charAt(next));
        return ends ? Optional.of(new Path(steps)) : Optional.empty();
    }

    /** What follows the path. */
    String rest() {
        return text.substring(next).strip();
    }

    private Optional<Path.Step> step() {
        int start = next;
        while (next < text.length() && Character.isLetterOrDigit(text.charAt(next))) {
            next++;
        }
        if (next == start) {
            return Optional.empty();
        }
        String field = text.substring(start, next);
        return take('[')
                ? pick().map(pick -> new Path.Step(field, pick))
                : Optional.of(new Path.Step(field, Path.Pick.NONE));
    }

    private Optional<Path.Pick> pick() {
        Optional<String> key = take('"') ? quoted() : Optional.of(until("#]"));
        int nth = 0;
        if (take('#')) {
            String digits = until("]");
            if (!digits.matches("[1-9]\\d{0,8}")) {
                return Optional.empty();
            }
            nth = Integer.parseInt(digits);
        }
        int number = nth;
        return take(']') ? key.map(word -> new Path.Pick(word, number, true)) : Optional.empty();
    }

    private Optional<String> quoted() {
        StringBuilder key = new StringBuilder();
        while (next < text.length()) {
            char c = text.charAt(next++);
            if (c == '"') {
                return Optional.of(key.toString());
            }
            key.append(c == '\\' && next < text.length() ? text.charAt(next++) : c);
        }
        return Optional.empty();
    }

    private String until(String ends) {
        int start = next;
        while (next < text.length() && ends.indexOf(text.charAt(next)) < 0) {
            next++;
        }
        return text.substring(start, next).strip();
    }

    private boolean take(char c) {
        if (next < text.length() && text.charAt(next) == c) {
            next++;
            return true;
        }
        return false;
    }
}
