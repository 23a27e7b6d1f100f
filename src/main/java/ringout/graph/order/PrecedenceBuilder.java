package ringout.graph.order;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Cover;
import ringout.model.UnitKind;

/** Finds all acts of building an aircraft and what must come before what. */
final class PrecedenceBuilder {
    /** A lead that reaches to a unit not yet in its place. Judgement. */
    private static final double EXTENSION_MINUTES = 10;

    /** A bench supply on a lead instead of a pack. Judgement. */
    private static final double BENCH_SUPPLY_MINUTES = 5;

    /** Doing a test once more. Judgement. */
    private static final double AGAIN_MINUTES = 5;

    /** Asking the author of the procedure. Judgement. */
    private static final double ASK_MINUTES = 15;

    private static final double NEVER = Double.POSITIVE_INFINITY;

    private final Circuit circuit;
    private final Wiring wiring;
    private final Items items;
    private final BuildPlan plan;
    private final Covers covers;
    private final List<Act> acts = new ArrayList<>();
    private final List<Before> edges = new ArrayList<>();
    private final Map<Integer, Integer> fits = new LinkedHashMap<>();
    private final Map<LeadEnd, Integer> makes = new LinkedHashMap<>();
    private final List<List<Integer>> ofStep = new ArrayList<>();
    private final int[] closes;

    PrecedenceBuilder(Circuit circuit) {
        this.circuit = circuit;
        this.wiring = circuit.wiring();
        this.items = Items.of(circuit);
        this.plan = BuildPlan.of(circuit);
        this.covers = Covers.of(circuit);
        this.closes = new int[covers.all().size()];
        plan.steps().forEach(step -> ofStep.add(new ArrayList<>(1)));
        units();
        ends();
        lids();
        plan.steps().forEach(this::step);
        stated();
    }

    List<Act> acts() {
        return acts;
    }

    List<Before> edges() {
        return edges;
    }

    Map<Integer, Integer> fits() {
        return fits;
    }

    Map<LeadEnd, Integer> makes() {
        return makes;
    }

    List<Integer> closes() {
        return java.util.Arrays.stream(closes).boxed().toList();
    }

    List<List<Integer>> ofStep() {
        return ofStep;
    }

    private int act(StepKind kind, String name, Optional<PlanStep> by) {
        acts.add(new Act(kind, name, by.map(PlanStep::index).orElse(-1)));
        int number = acts.size() - 1;
        by.ifPresent(step -> ofStep.get(step.index()).add(number));
        return number;
    }

    private void before(int first, int then, String why, String cut, double minutes) {
        if (first != then) {
            edges.add(new Before(first, then, why, cut, minutes));
        }
    }

    private void units() {
        for (int unit = 0; unit < wiring.directory().count(); unit++) {
            if (!wiring.directory().isJoint(unit)) {
                Optional<PlanStep> by = plan.naming(StepKind.FIT, unit).stream().findFirst();
                fits.put(unit, act(StepKind.FIT, wiring.directory().name(unit), by));
            }
        }
    }

    private void ends() {
        for (int row = 0; row < wiring.aircraft().leads().size(); row++) {
            String id = wiring.aircraft().leads().get(row).id();
            for (LeadEnd end : BuildPlan.ends(wiring, row)) {
                String plug = wiring.plugName(end.unit(), end.plug());
                int make = act(
                        StepKind.MAKE,
                        id + " at " + plug,
                        plan.making(end).stream().findFirst());
                makes.put(end, make);
                Integer fit = fits.get(end.unit());
                if (fit != null) {
                    String unit = wiring.directory().name(end.unit());
                    before(
                            fit,
                            make,
                            id + " plugs into " + unit,
                            "make " + id + " with " + unit + " beside its place, on an extension lead",
                            EXTENSION_MINUTES);
                }
            }
        }
    }

    private void lids() {
        Progress progress = Progress.of(circuit);
        for (int cover = 0; cover < closes.length; cover++) {
            closes[cover] = act(StepKind.CLOSE, covers.name(cover), progress.firstClosing(cover));
        }
        for (int cover = 0; cover < closes.length; cover++) {
            int closing = cover;
            for (int outer : covers.over(cover)) {
                hidden(closes[closing], covers.name(closing), outer);
            }
            fits.forEach((unit, fit) -> {
                if (covers.hidesSome(closing, unit)) {
                    hidden(fit, wiring.directory().name(unit), closing);
                }
            });
            makes.forEach((end, make) -> {
                if (covers.hides(closing, end.unit(), end.plug())) {
                    hidden(make, wiring.plugName(end.unit(), end.plug()), closing);
                }
            });
            carried(covers.all().get(cover), closes[cover]);
        }
    }

    private void hidden(int act, String what, int cover) {
        OptionalDouble minutes = covers.minutes(cover);
        before(
                act,
                closes[cover],
                covers.name(cover) + " hides " + what,
                "open " + covers.name(cover) + " again",
                minutes.orElse(NEVER));
    }

    private void carried(Cover cover, int close) {
        for (String name : cover.carries()) {
            if (items.find(name) instanceof Item.OfUnit of && fits.containsKey(of.unit())) {
                before(close, fits.getOrDefault(of.unit(), close), name + " is carried by " + cover.name(), "", NEVER);
            }
        }
    }

    /** What a step other than a fit, a make or a close does. */
    private void step(PlanStep step) {
        StepKind kind = step.kind().orElse(StepKind.OTHER);
        switch (kind) {
            case SET, CHECK, PHOTO -> looked(step, kind);
            case ENERGISE -> energised(step);
            default -> {
                if (ofStep.get(step.index()).isEmpty()) {
                    act(kind, "in " + step.words(), Optional.of(step));
                }
            }
        }
    }

    private void looked(PlanStep step, StepKind kind) {
        String what = step.step().attribute().known().map(words -> " of ").orElse("");
        String name = step.step().attribute().or("")
                + what
                + String.join(", ", step.step().objects());
        int act = act(kind, name.strip() + " (step " + step.step().id() + ")", Optional.of(step));
        BitSet pins = kind == StepKind.SET && overTheLink(step) ? new BitSet() : pins(step);
        for (int cover = 0; cover < closes.length; cover++) {
            if (covers.pins(cover).intersects(pins)) {
                hidden(act, String.join(", ", step.step().objects()), cover);
            }
        }
        if (kind == StepKind.CHECK) {
            for (Item item : step.items()) {
                if (item instanceof Item.OfLead lead) {
                    items.rows(lead.id())
                            .forEach(row -> BuildPlan.ends(wiring, row)
                                    .forEach(end -> before(
                                            makes.getOrDefault(end, act),
                                            act,
                                            "it is a test of " + lead.id(),
                                            "test " + lead.id() + " again later",
                                            AGAIN_MINUTES)));
                }
            }
        }
    }

    /** Whether all units a step sets can be set over their link, so that no lid is in the way. */
    private boolean overTheLink(PlanStep step) {
        return step.items().stream()
                .allMatch(item -> item instanceof Item.OfUnit of
                        && wiring.directory().type(of.unit()).ports().stream()
                                .anyMatch(port -> port.setOnLink().is(true)
                                        && !step.step().attribute().or("").contains("terminator")));
    }

    /** The pins a step must reach: those it names, or of the plugs and units it names. */
    private BitSet pins(PlanStep step) {
        BitSet pins = new BitSet();
        for (Item item : step.items()) {
            if (item instanceof Item.OfUnit of) {
                pins.set(wiring.firstPin(of.unit()), wiring.endPin(of.unit()));
            } else if (item instanceof Item.OfPlug of) {
                pins.set(wiring.firstPin(of.unit(), of.plug()), wiring.endPin(of.unit(), of.plug()));
            } else if (item instanceof Item.OfPin of) {
                pins.set(of.vertex());
            }
        }
        return pins;
    }

    private void energised(PlanStep step) {
        String name = String.join(", ", step.step().objects()) + " (step "
                + step.step().id() + ")";
        int act = act(StepKind.ENERGISE, name, Optional.of(step));
        for (Item item : step.items()) {
            if (item instanceof Item.OfUnit of && fits.containsKey(of.unit())) {
                String unit = wiring.directory().name(of.unit());
                boolean pack = wiring.directory().type(of.unit()).kind().is(UnitKind.PACK);
                before(
                        fits.getOrDefault(of.unit(), act),
                        act,
                        "it powers " + unit,
                        pack ? "power it from a bench supply lead instead of " + unit : "",
                        pack ? BENCH_SUPPLY_MINUTES : NEVER);
            }
        }
    }

    /** What steps say of each other: each is a knot that its acts come before. */
    private void stated() {
        for (PlanStep step : plan.steps()) {
            for (String id : step.step().after()) {
                plan.step(id).ifPresent(earlier -> stated(earlier, step));
            }
        }
    }

    private void stated(PlanStep earlier, PlanStep later) {
        String why = "step " + later.step().id() + " says after step "
                + earlier.step().id();
        String cut = "ask the author whether step " + later.step().id() + " must wait for step "
                + earlier.step().id();
        List<Integer> done = ofStep.get(earlier.index());
        List<Integer> waiting = ofStep.get(later.index());
        if (done.isEmpty() || waiting.isEmpty()) {
            return;
        }
        if (done.size() == 1 || waiting.size() == 1) {
            done.forEach(first -> waiting.forEach(then -> before(first, then, why, cut, ASK_MINUTES)));
            return;
        }
        acts.add(new Act(StepKind.OTHER, "the end of " + earlier.words(), -1));
        int knot = acts.size() - 1;
        done.forEach(first ->
                before(first, knot, "it is part of step " + earlier.step().id(), "", NEVER));
        waiting.forEach(then -> before(knot, then, why, cut, ASK_MINUTES));
    }
}
