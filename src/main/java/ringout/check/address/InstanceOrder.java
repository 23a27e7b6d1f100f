package ringout.check.address;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Wire;
import ringout.graph.signal.SerialLinks;
import ringout.model.Datum;
import ringout.model.PortSetting;
import ringout.model.Unit;
import ringout.model.UnitKind;

/**
 * A receiver, compass or battery monitor that the configuration calls by another number than the documents.
 *
 * <p>Why it matters: a warning about "receiver 1" sends the crew to the wrong box; with a two-antenna heading pair exchanged the
 * heading is turned by 180 degrees, without any electrical symptom.
 *
 * <p>Condition: the name of the unit in the documents differs from the one the configuration gives it: on a serial link the one
 * set at the port it is joined to, else the one listed with the unit. On a bus the address travels with the unit, so exchanged
 * leads do no harm there. S2 for the units of a heading pair, else S3.
 *
 * <p>Does not see: units of which there is only one.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "A10",
        name = "instance-order",
        severity = Severity.S3,
        since = "0.1",
        needs = {"name of each receiver and battery in the documents", "name the configuration gives it"})
public final class InstanceOrder implements Check {
    /** A unit with its name in the documents and in the configuration. */
    private record Named(Unit unit, String listed, String configured, boolean byPort, String leads) {
        private boolean exchangedWith(Named other) {
            return listed.equalsIgnoreCase(other.configured) && configured.equalsIgnoreCase(other.listed);
        }

        private boolean pair() {
            return unit.headingWith().isKnown();
        }

        private String words() {
            return unit.ref() + " is " + listed + ", the configuration " + (byPort ? "of its port " : "") + "says "
                    + configured;
        }
    }

    @Override
    public void look(Situation at, Outcomes out) {
        Map<Integer, SerialLinks.Link> ports = new HashMap<>();
        for (SerialLinks.Link link : SerialLinks.of(at.circuit())) {
            boolean says = SerialLinks.setting(at.wiring(), link.port())
                    .map(setting -> setting.deviceInstance().isKnown())
                    .orElse(false);
            if (says) {
                ports.putIfAbsent(link.device().unit(), link);
            }
        }
        EnumMap<UnitKind, Integer> count = new EnumMap<>(UnitKind.class);
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            count.merge(at.directory().type(unit).kind().or(UnitKind.UNIT), 1, Integer::sum);
        }
        List<Named> wrong = new ArrayList<>();
        Gaps gaps = new Gaps();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            if (at.circuit().aboard(unit)) {
                look(at, out, unit, Optional.ofNullable(ports.get(unit)), count, wrong, gaps);
            }
        }
        while (!wrong.isEmpty()) {
            Named first = wrong.remove(0);
            Optional<Named> partner =
                    wrong.stream().filter(first::exchangedWith).findFirst();
            partner.ifPresent(wrong::remove);
            out.finding(draft(first, partner));
        }
        gaps.tell(
                out,
                datum -> datum.endsWith("configuration")
                        ? new Gaps.Way("unplug the others and see which number the ground station shows", 4)
                        : new Gaps.Way("look at the label of the unit and at its place in the documents", 2));
    }

    private static void look(
            Situation at,
            Outcomes out,
            int unit,
            Optional<SerialLinks.Link> port,
            Map<UnitKind, Integer> count,
            List<Named> wrong,
            Gaps gaps) {
        Unit record = at.directory().unit(unit);
        Datum<String> byPort = port.flatMap(link -> SerialLinks.setting(at.wiring(), link.port()))
                .map(PortSetting::deviceInstance)
                .orElse(Datum.notAsked());
        Datum<String> configured = byPort.isKnown() ? byPort : record.configuredInstance();
        Datum<String> listed = record.instance();
        boolean concerned =
                listed.isKnown() || configured.isKnown() || record.headingWith().isKnown();
        if (!concerned && !oneOfSeveral(at, unit, count)) {
            return;
        }
        if (listed.isMissing()) {
            gaps.add("number in the documents", record.ref());
        }
        if (configured.isMissing()) {
            gaps.add("number in the configuration", record.ref());
        }
        if (listed.isKnown() && configured.isKnown()) {
            out.looked();
            if (!listed.or("").equalsIgnoreCase(configured.or(""))) {
                String leads = port.map(link -> leads(at, link)).orElse("");
                wrong.add(new Named(record, listed.or(""), configured.or(""), byPort.isKnown(), leads));
            }
        }
    }

    private static boolean oneOfSeveral(Situation at, int unit, Map<UnitKind, Integer> count) {
        UnitKind kind = at.directory().type(unit).kind().or(UnitKind.UNIT);
        boolean numbered = kind == UnitKind.SATELLITE_RECEIVER || kind == UnitKind.MONITOR;
        return numbered && count.getOrDefault(kind, 0) > 1;
    }

    private static String leads(Situation at, SerialLinks.Link link) {
        List<String> ids = new ArrayList<>();
        for (int w : at.wiring().wiresAt(link.device().pin())) {
            Wire wire = at.wiring().wires().get(w);
            ids.add(wire.lead().id());
        }
        return String.join(", ", ids);
    }

    private static Draft draft(Named first, Optional<Named> partner) {
        boolean pair = first.pair() || partner.map(Named::pair).orElse(false);
        String words =
                first.words() + partner.map(other -> "; " + other.words()).orElse("");
        Draft draft = Draft.of(pair ? Severity.S2 : Severity.S3, "instance order: " + words)
                .about(first.unit().ref())
                .sum(words)
                .why(
                        pair
                                ? "the heading is turned by 180 degrees, and nothing else shows it"
                                : "a warning sends the crew to the wrong box")
                .meter("unplug " + first.unit().ref() + ": see which number drops out")
                .fix(fix(first, partner))
                .at(first.unit(), "instance");
        blame(draft, first);
        partner.ifPresent(other -> {
            draft.about(other.unit().ref()).at(other.unit(), "instance");
            blame(draft, other);
        });
        return draft;
    }

    private static void blame(Draft draft, Named named) {
        if (!named.leads().isEmpty()) {
            List.of(named.leads().split(", ")).forEach(draft::cause);
        }
    }

    private static String fix(Named first, Optional<Named> partner) {
        if (partner.isEmpty()) {
            return "call " + first.unit().ref() + " " + first.listed() + " in the configuration";
        }
        String units = first.unit().ref() + " and " + partner.get().unit().ref();
        boolean leads = !first.leads().isEmpty() && !partner.get().leads().isEmpty();
        return leads
                ? "exchange the leads " + first.leads() + " and "
                        + partner.get().leads() + ", or the numbers of their ports"
                : "exchange the numbers of " + units + " in the configuration";
    }
}
