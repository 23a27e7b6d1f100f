package ringout.compare.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import ringout.compare.match.Match;
import ringout.graph.Circuit;

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
        int[] net = new int[match.base().pinCount()];
        int[] image = new int[match.base().pinCount()];
        for (int pin = 0; pin < net.length; pin++) {
            int twin = match.pin(pin);
            net[pin] = twin < 0 ? -1 : here.nets().of(pin);
            image[pin] = twin < 0 ? -1 : there.nets().of(twin);
        }
        return new NetPartition(
                pieces(match, net, image, here.nets().count()),
                pieces(match, image, net, there.nets().count()));
    }

    /** The nets whose contacts have several images, each by its first contact of every image. */
    private static List<List<String>> pieces(Match match, int[] net, int[] image, int count) {
        int[] first = new int[count];
        Arrays.fill(first, -1);
        Map<Integer, Map<Integer, Integer>> split = new LinkedHashMap<>();
        for (int pin = 0; pin < net.length; pin++) {
            if (net[pin] >= 0 && first[net[pin]] < 0) {
                first[net[pin]] = pin;
            } else if (net[pin] >= 0 && image[pin] != image[first[net[pin]]]) {
                int start = first[net[pin]];
                Map<Integer, Integer> pieces = split.computeIfAbsent(net[pin], key -> new LinkedHashMap<>());
                pieces.putIfAbsent(image[start], start);
                pieces.putIfAbsent(image[pin], pin);
            }
        }
        List<List<String>> named = new ArrayList<>();
        split.values()
                .forEach(pieces -> named.add(
                        pieces.values().stream().map(match.base()::name).toList()));
        return named;
    }
}
