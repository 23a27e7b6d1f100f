package ringout.compare.find;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Kind;
import ringout.compare.difference.Touched;
import ringout.compare.find.LeadFinder.Moved;

/** Leads with moved ends; two that took each other's place are one difference. */
final class Exchanges {
    private Exchanges() {}

    static List<Difference> of(List<Moved> moved) {
        List<Difference> found = new ArrayList<>();
        Set<Moved> done = new HashSet<>();
        for (int i = 0; i < moved.size(); i++) {
            Moved one = moved.get(i);
            if (done.add(one)) {
                Optional<Moved> twin = moved.subList(i + 1, moved.size()).stream()
                        .filter(other -> !done.contains(other) && exchanged(one, other))
                        .findFirst();
                twin.ifPresent(done::add);
                found.add(twin.map(other -> together(one, other)).orElseGet(() -> alone(one)));
            }
        }
        return found;
    }

    private static boolean exchanged(Moved one, Moved other) {
        return one.left().size() == 1
                && one.left().equals(other.taken())
                && one.taken().equals(other.left());
    }

    private static Difference alone(Moved one) {
        String id = one.pair().base().id();
        return new Difference(
                Kind.END_MOVED,
                id,
                id,
                String.join(" and ", one.left()),
                String.join(" and ", one.taken()),
                List.of(),
                List.of(Scene.place(one.pair().base())),
                List.of(Scene.place(one.pair().other())),
                Set.of(id),
                touched(one));
    }

    private static Touched touched(Moved one) {
        return LeadFinder.touched(
                List.of(one.pair().base()),
                List.of(one.pair().other()),
                one.ways().gone(),
                one.ways().added());
    }

    private static Difference together(Moved one, Moved twin) {
        String a = one.pair().base().id();
        String b = twin.pair().base().id();
        return new Difference(
                Kind.ENDS_EXCHANGED,
                a,
                a + " and " + b,
                a + " at " + String.join(" and ", one.left()) + ", " + b + " at " + String.join(" and ", twin.left()),
                a + " at " + String.join(" and ", one.taken()) + ", " + b + " at " + String.join(" and ", twin.taken()),
                List.of(),
                List.of(Scene.place(one.pair().base()), Scene.place(twin.pair().base())),
                List.of(Scene.place(one.pair().other()), Scene.place(twin.pair().other())),
                Set.of(a, b),
                touched(one).with(touched(twin)));
    }
}
