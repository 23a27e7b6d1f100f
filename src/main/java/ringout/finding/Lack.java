package ringout.finding;

import java.util.List;

/**
 * What one undecided thing waits for: data of one kind, one an object. Where the words name the objects one by one
 * ({@code length of W1, W2}), each of them is a datum of its own; else the words as a whole are one.
 *
 * @param kind the words, with {@value #GAP} where the objects stand
 * @param objects the objects; one empty name where the words are one datum
 */
record Lack(String kind, List<String> objects) {
    private static final String GAP = "\u0000";

    static Lack of(CannotTell open) {
        List<String> objects = open.objects().stream().distinct().toList();
        String list = String.join(", ", objects);
        int at = list.isEmpty() ? -1 : open.missing().indexOf(list);
        return at < 0
                ? new Lack(open.missing(), List.of(""))
                : new Lack(
                        open.missing().substring(0, at) + GAP + open.missing().substring(at + list.length()), objects);
    }

    /** Name of the datum about one of the objects, the same for every check that lacks it. */
    String datum(String object) {
        return kind.replace(GAP, object);
    }

    /** The data about some of the objects in words. */
    String words(List<String> some) {
        return kind.replace(GAP, String.join(", ", some));
    }
}
