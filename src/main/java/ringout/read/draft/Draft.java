package ringout.read.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.LeadKind;
import ringout.model.Origin;
import ringout.model.Unit;
import ringout.model.UnitKind;
import ringout.model.shape.Shape;
import ringout.read.bind.Bag;
import ringout.read.intake.Intake;
import ringout.read.intake.Question;
import ringout.text.Span;

/** Drafts the units and unit types that a from-to list names and nothing describes. */
public final class Draft {
    private static final Shape<Aircraft> AIRCRAFT = Shape.of(Aircraft.class);
    private static final Shape<Unit> UNIT = Shape.of(Unit.class);

    private final Bag aircraft;
    private final Intake intake;
    private final boolean unitsGiven;
    private final Map<String, String> refs = new LinkedHashMap<>();
    private final Map<String, Map<String, PlugUse>> uses = new LinkedHashMap<>();
    private final Set<String> joints;

    private Draft(Bag aircraft, Intake intake) {
        this.aircraft = aircraft;
        this.intake = intake;
        this.unitsGiven = !list("units").isEmpty();
        list("units").forEach(unit -> refs.put(fold(unit.key()), unit.key()));
        this.joints = list("joints").stream().map(joint -> fold(joint.key())).collect(Collectors.toSet());
    }

    /** Adds what is missing of the units and types that the rows of the list need; everything is listed or asked. */
    public static void complete(Bag aircraft, Intake intake) {
        if (aircraft.has(AIRCRAFT.slot("leads").orElseThrow())) {
            new Draft(aircraft, intake).run();
        }
    }

    private List<Bag> list(String field) {
        return aircraft.children(AIRCRAFT.slot(field).orElseThrow());
    }

    private static String fold(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    private void run() {
        List<DraftLead> leads = leads();
        for (DraftLead lead : leads) {
            carried(lead);
            use(lead, true);
            use(lead, false);
        }
        if (!unitsGiven) {
            units();
        }
        Set<String> drafted = types(leads);
        leads.forEach(lead -> straight(lead, drafted));
    }

    private List<DraftLead> leads() {
        List<DraftLead> leads = new ArrayList<>();
        for (Bag row : list("leads")) {
            Optional<EndText> from = end(row, "from");
            Optional<EndText> to = end(row, "to");
            if (from.isPresent() && to.isPresent()) {
                leads.add(new DraftLead(row, from.get(), to.get()));
            }
        }
        return leads;
    }

    private Optional<EndText> end(Bag row, String field) {
        String text = row.get(row.shape().slot(field).orElseThrow())
                .map(Object::toString)
                .orElse("");
        if (text.isEmpty() || joints.contains(fold(text))) {
            return Optional.empty();
        }
        Optional<EndText> end = EndText.of(text, refs.values());
        boolean known = end.isPresent()
                && (!unitsGiven || refs.containsKey(fold(end.get().unit())));
        if (end.isEmpty()) {
            intake.ask(new Question(
                    intake.cell(row.at(), field),
                    "",
                    "'" + text + "' is not UNIT-PLUG or UNIT-PLUG-PIN: which plug of which unit is it?",
                    "such as FC-CAN1 or FC-CAN1-2",
                    false));
        }
        return known ? end : Optional.empty();
    }

    /** What a lead carries, by the name of its plugs, where its row does not say. */
    private void carried(DraftLead lead) {
        if (!lead.isEmpty("kind")) {
            return;
        }
        Optional<LeadKind> from = likely(lead.from());
        Optional<LeadKind> to = likely(lead.to());
        if (from.isPresent() && to.isPresent() && !from.equals(to)) {
            return;
        }
        from.or(() -> to).ifPresent(kind -> {
            lead.put("kind", new Datum.Known<Object>(kind, Origin.ASSUMED, ""));
            String plug = from.isPresent() ? lead.from().place() : lead.to().place();
            intake.assume(
                    intake.cell(lead.at(), "kind"),
                    lead.name() + " taken to carry " + kind.word(),
                    "the name of " + plug);
        });
    }

    /** By the name of the plug; a pack feeds whatever hangs on it. */
    private static Optional<LeadKind> likely(EndText end) {
        return TradeNames.lead(end.plug())
                .or(() -> TradeNames.unit(end.unit())
                        .filter(UnitKind.PACK::equals)
                        .map(pack -> LeadKind.POWER));
    }

    private void use(DraftLead lead, boolean atFrom) {
        EndText end = atFrom ? lead.from() : lead.to();
        Span at = intake.cell(lead.at(), atFrom ? "from" : "to");
        refs.putIfAbsent(fold(end.unit()), end.unit());
        uses.computeIfAbsent(fold(end.unit()), unit -> new LinkedHashMap<>())
                .computeIfAbsent(fold(end.plug()), plug -> new PlugUse(end.plug(), at))
                .add(lead, atFrom);
    }

    private void units() {
        uses.forEach((folded, plugs) -> {
            Span at = plugs.values().iterator().next().at();
            Bag unit = new Bag(UNIT, at);
            unit.put(UNIT.slot("ref").orElseThrow(), refs.getOrDefault(folded, folded));
            list("units").add(unit);
            intake.assume(at, "unit " + unit.key() + " taken from the ends of the leads", "no list of units is given");
        });
    }

    /** Drafts the types that are not described; references of the units that have one. */
    private Set<String> types(List<DraftLead> leads) {
        Set<String> known = list("types").stream().map(type -> fold(type.key())).collect(Collectors.toSet());
        Map<String, List<Bag>> byType = new LinkedHashMap<>();
        for (Bag unit : list("units")) {
            String type = unit.get(UNIT.slot("type").orElseThrow())
                    .map(Object::toString)
                    .filter(word -> !word.equals("?"))
                    .orElse("");
            if (uses.containsKey(fold(unit.key())) && !known.contains(fold(type))) {
                byType.computeIfAbsent(type.isEmpty() ? alike(unit) : type, t -> new ArrayList<>())
                        .add(unit);
            }
        }
        byType.values().forEach(this::answered);
        contacts(leads);
        Set<String> drafted = new TreeSet<>();
        byType.forEach((name, units) -> {
            type(name, units);
            units.forEach(unit -> drafted.add(fold(unit.key())));
        });
        return drafted;
    }

    /** What was answered about the plugs of the unit that stands for its type holds for all units of it. */
    private void answered(List<Bag> units) {
        for (Bag unit : units) {
            for (PlugUse use : plugs(unit.key()).values()) {
                intake.answers()
                        .subject(units.get(0).key() + "-" + use.name())
                        .flatMap(PinAnswer::of)
                        .ifPresent(answer -> use.addPins(answer.roles().keySet()));
            }
        }
    }

    /** A straight lead has the same contacts at both ends; where none are known one of no number stands for them. */
    private void contacts(List<DraftLead> leads) {
        List<DraftLead> straight = leads.stream()
                .filter(lead -> lead.isWhole() && lead.isEmpty("pins"))
                .toList();
        for (int pass = 0; pass < 2; pass++) {
            for (DraftLead lead : straight) {
                PlugUse from = use(lead.from());
                PlugUse to = use(lead.to());
                if (from.isBare() != to.isBare()) {
                    (from.isBare() ? from : to).addPins((from.isBare() ? to : from).pins());
                }
            }
        }
        for (DraftLead lead : straight) {
            List.of(use(lead.from()), use(lead.to())).stream()
                    .filter(PlugUse::isBare)
                    .forEach(use -> use.addPins(Set.of(PlugUse.UNKNOWN)));
        }
    }

    private PlugUse use(EndText end) {
        return Objects.requireNonNull(plugs(end.unit()).get(fold(end.plug())));
    }

    private Map<String, PlugUse> plugs(String unit) {
        return uses.getOrDefault(fold(unit), Map.of());
    }

    /** Units whose names differ by a number only and that are wired alike are of one type. */
    private String alike(Bag unit) {
        String stem = unit.key().replaceFirst("[-_]?\\d+$", "");
        List<Bag> named = list("units").stream()
                .filter(other -> uses.containsKey(fold(other.key()))
                        && other.key().replaceFirst("[-_]?\\d+$", "").equalsIgnoreCase(stem))
                .toList();
        Map<String, Integer> forms = new HashMap<>();
        named.forEach(other -> forms.merge(form(other), 1, Integer::sum));
        return stem.isEmpty() || named.size() < 2 || forms.size() > 1 ? unit.key() : stem;
    }

    private String form(Bag unit) {
        return plugs(unit.key()).values().stream().map(PlugUse::form).sorted().collect(Collectors.joining(" "));
    }

    private void type(String name, List<Bag> units) {
        Map<String, PlugUse> plugs = new LinkedHashMap<>();
        Set<String> refsOfType = new LinkedHashSet<>();
        for (Bag unit : units) {
            unit.put(UNIT.slot("type").orElseThrow(), name);
            refsOfType.add(unit.key());
            plugs(unit.key())
                    .forEach((plug, use) -> plugs.computeIfAbsent(plug, p -> new PlugUse(use.name(), use.at()))
                            .add(use));
        }
        Bag first = units.get(0);
        if (units.size() > 1) {
            intake.assume(
                    first.at(),
                    String.join(", ", refsOfType) + " taken as units of one type",
                    "they are named and wired alike");
        }
        list("types").add(TypeDraft.of(name, first.key(), List.copyOf(plugs.values()), intake));
    }

    private void straight(DraftLead lead, Set<String> drafted) {
        boolean known = !drafted.contains(fold(lead.from().unit()))
                && !drafted.contains(fold(lead.to().unit()));
        if (lead.isWhole() && lead.isEmpty("pins") && !known) {
            intake.assume(
                    intake.cell(lead.at(), lead.isEmpty("pins") ? "from" : "pins"),
                    lead.name() + " taken as straight: pin 1 to pin 1, 2 to 2",
                    "no pin map is given");
        }
    }
}
