package ringout.check.build;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.check.form.Situation;
import ringout.finding.Place;
import ringout.graph.Site;
import ringout.graph.order.StepKind;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.PinRole;
import ringout.model.Plug;
import ringout.model.Step;
import ringout.text.Span;

/** The order in which pack plugs are made and broken: as the airframe says, else as the steps do. */
public final class MadeOrder {
    /**
     * A plug at its turn.
     *
     * @param unit number of its unit
     * @param name UNIT-PLUG
     * @param record the plug of the type
     * @param place the step that makes it; unknown when the airframe tells the order
     */
    public record Made(int unit, String name, Plug record, Place place) {
        @Override
        public boolean equals(Object other) {
            return this == other
                    || (other instanceof Made that
                            && unit == that.unit
                            && name.equals(that.name)
                            && place.equals(that.place));
        }

        @Override
        public int hashCode() {
            return 31 * unit + name.hashCode();
        }
    }

    private final List<Made> all = new ArrayList<>();
    private final List<Made> plugs;
    private final List<Made> broken = new ArrayList<>();

    private MadeOrder(Situation at) {
        at.aircraft()
                .airframe()
                .plugOrder()
                .forEach(name -> add(at, all, name, new Place(Span.NONE, "plug order", "")));
        boolean told = !all.isEmpty();
        PackStacks stacks = PackStacks.of(at);
        for (Step step : at.aircraft().record().steps()) {
            String action = step.action().or("").toLowerCase(Locale.ROOT);
            Place place = new Place(step.at(), step.id(), "step " + step.id() + ": " + action);
            Optional<StepKind> kind = StepKind.of(step.action());
            for (String object : step.objects()) {
                if (kind.equals(Optional.of(StepKind.MAKE)) && !told) {
                    addPack(at, stacks, all, object, place);
                } else if (kind.equals(Optional.of(StepKind.BREAK))) {
                    addPack(at, stacks, broken, object, place);
                }
            }
        }
        plugs = all.stream().filter(made -> !isTap(made.record())).toList();
        broken.removeIf(made -> isTap(made.record()));
    }

    /** Whether a plug taps cells only: a tap pin has no part in closing the circuit of the pack. */
    public static boolean isTap(Plug plug) {
        boolean main = plug.pins().stream()
                .anyMatch(pin -> !pin.cellTap().isKnown()
                        && (pin.role().is(PinRole.PACK_PLUS) || pin.role().is(PinRole.PACK_MINUS)));
        return !main && plug.pins().stream().anyMatch(pin -> pin.cellTap().isKnown());
    }

    /** The order told for the packs of a state. */
    public static MadeOrder of(Situation at) {
        return new MadeOrder(at);
    }

    private static void add(Situation at, List<Made> list, String name, Place place) {
        Site site = at.directory().resolve(new End(name));
        if (site instanceof Site.OnPlug on && !at.directory().isJoint(on.unit())) {
            list.add(new Made(
                    on.unit(),
                    at.wiring().plugName(on.unit(), on.plug()),
                    at.directory().type(on.unit()).plugs().get(on.plug()),
                    place));
        }
    }

    private static void addPack(Situation at, PackStacks stacks, List<Made> list, String name, Place place) {
        List<Made> found = new ArrayList<>();
        add(at, found, name, place);
        found.stream().filter(made -> stacks.stackOf(made.unit()) >= 0).forEach(list::add);
    }

    /** Plugs in the order they are made, tap plugs too. */
    public List<Made> all() {
        return all;
    }

    /** Plugs that carry the current of the packs in the order they are made. */
    List<Made> plugs() {
        return plugs;
    }

    /** Plugs in the order they are broken, where the steps tell. */
    List<Made> broken() {
        return broken;
    }

    /** Names of the plugs whose turn is told. */
    Set<String> names() {
        return plugs.stream().map(Made::name).collect(Collectors.toSet());
    }

    /** Whether of some step it is not known what is done, or to what. */
    boolean untoldSteps(Situation at) {
        return at.aircraft().record().steps().stream()
                .anyMatch(step -> step.action() instanceof Datum.Unknown || step.attribute() instanceof Datum.Unknown);
    }

    /** Whether steps before the one that makes a plug read the voltage of a pack on either side, together or one by one. */
    boolean comparedBefore(Situation at, List<String> some, List<String> others, Made closing) {
        Set<String> read = new HashSet<>();
        for (Step step : at.aircraft().record().steps()) {
            Optional<StepKind> kind = StepKind.of(step.action());
            String what = (step.attribute().or("") + " " + step.says().or("")).toLowerCase(Locale.ROOT);
            if (kind.equals(Optional.of(StepKind.CHECK)) && what.contains("volt")) {
                read.addAll(step.objects());
            }
            if (kind.equals(Optional.of(StepKind.MAKE)) && step.objects().contains(closing.name())) {
                break;
            }
        }
        return some.stream().anyMatch(read::contains) && others.stream().anyMatch(read::contains);
    }
}
