package ringout.compare.judge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import ringout.compare.difference.Difference;
import ringout.compare.difference.Kind;
import ringout.finding.Finding;
import ringout.graph.Wire;

/**
 * Which difference a finding comes with: the one it names as its cause, else the one at its rows, else the one at its objects;
 * of several the one whose kind its family of checks looks at. Equal claims all count.
 */
final class Attribution {
    private static final int CAUSE = 8;
    private static final int ROW = 4;
    private static final int OBJECT = 2;
    private static final int NEAR = 1;
    private static final int FAMILY = 3;

    private final List<Difference> all;
    private final Map<String, List<Finding>> groups;
    private final Map<String, Integer> best = new HashMap<>();
    private final Map<Difference, Set<String>> names = new HashMap<>();

    /**
     * Knows the differences.
     *
     * @param groups the findings of one mistake, by the identity of each of them
     */
    Attribution(List<Difference> all, Map<String, List<Finding>> groups) {
        this.all = all;
        this.groups = groups;
        all.forEach(difference -> names.put(difference, names(difference)));
    }

    /** The findings of a list that come with a difference, the worst first. */
    List<Finding> of(Difference difference, List<Finding> findings) {
        List<Finding> claimed = new ArrayList<>();
        for (Finding finding : findings) {
            int claim = whole(difference, finding);
            if (claim > 0 && claim == best(finding)) {
                claimed.add(finding);
            }
        }
        claimed.sort(Comparator.comparing(Finding::severity));
        return claimed;
    }

    /** The findings no difference claims. */
    List<Finding> without(List<Finding> findings) {
        return findings.stream().filter(finding -> best(finding) == 0).toList();
    }

    private int best(Finding finding) {
        return best.computeIfAbsent(
                finding.id(),
                id -> all.stream().mapToInt(one -> whole(one, finding)).max().orElse(0));
    }

    /** The claim to a finding and to the mistake it is part of: whose headline names it owns what is folded under it. */
    private int whole(Difference difference, Finding finding) {
        int mistake = groups.getOrDefault(finding.id(), List.of()).stream()
                .mapToInt(one -> claim(difference, one))
                .max()
                .orElse(0);
        return mistake + claim(difference, finding);
    }

    private int claim(Difference difference, Finding finding) {
        int claim = 0;
        Set<String> known = names.getOrDefault(difference, Set.of());
        if (finding.causes().stream().anyMatch(difference.causes()::contains)) {
            claim += CAUSE;
        }
        if (finding.at().stream().anyMatch(place -> known.contains(place.row()))) {
            claim += ROW;
        }
        if (finding.objects().stream().anyMatch(object -> known.contains(object) || known.contains(first(object)))) {
            claim += OBJECT;
        } else {
            long near = finding.objects().stream()
                    .filter(object -> endsAt(difference, object))
                    .count();
            claim += NEAR * (int) Math.min(near, OBJECT);
        }
        boolean looks = looksAt(finding.code().charAt(0), difference.kind());
        return claim == 0 ? 0 : claim + (looks ? FAMILY : 0);
    }

    /** Whether a conductor it is about ends at a unit or plug. */
    private static boolean endsAt(Difference difference, String object) {
        return Stream.concat(difference.touched().before().stream(), difference.touched().after().stream())
                .flatMap(wire ->
                        Stream.of(wire.lead().from().text(), wire.lead().to().text()))
                .anyMatch(end -> end.startsWith(object)
                        && end.length() > object.length()
                        && "-.:/".indexOf(end.charAt(object.length())) >= 0);
    }

    private static String first(String object) {
        int end = object.indexOf('-');
        int colon = object.indexOf(':');
        int cut = end < 0 ? colon : colon < 0 ? end : Math.min(end, colon);
        return cut < 0 ? object : object.substring(0, cut);
    }

    private static Set<String> names(Difference difference) {
        Set<String> names = new TreeSet<>();
        names.addAll(difference.touched().units());
        names.addAll(difference.touched().unitsThere());
        names.addAll(difference.touched().leads());
        names.addAll(difference.touched().leadsThere());
        names.add(difference.object());
        difference.touched().before().forEach(wire -> ends(wire, names));
        difference.touched().after().forEach(wire -> ends(wire, names));
        return names;
    }

    private static void ends(Wire wire, Set<String> names) {
        names.add(wire.lead().from().text());
        names.add(wire.lead().to().text());
    }

    /** Whether a family of checks looks at what a kind of difference changes. */
    private static boolean looksAt(char family, Kind kind) {
        return switch (family) {
            case 'T' -> kind.ofConnections() || kind == Kind.TERMINATOR || kind == Kind.LENGTH || kind == Kind.BUS;
            case 'A' ->
                Set.of(Kind.ADDRESS, Kind.RATE, Kind.SETTING, Kind.ORIENTATION, Kind.BUS, Kind.FIRMWARE)
                        .contains(kind);
            case 'P' ->
                kind.ofConnections()
                        || Set.of(Kind.SIZE, Kind.LENGTH, Kind.FUSE, Kind.RATING, Kind.UNIT_TYPE, Kind.JOINT)
                                .contains(kind);
            case 'S' ->
                kind.ofConnections()
                        || Set.of(Kind.RATE, Kind.SETTING, Kind.PINOUT, Kind.UNIT_TYPE)
                                .contains(kind);
            case 'M' ->
                Set.of(Kind.LENGTH, Kind.POSITION, Kind.ORIENTATION, Kind.CONNECTOR, Kind.COLOUR, Kind.SIZE, Kind.JOINT)
                        .contains(kind);
            case 'R' -> kind.ofConnections() || kind == Kind.FUNCTION || kind == Kind.UNIT_TYPE;
            default -> kind == Kind.RECORD || kind == Kind.WAIVER || kind == Kind.LABEL;
        };
    }
}
