package ringout.check.installation;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.model.Datum;
import ringout.model.Lead;

/**
 * Conductors whose colour says something else than they carry.
 *
 * <p>Why it matters: whoever repairs a lead goes by its colours. A red 0V is joined to the supply sooner or later.
 *
 * <p>Condition: a supply conductor is not in the supply colour of the project (red unless it says otherwise), or a 0V conductor not
 * in its 0V colour (black), or H and L of a bus not in the colours it has chosen; without a choice, H and L of a lead are
 * exchanged against most others. S4; S3 when a red conductor is 0V or a black one a supply. Leads delivered with a unit are noted
 * (S5). The link between two packs may have either colour.
 *
 * <p>Does not see: second colours of a stripe, signals, phases.
 *
 * <p>Reference: letters: IEC 60757; colours: common practice, no source.
 */
@CheckInfo(
        code = "M09",
        name = "colour-misleads",
        severity = Severity.S4,
        since = "0.3",
        needs = {"colours of supply, 0V and bus conductors"})
public final class ColourMisleads implements Check {
    /** A conductor in a wrong colour. */
    private record Wrong(Wire wire, Carries carries, String colour, boolean opposite) {}

    @Override
    public void look(Situation at, Outcomes out) {
        if (!Asked.ofLeads(at, List.of(Lead::colours))
                && at.aircraft().leads().stream()
                        .allMatch(lead -> lead.conductors().isEmpty())) {
            return;
        }
        WireColours wanted = new WireColours(at.aircraft().project());
        Colours colours = new Colours();
        BusColours bus = new BusColours();
        Gaps gaps = new Gaps();
        Map<Integer, List<Wrong>> byRow = new TreeMap<>();
        for (Wire wire : at.wiring().wires()) {
            Carries carries = Carries.of(at, wire);
            if (carries == Carries.OTHER || wire.lead().colours().isNotApplicable()) {
                continue;
            }
            Optional<String> colour = colours.of(wire, at.wiring().pin(wire.fromPin()));
            if (colour.isEmpty()) {
                gaps.add("colours", wire.lead().id());
            } else if (colour.get().isEmpty()) {
                gaps.add("colour letters (IEC 60757)", wire.lead().id());
            } else if (wanted.of(carries).isKnown()) {
                out.looked();
                if (!wanted.has(carries, colour.get())) {
                    boolean opposite = wanted.opposite(carries, colour.get());
                    byRow.computeIfAbsent(wire.leadIndex(), key -> new ArrayList<>())
                            .add(new Wrong(wire, carries, colour.get(), opposite));
                }
            } else if (wanted.of(carries) instanceof Datum.NotAsked) {
                bus.add(wire, carries, colour.get());
            }
        }
        wanted.unknown().forEach(name -> gaps.add("colour the project has chosen", name));
        byRow.values().forEach(wrong -> out.finding(draft(at, wanted, wrong)));
        bus.tell(out);
        gaps.tell(
                out,
                datum -> datum.startsWith("colour the")
                        ? new Gaps.Way("decide it once for the project", 2)
                        : new Gaps.Way("look at the lead", 1));
    }

    private static Draft draft(Situation at, WireColours wanted, List<Wrong> wrong) {
        Lead lead = wrong.get(0).wire().lead();
        boolean opposite = wrong.stream().anyMatch(Wrong::opposite);
        boolean delivered = lead.delivered().is(true);
        Severity severity = delivered ? Severity.S5 : opposite ? Severity.S3 : Severity.S4;
        String list = wrong.stream()
                .map(one -> one.colour() + " carries " + one.carries().words() + " at "
                        + at.wiring().name(one.wire().fromPin()))
                .collect(Collectors.joining(", "));
        String should = wrong.stream()
                .map(one ->
                        one.carries().words() + " " + wanted.of(one.carries()).or(""))
                .distinct()
                .collect(Collectors.joining(", "));
        return Draft.of(severity, "colour misleads: in " + lead.id() + " " + list)
                .about(lead.id())
                .at(lead)
                .input(lead.colours())
                .sum(list + "; this project has " + should)
                .source("letters by IEC 60757; colours: common practice, no source")
                .why(
                        opposite
                                ? "whoever repairs it goes by its colours, and joins 0V to the supply"
                                : "whoever repairs it goes by its colours")
                .meter("plugs pulled, ring out " + lead.id() + ": the list may be wrong")
                .fix(fix(lead, opposite, delivered, should));
    }

    private static String fix(Lead lead, boolean opposite, boolean delivered, String should) {
        if (delivered) {
            return "mark the ends of " + lead.id() + ": it came with the unit";
        }
        return opposite
                ? "make " + lead.id() + " anew, or sleeve its ends: " + should
                : "use the colours of the project, or enter its choice: " + should;
    }
}
