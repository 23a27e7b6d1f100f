package ringout.check.address;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.model.AsBuilt;
import ringout.model.Datum;
import ringout.model.FleetTail;
import ringout.text.Span;

/**
 * Two tails of the fleet that are known by the same number on a link.
 *
 * <p>Why it matters: a command meant for one aircraft moves the other, or both; telemetry of two aircraft mixes on one screen.
 *
 * <p>Condition: the telemetry network id, the system id or the binding of the command link is the same for two of: this tail and the
 * other tails listed with it.
 *
 * <p>Does not see: tails that are not listed; links that follow one another on purpose, such as a trainer.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "A12",
        name = "shared-identity",
        severity = Severity.S2,
        since = "0.1",
        needs = {"network id, system id and binding of this tail", "the same of the other tails"})
public final class SharedIdentity implements Check {
    /** A tail, where it stands, and what it is known by. */
    private record Known(String tail, Span at, Datum<String> id) {}

    /** One kind of number. */
    private record Kind(
            String words, Function<AsBuilt, Datum<String>> own, Function<FleetTail, Datum<String>> other, String fix) {}

    private static final List<Kind> KINDS = List.of(
            new Kind("telemetry network id", AsBuilt::networkId, FleetTail::networkId, "another network id"),
            new Kind("system id", AsBuilt::systemId, FleetTail::systemId, "another system id"),
            new Kind("command link binding", AsBuilt::binding, FleetTail::binding, "a binding of its own"));

    @Override
    public void look(Situation at, Outcomes out) {
        AsBuilt record = at.aircraft().record();
        boolean fleet = !record.fleet().isEmpty();
        boolean own = KINDS.stream().anyMatch(kind -> kind.own().apply(record).isKnown());
        if (!fleet && !own && !at.aircraft().tail().isKnown()) {
            return;
        }
        String tail = at.aircraft().tail().or("this tail");
        Gaps gaps = new Gaps();
        KINDS.forEach(kind -> look(out, kind, tail, record, gaps));
        if (!fleet) {
            out.cannotTell(
                    "network ids, system ids and bindings of the other tails of the fleet",
                    "read them off the fleet register, or list one with n/a when there is no other",
                    5,
                    tail);
        }
        gaps.tell(out, datum -> new Gaps.Way("read it from the parameters of the radio or the receiver", 3));
    }

    private static void look(Outcomes out, Kind kind, String tail, AsBuilt record, Gaps gaps) {
        List<Known> all = new ArrayList<>();
        all.add(new Known(tail, record.at(), kind.own().apply(record)));
        record.fleet()
                .forEach(other ->
                        all.add(new Known(other.tail(), other.at(), kind.other().apply(other))));
        Map<String, List<Known>> byId = new TreeMap<>();
        boolean open = false;
        for (Known known : all) {
            if (known.id().isMissing()) {
                open = true;
                gaps.add(kind.words(), known.tail());
            }
            known.id()
                    .known()
                    .ifPresent(id -> byId.computeIfAbsent(id.strip().toLowerCase(Locale.ROOT), key -> new ArrayList<>())
                            .add(known));
        }
        if (!open && all.size() > 1) {
            out.looked();
        }
        byId.values().stream().filter(tails -> tails.size() > 1).forEach(tails -> out.finding(draft(kind, tails)));
    }

    private static Draft draft(Kind kind, List<Known> tails) {
        List<String> names = tails.stream().map(Known::tail).toList();
        String id = tails.get(0).id().or("");
        Draft draft = Draft.of(
                        Severity.S2,
                        "shared identity: " + kind.words() + " " + id + " on tails " + String.join(", ", names))
                .about(names)
                .about(kind.words())
                .sum(names.size() + " tails with " + kind.words() + " " + id + ", one is right")
                .why("what is meant for one aircraft reaches the other")
                .meter("switch on one tail alone, then the other: both answer on " + id)
                .fix("give " + names.get(names.size() - 1) + " " + kind.fix())
                .cause(kind.words() + " " + id);
        tails.forEach(known -> draft.at(new Place(known.at(), known.tail(), "tail " + known.tail()))
                .input(known.id()));
        return draft;
    }
}
