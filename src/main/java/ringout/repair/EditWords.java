package ringout.repair;

import java.util.List;
import java.util.Locale;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Word;
import ringout.model.edit.Edit;
import ringout.model.edit.Lookup;
import ringout.model.edit.Path;

/** An edit as a technician would say it: {@code terminator of LOG, port CAN2: on, now off}. */
final class EditWords {
    private EditWords() {}

    static String of(Aircraft aircraft, Edit edit) {
        String where = place(edit.path());
        if (edit instanceof Edit.Set set) {
            String then = value(set.value());
            String now = Lookup.of(aircraft, edit.path()).map(EditWords::value).orElse("");
            return where + ": " + (then.isEmpty() ? "empty" : then) + ", now " + (now.isEmpty() ? "empty" : now);
        }
        if (edit instanceof Edit.Add add && add.item() instanceof Lead lead) {
            return "new lead " + lead.id() + ": " + lead.from() + " to " + lead.to()
                    + lead.awg().known().map(awg -> ", " + awg + " AWG").orElse("");
        }
        return "leave out " + where;
    }

    private static String place(Path path) {
        List<Path.Step> steps = path.steps();
        StringBuilder words = new StringBuilder();
        for (int i = steps.size() - 1; i >= 0; i--) {
            Path.Step step = steps.get(i);
            String name =
                    step.pick().given() ? singular(step.field(), step.pick().key()) : spaced(step.field());
            words.append(words.length() == 0 ? "" : i == steps.size() - 2 ? " of " : ", ")
                    .append(name);
        }
        return words.toString();
    }

    private static String singular(String list, String key) {
        String one = list.equals("ports") ? "port " : list.equals("leads") || list.equals("units") ? "" : list + " ";
        return one + key;
    }

    /** {@code lengthMm} as {@code length mm}. */
    private static String spaced(String field) {
        return field.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }

    private static String value(Object value) {
        if (value instanceof Datum<?> datum) {
            return datum.known().map(EditWords::value).orElse("");
        }
        if (value instanceof List<?> list) {
            return String.join(" ", list.stream().map(String::valueOf).toList());
        }
        if (value instanceof Boolean yes) {
            return yes ? "yes" : "no";
        }
        if (value instanceof Double number && number == Math.rint(number)) {
            return String.valueOf(number.longValue());
        }
        return value instanceof Word told ? told.words().get(0) : String.valueOf(value);
    }
}
