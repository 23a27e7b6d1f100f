package ringout.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import ringout.graph.order.Before;
import ringout.plan.cut.CheapestCut;
import ringout.plan.cut.Link;
import ringout.plan.task.TaskNet;

/** Finds the rings of a net of tasks and the cheapest way out of them. */
final class Rings {
    private final TaskNet net;
    private final Set<Integer> gone = new HashSet<>();
    private final List<Ring> rings = new ArrayList<>();
    private final boolean open;

    Rings(TaskNet net) {
        this.net = net;
        List<Link> links = net.links().stream()
                .map(link -> new Link(link.first(), link.then(), link.minutes()))
                .toList();
        Optional<List<Integer>> cut = CheapestCut.of(net.tasks().size(), links).links();
        open = cut.isPresent();
        gone.addAll(cut.orElse(List.of()));
        List<Before> left = cut.orElse(List.of()).stream().map(net.links()::get).toList();
        boolean paper = left.stream().allMatch(this::isPaper);
        left.stream()
                .filter(link -> paper || !isPaper(link))
                .forEach(link -> rings.add(ring(way(link.then(), link.first(), true), link, List.of(link))));
        if (!open) {
            hopeless();
        }
    }

    private boolean isPaper(Before link) {
        return link.minutes() <= TaskNet.PAPER_MINUTES;
    }

    /** All rings, each with what is done without. */
    List<Ring> rings() {
        return List.copyOf(rings);
    }

    /** Whether there is an order when the cuts are made. */
    boolean open() {
        return open;
    }

    /** The links that stay. */
    List<Before> kept() {
        List<Before> kept = new ArrayList<>();
        for (int link = 0; link < net.links().size(); link++) {
            if (!gone.contains(link)) {
                kept.add(net.links().get(link));
            }
        }
        return kept;
    }

    /** A ring none of whose needs can be done without. */
    private void hopeless() {
        for (Before link : net.links()) {
            if (Double.isInfinite(link.minutes())) {
                List<Before> back = way(link.then(), link.first(), false);
                if (!back.isEmpty()) {
                    rings.add(ring(back, link, List.of()));
                    return;
                }
            }
        }
    }

    private Ring ring(List<Before> way, Before closing, List<Before> cut) {
        List<Before> links = new ArrayList<>(List.of(closing));
        links.addAll(way);
        List<String> words = links.stream()
                .map(link -> net.tasks().get(link.first()).words() + " comes before "
                        + net.tasks().get(link.then()).words() + ": " + link.why())
                .toList();
        return new Ring(words, links, cut);
    }

    /** The way with the fewest links from a task to another; without the links that are cut, or over firm ones only. */
    private List<Before> way(int from, int to, boolean soft) {
        int[] cameBy = new int[net.tasks().size()];
        Arrays.fill(cameBy, -1);
        Deque<Integer> queue = new ArrayDeque<>(List.of(from));
        while (!queue.isEmpty()) {
            int here = queue.remove();
            for (int link = 0; link < net.links().size(); link++) {
                Before one = net.links().get(link);
                boolean usable =
                        one.first() == here && !gone.contains(link) && (soft || Double.isInfinite(one.minutes()));
                if (usable && cameBy[one.then()] < 0 && one.then() != from) {
                    cameBy[one.then()] = link;
                    queue.add(one.then());
                }
            }
        }
        List<Before> way = new ArrayList<>();
        for (int at = to; at != from; ) {
            if (cameBy[at] < 0) {
                return List.of();
            }
            Before link = net.links().get(cameBy[at]);
            way.add(0, link);
            at = link.first();
        }
        return way;
    }
}
