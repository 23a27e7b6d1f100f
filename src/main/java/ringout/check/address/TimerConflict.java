package ringout.check.address;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.signal.PulseLinks;
import ringout.model.Datum;
import ringout.model.OutputSetting;
import ringout.model.TimerGroup;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.model.shape.Scalars;

/**
 * Outputs of one timer that are set to different protocols or rates.
 *
 * <p>Why it matters: one timer has one rate; some of its outputs then send what their motor or servo does not understand, and a
 * servo at the rate of a motor burns.
 *
 * <p>Condition: two outputs of one timer group that drive something or have a function differ in protocol or update rate. Without a
 * group table nothing can be told, unless all outputs in use are set alike.
 *
 * <p>Does not see: whether what is driven understands the setting (S09).
 *
 * <p>Reference: maker's timer table of the controller type.
 */
@CheckInfo(
        code = "A13",
        name = "timer-conflict",
        severity = Severity.S2,
        since = "0.1",
        needs = {"timer groups of the controller type", "protocol and rate set for each output"})
public final class TimerConflict implements Check {
    /** An output in use and how it is set, in words. */
    private record Used(String output, String setting) {}

    @Override
    public void look(Situation at, Outcomes out) {
        Map<Integer, Set<String>> driving = new TreeMap<>();
        for (PulseLinks.Link link : PulseLinks.of(at.circuit())) {
            driving.computeIfAbsent(at.wiring().unitOf(link.output()), key -> names())
                    .add(PulseLinks.name(at.wiring(), link.output()));
        }
        Gaps gaps = new Gaps();
        for (int unit = 0; unit < at.aircraft().units().size(); unit++) {
            Set<String> own = driving.getOrDefault(unit, names());
            Unit record = at.directory().unit(unit);
            record.outputs().stream()
                    .filter(setting -> setting.function().isKnown())
                    .forEach(setting -> own.add(setting.output()));
            if (own.size() > 1 && at.circuit().aboard(unit)) {
                look(out, record, at.directory().type(unit), own, gaps);
            }
        }
        gaps.tell(
                out,
                datum -> datum.startsWith("timer")
                        ? new Gaps.Way("look it up in the maker's pin-out of the controller", 5)
                        : new Gaps.Way("read it from the parameter list", 1));
    }

    /** Names of outputs as written, each once in whatever case. */
    private static Set<String> names() {
        return new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
    }

    private static void look(Outcomes out, Unit unit, UnitType type, Set<String> used, Gaps gaps) {
        List<TimerGroup> groups = type.timerGroups();
        if (groups.isEmpty()) {
            List<Used> all = set(unit, used, gaps);
            long settings = all.stream().map(Used::setting).distinct().count();
            if (settings > 1) {
                gaps.add("timer groups", type.name());
            } else if (all.size() == used.size()) {
                out.looked();
            }
            return;
        }
        for (TimerGroup group : groups) {
            Set<String> own =
                    group.outputs().stream().filter(used::contains).collect(Collectors.toCollection(TreeSet::new));
            if (own.size() > 1) {
                group(out, unit, group, own, gaps);
            }
        }
        Set<String> rest = names();
        rest.addAll(used);
        groups.forEach(group -> group.outputs().forEach(rest::remove));
        rest.forEach(output -> gaps.add("timer group", unit.ref() + " output " + output));
    }

    private static void group(Outcomes out, Unit unit, TimerGroup group, Set<String> own, Gaps gaps) {
        List<Used> all = set(unit, own, gaps);
        Map<String, List<String>> bySetting = new TreeMap<>();
        all.forEach(used -> bySetting
                .computeIfAbsent(used.setting(), key -> new ArrayList<>())
                .add(used.output()));
        if (bySetting.size() > 1) {
            out.finding(draft(unit, group, bySetting));
        } else if (all.size() == own.size()) {
            out.looked();
        }
    }

    /** The outputs whose protocol and rate are known, or that have none. */
    private static List<Used> set(Unit unit, Set<String> outputs, Gaps gaps) {
        List<Used> found = new ArrayList<>();
        for (String output : outputs) {
            Datum<String> protocol = PulseLinks.setting(unit, output)
                    .map(OutputSetting::protocol)
                    .orElse(Datum.notAsked());
            Datum<Double> rate =
                    PulseLinks.setting(unit, output).map(OutputSetting::rateHz).orElse(Datum.notAsked());
            if (protocol.isMissing() || rate.isMissing()) {
                gaps.add("protocol and rate", unit.ref() + " output " + output);
            } else {
                String hertz = rate.isKnown() ? " at " + Scalars.number(rate.or(0.0)) + " Hz" : "";
                found.add(new Used(output, protocol.or("no protocol") + hertz));
            }
        }
        return found;
    }

    private static Draft draft(Unit unit, TimerGroup group, Map<String, List<String>> bySetting) {
        String words = bySetting.entrySet().stream()
                .map(entry -> entry.getKey() + " at output " + String.join(", ", entry.getValue()))
                .collect(Collectors.joining("; "));
        Draft draft = Draft.of(
                        Severity.S2, "timer conflict: timer " + group.name() + " of " + unit.ref() + " drives " + words)
                .about(unit.ref(), "timer " + group.name())
                .sum(bySetting.size() + " settings on one timer, one is right: " + words)
                .source("timer table of " + unit.type())
                .why("one timer has one rate: some outputs send what their motor or servo does not understand")
                .fix("move the outputs of one kind to a timer of their own, or set timer " + group.name() + " of "
                        + unit.ref() + " to what all of them take")
                .seen(unit);
        bySetting
                .values()
                .forEach(outputs -> outputs.forEach(output -> draft.cause(PulseLinks.protocolOf(unit, output))));
        return draft;
    }
}
