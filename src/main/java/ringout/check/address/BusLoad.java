package ringout.check.address;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.check.form.Thresholds;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.model.Datum;
import ringout.model.Message;
import ringout.model.shape.Scalars;
import ringout.solve.bus.Frames;

/**
 * A bus with more messages than it can carry with margin, or with a message that can come later than its deadline.
 *
 * <p>Why it matters: the messages of low priority come late or not at all, mostly when everything happens at once.
 *
 * <p>Formula: sum over the messages of frames a second times bits a frame, over the bit rate, in percent. A frame has 67 + 8s bits
 * with a long and 47 + 8s with a short identifier and s data bytes, at most 80 + 10s and 55 + 10s with stuff bits; a message of
 * more than 8 bytes goes in frames of 7 with 2 bytes of checksum. S4 above 50 %, S3 above 70 %. Then for each message the longest
 * time from due to sent: it waits for the longest frame of lower priority, then for all of higher priority, every instance in the
 * busy time looked at; above its deadline S3. A message without a deadline of its own must be sent before the next of it is due.
 * Messages of equal priority each count as first.
 *
 * <p>Does not see: frames sent again after errors, senders that do not put their most urgent frame first, the faster rate of a
 * data phase.
 *
 * <p>Reference: ISO 11898-1 (frame form); worst-case stuffing and response time: Davis, Burns, Bril, Lukkien, Real-Time Systems 35
 * (2007); limits of the load: common practice, no source.
 */
@CheckInfo(
        code = "A06",
        name = "bus-load",
        severity = Severity.S3,
        since = "0.1",
        needs = {"messages of each bus unit", "bit rate of the bus", "priority and jitter of each message"})
public final class BusLoad implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        TreeSet<String> silent = new TreeSet<>();
        Map<String, List<Message>> byBus = new HashMap<>();
        for (Message message : at.aircraft().messages()) {
            byBus.computeIfAbsent(message.bus().or(""), key -> new ArrayList<>())
                    .add(message);
        }
        for (Members members : Members.all(at)) {
            look(at, out, members, byBus.getOrDefault(members.segment().name(), List.of()), silent);
        }
        if (!silent.isEmpty()) {
            out.cannotTell(
                    "messages a second of " + String.join(", ", silent),
                    "count them with a bus tool, or take them from the maker's data",
                    5 * silent.size(),
                    silent.toArray(new String[0]));
        }
    }

    private static void look(Situation at, Outcomes out, Members members, List<Message> sent, Set<String> silent) {
        Datum<Double> rate = members.buses().rateKbit(members.segment());
        List<Message> vague = sent.stream().filter(message -> !counted(message)).toList();
        List<Message> counted = sent.stream().filter(BusLoad::counted).toList();
        boolean all = true;
        for (Members.Member node : members.nodes()) {
            if (sent.stream()
                    .noneMatch(message -> message.sender().is(node.unit().ref()))) {
                silent.add(node.unit().ref());
                all = false;
            }
        }
        vague.forEach(message -> out.cannotTell(
                "bytes and period of message " + message.name() + " on " + members.name(),
                "count it with a bus tool",
                5,
                members.name()));
        if (!rate.isKnown()) {
            out.cannotTell(
                    "bit rate of " + members.name(), "read it from the parameters of a member", 3, members.name());
            return;
        }
        judge(at, out, members, counted, rate, all && vague.isEmpty());
    }

    private static void judge(
            Situation at, Outcomes out, Members members, List<Message> counted, Datum<Double> rate, boolean complete) {
        double bits = rate.or(1.0) * 1000;
        double load =
                100 * counted.stream().mapToDouble(m -> perSecond(m, false)).sum() / bits;
        double worst =
                100 * counted.stream().mapToDouble(m -> perSecond(m, true)).sum() / bits;
        Threshold limit = at.limit(Thresholds.BUS_LOAD);
        Threshold warn = at.limit(Thresholds.BUS_LOAD_WARN);
        if (load > limit.value()) {
            out.finding(draft(members, counted, rate, load, worst, limit).severity(Severity.S3));
        } else if (load > warn.value()) {
            out.finding(draft(members, counted, rate, load, worst, warn).severity(Severity.S4));
        }
        boolean intime = new LateMessages(members, counted, rate).look(out);
        if (intime && complete && !counted.isEmpty() && load <= warn.value()) {
            out.looked();
        }
    }

    private static boolean counted(Message message) {
        return message.bytes().or(-1) >= 0 && message.periodMs().or(0.0) > 0;
    }

    /** Bits a second of a message, without stuff bits or with as many as there can be. */
    private static double perSecond(Message message, boolean stuffed) {
        int bytes = message.bytes().or(0);
        boolean extended = message.extended().or(true);
        int bits = stuffed ? Frames.worstBits(bytes, extended) : Frames.plainBits(bytes, extended);
        return Frames.of(bytes) * bits * 1000.0 / message.periodMs().or(1.0);
    }

    private static Draft draft(
            Members members, List<Message> counted, Datum<Double> rate, double load, double worst, Threshold limit) {
        double bits = counted.stream().mapToDouble(m -> perSecond(m, false)).sum();
        Message heaviest = heaviest(counted);
        String words = heaviest.name() + " of " + heaviest.sender().or("?");
        Draft draft = Draft.of(
                        Severity.S3,
                        "bus load: " + members.name() + " carries " + percent(load) + " %, limit "
                                + percent(limit.value()) + " %")
                .about(members.name())
                .sum(counted.size() + " messages, " + percent(bits / 1000) + " kbit/s of "
                        + Scalars.number(rate.or(0.0)) + " = " + percent(load) + " %, " + percent(worst)
                        + " % with all stuff bits")
                .judged(load, limit.value(), "%", limit.source())
                .why("messages of low priority come late when everything happens at once")
                .fix("send the heaviest message of " + members.name() + " less often: " + words)
                .cause("messages of " + members.name());
        counted.forEach(message -> draft.input(message.periodMs()));
        members.buses()
                .declaration(members.segment())
                .ifPresent(bus -> draft.at(new Place(bus.at(), bus.name(), members.name())));
        draft.at(new Place(heaviest.at(), heaviest.name(), "message " + words));
        return draft;
    }

    private static Message heaviest(List<Message> counted) {
        Message most = counted.get(0);
        for (Message message : counted) {
            most = perSecond(message, false) > perSecond(most, false) ? message : most;
        }
        return most;
    }

    private static String percent(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }
}
