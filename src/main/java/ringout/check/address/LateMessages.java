package ringout.check.address;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.model.Datum;
import ringout.model.Message;
import ringout.solve.bus.BusMessage;
import ringout.solve.bus.ResponseTimes;

/**
 * The messages of one bus that can come later than their deadline. What is not known is left out, which only makes the others
 * earlier: a late message is late for certain, and none is said to be in time while a datum is missing.
 */
final class LateMessages {
    private static final String SOURCE = "Davis, Burns, Bril, Lukkien, Real-Time Systems 35 (2007)";
    private static final int NAMED = 4;
    private static final double PERCENT = 100;

    private final Members members;
    private final double rateKbit;
    private final List<Message> known = new ArrayList<>();
    private final List<BusMessage> sent = new ArrayList<>();
    private final Gaps gaps = new Gaps();

    /** A message that is late, its longest response and its deadline in ms; no response when it can wait for ever. */
    private record Late(Message message, OptionalLong ticks, double deadlineMs, double load) {}

    LateMessages(Members members, List<Message> counted, Datum<Double> rate) {
        this.members = members;
        this.rateKbit = rate.or(1.0);
        counted.forEach(this::take);
    }

    private void take(Message message) {
        String words = "message " + message.name() + " on " + members.name();
        boolean jitter = message.jitterMs().or(0.0) >= 0;
        if (message.jitterMs().isMissing() || !jitter) {
            gaps.add("release jitter", words);
        }
        if (!message.priority().isKnown()) {
            gaps.add("priority", words);
            return;
        }
        known.add(message);
        sent.add(BusMessage.of(
                message.name(),
                message.priority().or(0),
                message.bytes().or(0),
                message.extended().or(true),
                message.periodMs().or(1.0),
                jitter ? message.jitterMs().or(0.0) : 0.0,
                rateKbit));
    }

    /** Says what is late and what cannot be told; whether all of them come in time for certain. */
    boolean look(Outcomes out) {
        ResponseTimes times = new ResponseTimes(sent);
        List<Late> late = new ArrayList<>();
        for (int i = 0; i < known.size(); i++) {
            Message message = known.get(i);
            double deadline = deadline(message);
            OptionalLong ticks = times.of(i);
            if (ticks.isEmpty() || BusMessage.ms(ticks.getAsLong(), rateKbit) > deadline) {
                late.add(new Late(message, ticks, deadline, times.load(i)));
            }
        }
        if (!late.isEmpty()) {
            out.finding(draft(late));
        } else {
            gaps.tell(out, datum -> new Gaps.Way("read it from the message list of the sender", 3));
        }
        return late.isEmpty() && gaps.isEmpty();
    }

    /** Its own deadline, else its period; without end when there is none or nobody knows it. */
    private double deadline(Message message) {
        Datum<Double> own = message.deadlineMs();
        if (own instanceof Datum.Unknown) {
            gaps.add("deadline", "message " + message.name() + " on " + members.name());
        }
        return own instanceof Datum.NotAsked ? message.periodMs().or(0.0) : own.or(Double.POSITIVE_INFINITY);
    }

    private Draft draft(List<Late> late) {
        Late worst = late.get(0);
        for (Late other : late) {
            worst = excess(other) > excess(worst) ? other : worst;
        }
        String name = worst.message().name();
        Draft draft = Draft.of(Severity.S3, "late message: " + name + " on " + members.name() + " " + words(worst))
                .about(members.name(), "response times")
                .sum(sum(late))
                .source(SOURCE)
                .why("a value that comes too late steers by what was, mostly when everything happens at once")
                .fix("on " + members.name() + " send less often what goes before " + name
                        + ", or give it a higher priority")
                .cause("messages of " + members.name());
        if (worst.ticks().isPresent()) {
            draft.judged(ms(worst), worst.deadlineMs(), "ms", SOURCE);
        }
        for (Late one : late.subList(0, Math.min(NAMED, late.size()))) {
            Message message = one.message();
            draft.at(new Place(
                    message.at(),
                    message.name(),
                    "message " + message.name() + " of " + message.sender().or("?")));
        }
        late.forEach(
                one -> draft.input(one.message().periodMs()).input(one.message().jitterMs()));
        return draft;
    }

    private double ms(Late late) {
        return BusMessage.ms(late.ticks().orElse(0), rateKbit);
    }

    private double excess(Late late) {
        return late.ticks().isPresent() ? ms(late) / late.deadlineMs() : Double.POSITIVE_INFINITY;
    }

    private String words(Late late) {
        return late.ticks().isPresent()
                ? "can take " + Figures.of(ms(late)) + " ms, deadline " + Figures.of(late.deadlineMs()) + " ms"
                : "can wait for ever";
    }

    private String sum(List<Late> late) {
        List<String> parts = new ArrayList<>();
        for (Late one : late.subList(0, Math.min(NAMED, late.size()))) {
            parts.add(one.message().name() + " " + words(one) + ", with " + Figures.of(PERCENT * one.load())
                    + " % of the time for what is as urgent");
        }
        int more = late.size() - parts.size();
        return String.join("; ", parts) + (more > 0 ? "; and " + more + " more" : "");
    }
}
