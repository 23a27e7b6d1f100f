package ringout.check.redundancy;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.graph.Trail;
import ringout.graph.loss.Item;
import ringout.graph.loss.Items;
import ringout.graph.loss.Pair;
import ringout.graph.loss.SupplyLoss;
import ringout.graph.power.Consumer;
import ringout.graph.power.PowerGraph;
import ringout.model.Lead;
import ringout.model.Unit;

/** What the checks of redundant pairs have in common. */
final class Pairs {
    private static final int FEW = 8;

    private Pairs() {}

    /** Pairs of which both types are in the library. */
    static List<Pair> known(Situation at) {
        return Pair.of(at.circuit()).stream()
                .filter(pair -> at.directory().typeKnown(pair.a().unit())
                        && at.directory().typeKnown(pair.b().unit()))
                .toList();
    }

    /** Asks for the types of redundant units that are not in the library, and for those that nobody aboard answers to. */
    static void unknown(Situation at, Outcomes out) {
        Set<String> types = new TreeSet<>();
        Set<String> nobody = new TreeSet<>();
        for (Pair pair : Pair.of(at.circuit())) {
            for (Pair.Side side : List.of(pair.a(), pair.b())) {
                if (!at.directory().typeKnown(side.unit())) {
                    types.add(side.name());
                }
            }
        }
        for (Unit unit : at.aircraft().units()) {
            for (String name : unit.redundantWith()) {
                if (at.directory().find(name).isEmpty()) {
                    nobody.add(name);
                }
            }
        }
        ask(out, types, "unit type of ", "add its plugs and pins to the library", 10);
        ask(out, nobody, "redundant unit ", "correct its name, or add it to the units", 2);
    }

    private static void ask(Outcomes out, Set<String> names, String datum, String how, int minutes) {
        if (!names.isEmpty()) {
            out.cannotTell(datum + String.join(", ", names), how, minutes * names.size(), names.toArray(new String[0]));
        }
    }

    /** The names of items, the units among them left out where something of them is named as well. */
    static String names(Items items, List<Integer> common) {
        List<String> all =
                common.stream().map(items::item).map(Item::name).distinct().toList();
        return all.size() <= FEW
                ? String.join(", ", all)
                : all.stream().limit(FEW).collect(Collectors.joining(", ")) + " and " + (all.size() - FEW) + " more";
    }

    /** The leads of both sides on their ways up to a common item. */
    static List<Lead> leadsTo(Situation at, Pair pair, Items items, int common) {
        Set<Lead> found = new LinkedHashSet<>();
        SupplyLoss losses = SupplyLoss.of(at.circuit());
        for (Pair.Side side : List.of(pair.a(), pair.b())) {
            for (Consumer consumer : side.supplies()) {
                for (int item : losses.supply(consumer.plus())) {
                    Item one = items.item(item);
                    if (one.kind() == Item.Kind.LEAD) {
                        found.add(at.aircraft().leads().get(one.number()));
                    }
                    if (item == common) {
                        break;
                    }
                }
            }
        }
        return new ArrayList<>(found);
    }

    /** The way power takes to a side. */
    static Trail way(Situation at, Pair.Side side) {
        return side.supplies().stream()
                .flatMap(consumer -> PowerGraph.of(at.circuit()).tree().trailTo(consumer.plus()).stream())
                .findFirst()
                .orElse(Trail.NONE);
    }
}
