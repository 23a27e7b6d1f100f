package ringout.sheet.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.trace.candidate.PriorTable;
import ringout.trace.predict.Behaviour;
import ringout.trace.predict.ReadingBand;
import ringout.trace.predict.TestCard;
import ringout.trace.predict.TypedReading;
import ringout.trace.session.Diagnosis;
import ringout.trace.session.DialogueTree;
import ringout.trace.session.NextStep;
import ringout.trace.session.Scene;
import ringout.trace.session.TestPlaces;
import ringout.trace.session.Way;

/** Works out the search for the fault of every unit that can be silent, for a page that cannot compute. */
final class PageSearches {
    /** As deep as a dialogue usually goes to its stop. */
    private static final int TESTS = 5;

    /** Ways come to less often than this chance end with what would come next. */
    private static final double LEAST = 0.02;

    /** An aircraft with more units that respond than this has trees of fewer tests, so that the page stays light. */
    private static final int MANY = 60;

    private final Circuit circuit;
    private final Map<String, PageTest> tests = new LinkedHashMap<>();

    private PageSearches(Circuit circuit) {
        this.circuit = circuit;
    }

    static PageSearch of(Circuit circuit) {
        PageSearches searches = new PageSearches(circuit);
        List<PageFault> faults = searches.all();
        return new PageSearch(circuit.state().name(), faults, List.copyOf(searches.tests.values()));
    }

    private List<PageFault> all() {
        SortedSet<String> modules = Behaviour.of(circuit).modules();
        int deep = modules.size() > MANY ? TESTS - 2 : TESTS;
        Wiring wiring = circuit.wiring();
        List<PageFault> faults = new ArrayList<>();
        for (int unit = 0; unit < wiring.directory().count(); unit++) {
            String name = wiring.directory().name(unit);
            if (modules.contains(name)) {
                faults.add(fault(name, deep));
            }
        }
        return faults;
    }

    private PageFault fault(String unit, int deep) {
        Scene scene = Scene.silent(List.of(unit)).withOthersAlive();
        Optional<Diagnosis> search = Diagnosis.find(circuit, scene, PriorTable.standard());
        Optional<DialogueTree> tree = search.map(found -> DialogueTree.grow(found, deep, LEAST));
        tree.ifPresent(this::note);
        List<String> ways = Way.of(circuit, unit).stream()
                .map(way -> (way.power() ? "power: " : "signal: ") + way.trail().words())
                .toList();
        return new PageFault(
                unit, search.map(found -> List.copyOf(found.behind())).orElse(List.of()), ways, tree);
    }

    private void note(DialogueTree tree) {
        if (tree.next() instanceof NextStep.Test test) {
            note(test.card());
        } else if (tree.next() instanceof NextStep.Do repair) {
            repair.repeatFirst().ifPresent(this::note);
        } else if (tree.next() instanceof NextStep.GoIn in) {
            in.lookFirst().forEach(this::note);
        }
        tree.limbs().forEach(limb -> note(limb.then()));
    }

    private void note(TestCard card) {
        tests.computeIfAbsent(
                card.id(),
                id -> new PageTest(
                        card,
                        TestPlaces.of(circuit.wiring(), card),
                        ReadingBand.unit(card.test()),
                        ReadingBand.of(circuit, card),
                        TypedReading.outcome(circuit, card, "OL")));
    }
}
