package ringout.compare.find;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.compare.match.Match;
import ringout.graph.Circuit;
import ringout.graph.Nets;

/**
 * The nets of two aircraft held against each other: a net of the base whose contacts lie on several nets of the other aircraft
 * is opened, a net of the other aircraft whose contacts lie on several nets of the base joins them. Linear in the contacts.
 *
 * @param opened nets of the base that fall apart, each by a contact of every piece
 * @param joined nets of the other aircraft that hold several of the base, each by a contact of every one
 */
public record NetPartition(List<List<String>> opened, List<List<String>> joined) {
    /** Keeps its own copies. */
    public NetPartition {
        opened = List.copyOf(opened);
        joined = List.copyOf(joined);
    }

    static NetPartition of(Match match, Circuit here, Circuit there) {
        Map<Integer, Map<Integer, Integer>> images = new LinkedHashMap<>();
        Map<Integer, Map<Integer, Integer>> origins = new LinkedHashMap<>();
        Nets nets = here.nets();
        Nets netsThere = there.nets();
        for (int pin = 0; pin < match.base().pinCount(); pin++) {
            int twin = match.pin(pin);
            if (twin >= 0) {
                int net = nets.of(pin);
                int image = netsThere.of(twin);
                images.computeIfAbsent(net, key -> new LinkedHashMap<>(2)).putIfAbsent(image, pin);
                origins.computeIfAbsent(image, key -> new LinkedHashMap<>(2)).putIfAbsent(net, pin);
            }
        }
        return new NetPartition(pieces(match, images), pieces(match, origins));
    }

    private static List<List<String>> pieces(Match match, Map<Integer, Map<Integer, Integer>> images) {
        Set<List<String>> pieces = new LinkedHashSet<>();
        for (Map<Integer, Integer> image : images.values()) {
            if (image.size() > 1) {
                pieces.add(image.values().stream().map(match.base()::name).toList());
            }
        }
        return new ArrayList<>(pieces);
    }
}
