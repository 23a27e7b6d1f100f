package ringout.repair.move;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Sketch;
import ringout.graph.Directory;
import ringout.graph.Site;
import ringout.model.Aircraft;
import ringout.model.End;
import ringout.model.Lead;
import ringout.model.Plug;
import ringout.model.Unit;

/** One mistake and the part of the list around it: the leads and units its findings point to or are about. */
public final class Fault {
    private final Directory directory;
    private final Headline headline;
    private final Map<String, Lead> leads = new LinkedHashMap<>();
    private final Map<String, Unit> units = new LinkedHashMap<>();
    private final Set<String> mentioned = new HashSet<>();
    private final Set<String> ends = new HashSet<>();
    private final List<Lead> suspects = new ArrayList<>();

    /**
     * The surroundings of a headline.
     *
     * @param directory the list by name
     * @param headline the mistake
     * @param others all mistakes of the review: what was exchanged shows at two places
     */
    public Fault(Directory directory, Headline headline, List<Headline> others) {
        this.directory = directory;
        this.headline = headline;
        Set<String> names = names();
        mentioned.addAll(names);
        for (Lead lead : directory.leads()) {
            ends.add(lead.from().text().toLowerCase(Locale.ROOT));
            ends.add(lead.to().text().toLowerCase(Locale.ROOT));
        }
        Set<String> elsewhere = new HashSet<>();
        others.forEach(other -> other.finding().at().forEach(place -> elsewhere.add(place.row())));
        directory.leads().stream().filter(lead -> elsewhere.contains(lead.id())).forEach(suspects::add);
        for (Lead lead : directory.leads()) {
            if (names.contains(lead.id())) {
                leads.putIfAbsent(lead.id(), lead);
            }
        }
        for (Unit unit : directory.aircraft().units()) {
            if (names.contains(unit.ref())) {
                units.putIfAbsent(unit.ref(), unit);
            }
        }
    }

    private Set<String> names() {
        Set<String> names = new LinkedHashSet<>();
        findings().forEach(finding -> {
            finding.at().forEach(place -> names.add(place.row()));
            finding.objects().forEach(object -> {
                names.add(object);
                unitOf(object).ifPresent(unit -> names.add(unit.ref()));
            });
            finding.sketches()
                    .forEach(sketch ->
                            ends(sketch).forEach(end -> unitOf(end).ifPresent(unit -> names.add(unit.ref()))));
        });
        return names;
    }

    private static Stream<String> ends(Sketch sketch) {
        if (sketch instanceof Sketch.Missing missing) {
            return Stream.of(missing.from(), missing.to());
        }
        if (sketch instanceof Sketch.Misplaced misplaced) {
            return Stream.of(misplaced.from(), misplaced.to());
        }
        return Stream.of(((Sketch.Extra) sketch).at());
    }

    private Stream<Finding> findings() {
        return Stream.concat(Stream.of(headline.finding()), headline.alsoExplains().stream());
    }

    /** The unit a name stands for, or whose plug or pin it names. */
    Optional<Unit> unitOf(String name) {
        Optional<Integer> whole = directory.find(name);
        Optional<Integer> at = whole.isPresent() ? whole : site(new End(name));
        return at.filter(unit -> !directory.isJoint(unit)).map(directory::unit);
    }

    private Optional<Integer> site(End end) {
        Site site = directory.resolve(end);
        if (site instanceof Site.OnPlug plug) {
            return Optional.of(plug.unit());
        }
        return site instanceof Site.OnPin pin ? Optional.of(pin.unit()) : Optional.empty();
    }

    /** The plug an end stands on. */
    Optional<Plug> plug(End end) {
        Site site = directory.resolve(end);
        if (site instanceof Site.OnPlug on) {
            return Optional.of(directory.type(on.unit()).plugs().get(on.plug()));
        }
        return site instanceof Site.OnPin pin
                ? Optional.of(directory.type(pin.unit()).plugs().get(pin.plug()))
                : Optional.empty();
    }

    /** Whether a lead ends on a plug. */
    boolean taken(String plug) {
        return ends.contains(plug.toLowerCase(Locale.ROOT));
    }

    /** Whether the mistake is about this name or a place that bears it. */
    boolean mentions(String name) {
        return mentioned.contains(name);
    }

    /** The mistake. */
    public Headline headline() {
        return headline;
    }

    /** The list. */
    Aircraft aircraft() {
        return directory.aircraft();
    }

    /** Its leads by name. */
    Directory directory() {
        return directory;
    }

    /** The leads around it, in the order of the list. */
    List<Lead> leads() {
        return new ArrayList<>(leads.values());
    }

    /** The units around it, in the order of the list. */
    List<Unit> units() {
        return new ArrayList<>(units.values());
    }

    /** Leads any mistake of the review points to. */
    List<Lead> suspects() {
        return List.copyOf(suspects);
    }
}
