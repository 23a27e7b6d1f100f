package ringout.check.power;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Thresholds;
import ringout.check.form.Weighing;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.graph.Gap;
import ringout.graph.Wire;
import ringout.model.Datum;
import ringout.model.Plug;
import ringout.solve.power.LoadCase;
import ringout.solve.power.PowerFlow;

/**
 * A contact that carries more than it is rated for.
 *
 * <p>Why it matters: a contact that runs hot loses its spring and its plating, gets hotter, and opens or melts its housing.
 *
 * <p>Formula: current of each contact, solved over the whole network, against its rating; times 0.8 where several contacts of one
 * plug carry the same rail or 0V, since they do not share evenly. With all loads at their average; in each declared event and with each
 * unit at its peak while all others draw their average, a peak of 10 s at most against the short-time rating for the time it
 * holds. A rating taken from the size of a contact decides nothing: what exceeds it cannot be told.
 *
 * <p>Does not see: clamps and studs of joints, wear, dirt and half-seated plugs; phase leads of motors. Currents up to
 * 0.05 A are nobody's concern, whatever the contact.
 *
 * <p>Reference: the maker's data; usual ratings by size and the factor 0.8 are common practice, no source.
 */
@CheckInfo(
        code = "P16",
        name = "contact-overloaded",
        severity = Severity.S2,
        since = "0.2",
        solves = true,
        needs = {"rating of one contact of each supply plug", "average and peak current of each load"})
public final class ContactOverloaded implements Weighing {
    static final String RATING = "rating of one contact";
    static final String SHORT_RATING = "short-time rating of one contact";

    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        Optional<Flowing> average = Flowing.of(at, LoadCase.AVERAGE, gaps);
        if (average.isPresent()) {
            PowerFlow flow = average.get().flow();
            Overload.averages(at, flow, gaps);
            Overload.peaks(at, gaps);
            look(at, out, gaps, flow);
        }
        gaps.tell(out, PowerData::way);
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, PowerFlow average) {
        Optional<PowerFlow> screen =
                at.operatingPoint(LoadCase.PEAK) instanceof PowerFlow flow ? Optional.of(flow) : Optional.empty();
        List<Contact> doubtful = new ArrayList<>();
        BitSet leads = new BitSet();
        double[] slack = new double[at.aircraft().leads().size()];
        Arrays.fill(slack, Double.POSITIVE_INFINITY);
        List<Draft> drafts = new ArrayList<>();
        Contact.each(at, contact -> {
            double amps = contact.worst(average);
            double all = screen.map(contact::worst).orElse(Double.POSITIVE_INFINITY);
            boolean carries = amps > 0 || (screen.isPresent() && all > 0);
            if (Overload.over(amps, Math.max(contact.limitA(), Overload.NEGLIGIBLE_A))) {
                over(at, gaps, drafts, contact, average);
            } else if (carries && Overload.over(all, Math.max(contact.limitA(), Overload.NEGLIGIBLE_A))) {
                doubtful.add(contact);
                contact.leads(leads, lead -> slack[lead] = Math.min(slack[lead], contact.limitA() - amps));
            } else if (carries) {
                out.looked();
            }
        });
        OwnPeaks peaks = new OwnPeaks(at, leads);
        List<OwnPeaks.Peak> cases = doubtful.isEmpty() ? List.of() : peaks.all(slack);
        peaks(at, out, gaps, drafts, doubtful, peaks, cases);
        drafts.forEach(out::finding);
    }

    private static void over(Situation at, Gaps gaps, List<Draft> drafts, Contact contact, PowerFlow flow) {
        List<Gap> guessed = ParallelReturn.guessed(at, flow, contact.wire(flow));
        if (!contact.rating().given()) {
            gaps.add(RATING, contact.plugName());
        } else if (!guessed.isEmpty()) {
            gaps.add(guessed);
        } else {
            drafts.add(ContactDraft.average(at, contact, flow));
        }
    }

    private static void peaks(
            Situation at,
            Outcomes out,
            Gaps gaps,
            List<Draft> drafts,
            List<Contact> contacts,
            OwnPeaks peaks,
            List<OwnPeaks.Peak> cases) {
        for (Contact contact : contacts) {
            Optional<Draft> worst = Optional.empty();
            double most = 0;
            List<Gap> open = new ArrayList<>();
            for (OwnPeaks.Peak peak : cases) {
                double amps = contact.worst(peak.flow());
                double least = Math.max(contact.limitA(), Overload.NEGLIGIBLE_A);
                boolean own = peaks.concerns(contact.wire(peak.flow()).leadIndex(), peak.of());
                if (!own || !Overload.over(amps, most) || !Overload.over(amps, least)) {
                    continue;
                }
                List<Gap> missing = missing(at, contact, peaks, peak);
                open.addAll(missing);
                double limit = limit(at, contact, peaks, peak);
                if (missing.isEmpty() && Overload.over(amps, limit)) {
                    most = amps;
                    worst = Optional.of(ContactDraft.peak(at, contact, limit, peaks, peak));
                }
            }
            worst.ifPresent(drafts::add);
            if (worst.isEmpty() && open.isEmpty()) {
                out.looked();
            } else if (worst.isEmpty()) {
                gaps.add(open);
            }
        }
    }

    /** What is missing to judge a contact that carries more than it stands all day. */
    private static List<Gap> missing(Situation at, Contact contact, OwnPeaks peaks, OwnPeaks.Peak peak) {
        Wire wire = contact.wire(peak.flow());
        if (!contact.rating().given()) {
            return List.of(new Gap(RATING, contact.plugName()));
        }
        List<Gap> missing = new ArrayList<>(ParallelReturn.guessed(at, peak.flow(), wire));
        OptionalDouble seconds = peaks.seconds(wire, peak.of());
        if (seconds.isEmpty()) {
            missing.add(new Gap(FuseBelowLoad.TIME, wire.lead().id()));
        } else if (!shortTime(contact.plug()) && seconds.getAsDouble() <= brief(at, contact)) {
            missing.add(new Gap(SHORT_RATING, contact.plugName()));
        }
        return missing;
    }

    /** Whether a plug tells what its contacts carry for a short time, and for how long. */
    private static boolean shortTime(Plug plug) {
        return plug.contactPeakA().isKnown() && !(plug.contactPeakS() instanceof Datum.Unknown);
    }

    /** What a contact may carry while a peak lasts in A. */
    private static double limit(Situation at, Contact contact, OwnPeaks peaks, OwnPeaks.Peak peak) {
        OptionalDouble seconds = peaks.seconds(contact.wire(peak.flow()), peak.of());
        boolean brief = seconds.isPresent() && seconds.getAsDouble() <= brief(at, contact);
        return brief
                ? Math.max(contact.limitA(), contact.plug().contactPeakA().or(0.0) * contact.share())
                : contact.limitA();
    }

    /** How long a peak may last to count as one in s: as long as the short-time rating holds. */
    private static double brief(Situation at, Contact contact) {
        return contact.plug().contactPeakS().or(at.limit(Thresholds.PEAK_BRIEF).value());
    }
}
