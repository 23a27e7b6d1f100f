package ringout.model.edit;

import java.util.ArrayList;
import java.util.List;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.shape.Identity;
import ringout.model.shape.Scalars;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;
import ringout.text.Nearest;

/** Finds the record of a list that a path means. */
final class Pick {
    private Pick() {}

    /** The position of the record. */
    static Told<Integer> find(Shape<?> shape, List<?> list, Path.Pick pick) {
        if (pick.key().isEmpty() && pick.nth() > 0) {
            return pick.nth() <= list.size()
                    ? Told.right(pick.nth() - 1)
                    : Told.wrong("there is no number " + pick.nth(), "there are " + list.size());
        }
        List<Integer> matches = matches(shape, list, pick.key());
        if (pick.nth() > 0) {
            return pick.nth() <= matches.size()
                    ? Told.right(matches.get(pick.nth() - 1))
                    : Told.wrong("there is no number " + pick.nth(), "there are " + matches.size());
        }
        if (matches.isEmpty() && shape.key().isEmpty() && pick.key().matches("[1-9]\\d{0,8}")) {
            return find(shape, list, new Path.Pick("", Integer.parseInt(pick.key()), true));
        }
        if (matches.size() == 1) {
            return Told.right(matches.get(0));
        }
        return matches.isEmpty()
                ? missing(shape, list, pick.key())
                : Told.wrong(
                        "there are " + matches.size() + " of '" + pick.key() + "'",
                        "say which: [" + pick.key() + "#1]");
    }

    /** Whether a setting of a port that has none yet is meant: settings are only written where they differ. */
    static boolean createsSetting(Shape<?> shape, List<?> list, Path.Pick pick) {
        return shape.type() == PortSetting.class
                && pick.nth() == 0
                && matches(shape, list, pick.key()).isEmpty();
    }

    private static List<Integer> matches(Shape<?> shape, List<?> list, String key) {
        List<Integer> matches = new ArrayList<>();
        String wanted = Identity.fold(shape, key);
        for (int i = 0; i < list.size(); i++) {
            if (Identity.fold(shape, name(shape, list.get(i))).equals(wanted)) {
                matches.add(i);
            }
        }
        return matches.isEmpty() ? single(shape, list) : matches;
    }

    /** The one setting without a port name is the setting of the only port, whatever it is called. */
    private static List<Integer> single(Shape<?> shape, List<?> list) {
        boolean only = Identity.mayBeEmpty(shape)
                && list.size() == 1
                && name(shape, list.get(0)).isEmpty();
        return only ? List.of(0) : List.of();
    }

    /** Records without a key go by their first datum: a load by its rail, a rotor by its number. */
    private static String name(Shape<?> shape, Object record) {
        if (shape.key().isPresent()) {
            return Identity.key(shape, record);
        }
        Slot first = shape.slots().get(1);
        boolean names = first.type() == String.class || first.type() == Integer.class;
        return names && first.get(record) instanceof Datum.Known<?> known ? Scalars.write(known.value()) : "";
    }

    private static Told<Integer> missing(Shape<?> shape, List<?> list, String key) {
        List<String> names = list.stream().map(record -> name(shape, record)).toList();
        String near = Nearest.hint(key, names);
        String some = String.join(", ", names.subList(0, Math.min(12, names.size())));
        return Told.wrong("there is no '" + key + "'", near.isEmpty() ? "there is: " + some : near);
    }
}
