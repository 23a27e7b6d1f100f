package ringout.check.misplug;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import ringout.check.form.Gaps;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.graph.Wiring;
import ringout.model.Datum;
import ringout.model.Plug;

/** Finds the plugs that fit and reach another socket than their own: two exchanged, or one in a free socket. */
public final class LookAlikes {
    /** Names of the data it may lack. */
    public static final String KEY = "key code";

    /** Name of a datum it may lack. */
    public static final String HALF = "pins or sockets";

    /** Name of a datum it may lack. */
    public static final String FAMILY = "plug family";

    private final Situation at;
    private final Wiring wiring;
    private final Gaps gaps;
    private final Nearness near;
    private final List<Misplug> ways = new ArrayList<>();

    /** A socket with what decides whether a plug goes in. */
    private record Place(PlugBody body, Shell shell, Datum<String> key) {
        boolean keyMissing() {
            return key.isMissing();
        }
    }

    private LookAlikes(Situation at, Gaps gaps) {
        this.at = at;
        this.wiring = at.wiring();
        this.gaps = gaps;
        this.near = new Nearness(wiring, at.limit(Thresholds.PLUG_NEIGHBOUR).value(), gaps);
    }

    /** All ways to exchange plugs or to use a free socket; what is missing to tell is noted. */
    public static List<Misplug> all(Situation at, Gaps gaps) {
        LookAlikes found = new LookAlikes(at, gaps);
        found.collect();
        return found.ways;
    }

    private void collect() {
        List<PlugBody> bodies = PlugBody.all(wiring).stream()
                .filter(body -> at.circuit().aboard(body.unit()))
                .toList();
        Map<List<Object>, List<Place>> taken = new LinkedHashMap<>();
        bodies.forEach(body -> place(body)
                .ifPresent(place -> taken.computeIfAbsent(bucket(place), key -> new ArrayList<>())
                        .add(place)));
        Map<List<Object>, List<Place>> free = new LinkedHashMap<>();
        free(bodies)
                .forEach(body -> place(body)
                        .ifPresent(place -> free.computeIfAbsent(bucket(place), key -> new ArrayList<>())
                                .add(place)));
        taken.forEach((bucket, places) -> {
            for (int i = 0; i < places.size(); i++) {
                for (int j = i + 1; j < places.size(); j++) {
                    exchange(places.get(i), places.get(j));
                }
                for (Place socket : free.getOrDefault(bucket, List.of())) {
                    move(places.get(i), socket);
                }
            }
        });
    }

    private static List<Object> bucket(Place place) {
        return List.of(
                place.shell().family(), place.shell().positions(), place.shell().half());
    }

    private Optional<Place> place(PlugBody body) {
        Plug socket = body.socket(wiring);
        if (socket.family().isMissing()) {
            if (socket.pins().size() > 1) {
                gaps.add(FAMILY, body.name(wiring));
            }
            return Optional.empty();
        }
        if (socket.half() instanceof Datum.Unknown) {
            gaps.add(HALF, body.name(wiring));
            return Optional.empty();
        }
        Datum<String> key =
                socket.key().isKnown() ? socket.key() : body.leadKey(wiring).orElse(socket.key());
        return Shell.of(wiring, body.unit(), body.plug(), key).map(shell -> new Place(body, shell, key));
    }

    /** Sockets without a lead; a clamp is no socket. */
    private List<PlugBody> free(List<PlugBody> bodies) {
        Set<List<Integer>> used = new HashSet<>();
        bodies.forEach(body -> used.add(List.of(body.unit(), body.plug())));
        List<PlugBody> free = new ArrayList<>();
        for (int unit = 0; unit < wiring.directory().count(); unit++) {
            if (wiring.directory().isJoint(unit)
                    || !wiring.directory().typeKnown(unit)
                    || !at.circuit().aboard(unit)) {
                continue;
            }
            List<Plug> plugs = wiring.directory().type(unit).plugs();
            for (int plug = 0; plug < plugs.size(); plug++) {
                if (plugs.get(plug).pins().size() > 1
                        && plugs.get(plug).family().isKnown()
                        && !used.contains(List.of(unit, plug))) {
                    free.add(new PlugBody(unit, plug, List.of()));
                }
            }
        }
        return free;
    }

    private void exchange(Place one, Place other) {
        PlugBody a = one.body();
        PlugBody b = other.body();
        boolean sameSocket = a.unit() == b.unit() && a.plug() == b.plug();
        boolean sameLead = a.ends().stream().anyMatch(end -> b.ends().stream().anyMatch(far -> far.row() == end.row()));
        if (sameSocket || sameLead || !near.beside(a.unit(), b.unit())) {
            return;
        }
        boolean there = near.reaches(a, b.unit());
        boolean back = near.reaches(b, a.unit()); // both are asked, so that what is missing of either is told
        if (there && back && keyFits(one, other)) {
            MisplugMaker.exchange(at, a, b, words(one)).ifPresent(ways::add);
        }
    }

    private void move(Place one, Place socket) {
        if (near.beside(one.body().unit(), socket.body().unit())
                && near.reaches(one.body(), socket.body().unit())
                && keyFits(one, socket)) {
            MisplugMaker.move(at, one.body(), socket.body(), words(one)).ifPresent(ways::add);
        }
    }

    /** The kind of plug, as the list writes it. */
    private String words(Place place) {
        String family = place.body().socket(wiring).family().or("");
        return place.key().known().map(key -> family + " key " + key).orElse(family);
    }

    private boolean keyFits(Place one, Place other) {
        boolean missing = false;
        for (Place place : List.of(one, other)) {
            if (place.keyMissing()) {
                gaps.add(KEY, place.body().name(wiring));
                missing = true;
            }
        }
        return !missing && one.shell().key().equals(other.shell().key());
    }
}
