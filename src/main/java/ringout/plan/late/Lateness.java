package ringout.plan.late;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import ringout.check.build.HandSettings;
import ringout.check.build.HiddenSpots;
import ringout.check.form.Situation;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.graph.order.Covers;
import ringout.model.Cover;
import ringout.model.Hole;
import ringout.model.Photo;
import ringout.plan.task.HiddenJoint;
import ringout.plan.task.Task;
import ringout.plan.task.TaskNet;

/** Works out the last-chance list of every lid, and what is at stake under them. */
public final class Lateness {
    /** Doing a test once more. Judgement. */
    private static final double RETEST_MINUTES = 5;

    private final TaskNet net;
    private final List<Integer> order;
    private final Situation at;
    private final Wiring wiring;
    private final Covers covers;
    private final BitSet hidden = new BitSet();

    private Lateness(Circuit circuit, TaskNet net, List<Integer> order) {
        this.net = net;
        this.order = order;
        at = new Situation(circuit);
        wiring = circuit.wiring();
        covers = Covers.of(circuit);
        for (int cover = 0; cover < covers.all().size(); cover++) {
            hidden.or(covers.pins(cover));
        }
    }

    /**
     * {@return the last-chance lists, one a lid, in the order in which the lids are closed}
     *
     * @param order all tasks in the order of the plan
     * @param stageOf number of the stage of each task
     */
    public static List<LastChance> lists(Circuit circuit, TaskNet net, List<Integer> order, int[] stageOf) {
        Lateness late = new Lateness(circuit, net, order);
        List<Integer> lids = new ArrayList<>();
        for (int cover = 0; cover < net.closes().size(); cover++) {
            lids.add(cover);
        }
        lids.sort(java.util.Comparator.comparingInt(
                cover -> order.indexOf(net.closes().get(cover))));
        return lids.stream()
                .map(cover -> late.list(cover, stageOf[net.closes().get(cover)]))
                .toList();
    }

    /** {@return what is at stake under the lids, as written and as planned} */
    public static Exposure exposure(Circuit circuit, TaskNet net, List<Integer> order) {
        return new Lateness(circuit, net, order).exposure();
    }

    private LastChance list(int cover, int stage) {
        List<LastChance.Joint> joints = net.joints().stream()
                .filter(joint -> joint.spot().cover() == cover)
                .map(this::joint)
                .toList();
        return new LastChance(
                covers.name(cover),
                stage,
                covers.minutes(cover),
                covers.withoutMinutes(cover),
                joints,
                settings(cover),
                open(cover));
    }

    /** What the list says of a lid that means nothing aboard, or does not say at all. */
    private List<String> open(int cover) {
        if (covers.all().get(cover).hides().isEmpty()) {
            return List.of("what lies under the " + covers.name(cover));
        }
        return covers.strange(cover).stream()
                .map(name -> "what is meant by " + name + " under the " + covers.name(cover)
                        + "; nothing aboard has that name")
                .toList();
    }

    private LastChance.Joint joint(HiddenJoint joint) {
        return new LastChance.Joint(
                joint.spot().name(),
                joint.leads(),
                joint.checks().stream().map(this::words).toList(),
                photos(joint),
                outside(joint.spot()),
                late(joint.spot().cover()),
                wrong(joint));
    }

    private String words(int task) {
        Task one = net.tasks().get(task);
        return one.what() + (one.written() ? ", step " + one.step() : "");
    }

    private List<String> photos(HiddenJoint joint) {
        List<String> photos = new ArrayList<>();
        String unit = at.directory().name(joint.spot().unit());
        for (Photo photo : at.aircraft().record().photos()) {
            if (photo.item().equalsIgnoreCase(joint.spot().name())
                    || photo.item().equalsIgnoreCase(unit)) {
                photos.add("on record: " + photo.file().or("no file named"));
            }
        }
        if (photos.isEmpty()) {
            joint.photos()
                    .forEach(task -> photos.add(
                            net.tasks().get(task).written()
                                    ? "step " + net.tasks().get(task).step()
                                    : "not in the procedure"));
        }
        return List.copyOf(photos);
    }

    /**
     * The far ends of all leads on a plug, where each is in reach with all lids on: pulled there, a meter reads into the lead
     * up to the joint. Another plug on the same net would not do: it shows the net and not this contact.
     */
    private String outside(HiddenSpots.Spot spot) {
        TreeSet<String> far = new TreeSet<>();
        int end = wiring.endPin(spot.unit(), spot.plug());
        for (int pin = wiring.firstPin(spot.unit(), spot.plug()); pin < end; pin++) {
            for (int wire : wiring.wiresAt(pin)) {
                int other = wiring.wires().get(wire).otherPin(pin);
                if (hidden.get(other)) {
                    return "";
                }
                far.add(plug(other));
            }
        }
        return String.join(", ", far);
    }

    private String plug(int pin) {
        return wiring.plugName(wiring.unitOf(pin), wiring.plugIndex(pin));
    }

    /** Opening, the test again, and one test for every lid on the way that something hangs on or passes. */
    private OptionalDouble late(int cover) {
        OptionalDouble open = covers.minutes(cover);
        if (open.isEmpty()) {
            return open;
        }
        double sum = open.getAsDouble() + RETEST_MINUTES;
        List<Integer> way = new ArrayList<>(covers.over(cover));
        way.add(cover);
        for (int lid : way) {
            sum += disturbs(covers.all().get(lid)) ? RETEST_MINUTES : 0;
        }
        return OptionalDouble.of(sum);
    }

    private boolean disturbs(Cover lid) {
        boolean passed = at.aircraft().airframe().holes().stream()
                .filter(hole -> hole.name().equalsIgnoreCase(lid.name()))
                .map(Hole::leads)
                .anyMatch(leads -> !leads.isEmpty());
        return passed || !lid.carries().isEmpty();
    }

    private double wrong(HiddenJoint joint) {
        return JointRisk.of(at, joint).wrong() * Math.max(1, joint.leads().size());
    }

    /** What a hand sets on units that this lid hides first. */
    private List<String> settings(int cover) {
        List<String> found = new ArrayList<>();
        for (int unit = 0; unit < at.directory().count(); unit++) {
            if (deepest(unit) == cover && !at.directory().isJoint(unit)) {
                for (HandSettings.Setting setting : HandSettings.of(at, unit)) {
                    if (!setting.needsNoHand()) {
                        found.add(setting.name() + " on " + at.directory().name(unit));
                    }
                }
            }
        }
        return List.copyOf(found);
    }

    private int deepest(int unit) {
        int deepest = -1;
        for (int cover = 0; cover < covers.all().size(); cover++) {
            if (covers.hidesUnit(cover, unit)
                    && (deepest < 0 || covers.over(cover).contains(deepest))) {
                deepest = cover;
            }
        }
        return deepest;
    }

    private Exposure exposure() {
        List<Exposure.Term> terms = new ArrayList<>();
        TreeSet<String> untold = new TreeSet<>();
        for (HiddenJoint joint : net.joints()) {
            int cover = joint.spot().cover();
            untold.addAll(covers.withoutMinutes(cover));
            late(cover)
                    .ifPresent(minutes -> terms.add(new Exposure.Term(
                            joint.spot().name(),
                            wrong(joint),
                            minutes,
                            joint.checks().stream()
                                    .anyMatch(check -> net.tasks().get(check).written()),
                            planned(joint))));
        }
        return new Exposure(terms, List.copyOf(untold));
    }

    private boolean planned(HiddenJoint joint) {
        int close = order.indexOf(net.closes().get(joint.spot().cover()));
        return joint.checks().stream().anyMatch(check -> order.indexOf(check) < close);
    }
}
