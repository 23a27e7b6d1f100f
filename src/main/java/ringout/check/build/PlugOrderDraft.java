package ringout.check.build;

import java.util.List;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;

/** Writes findings about the order in which pack plugs are made and broken. */
final class PlugOrderDraft {
    private PlugOrderDraft() {}

    /** The last contact made is a plain one. */
    static Draft order(
            Situation at, List<String> packs, MadeOrder.Made last, List<MadeOrder.Made> right, MadeOrder made) {
        String wanted = right.get(right.size() - 1).name();
        String order = String.join(
                ", ", made.plugs().stream().map(MadeOrder.Made::name).toList());
        return Draft.of(
                        Severity.S1,
                        "plug order: the last contact made is " + last.name() + ", plain; the pre-charge contact "
                                + wanted + " goes in before it")
                .about(packs)
                .at(place(at, last))
                .sum("made in this order: " + order + "; pre-charge at " + wanted)
                .why("the plain contact takes the whole inrush: a crack, pitted metal, a hot contact later")
                .meter("look at the plugs: the contact with the pre-charge resistor is " + wanted
                        + " by the list; watch which one is made last")
                .fix(
                        packs.contains(at.directory().name(last.unit()))
                                ? "make " + wanted + " last and break it first"
                                : "make " + last.name() + " first and " + wanted + " last, or fit pre-charge to "
                                        + last.name())
                .cause("plug order")
                .explains("P26", "B04");
    }

    /** The first contact broken is a plain one. */
    static Draft brokenFirst(List<String> packs, MadeOrder.Made first, List<MadeOrder.Made> right) {
        String wanted = right.get(right.size() - 1).name();
        return Draft.of(
                        Severity.S1,
                        "plug order: the first contact broken is " + first.name()
                                + ", plain; the pre-charge contact is " + wanted)
                .about(packs)
                .at(first.place())
                .sum("broken first: " + first.name() + "; pre-charge at " + wanted)
                .why("the arc of breaking burns the plain contact")
                .fix("break " + wanted + " first")
                .cause("plug order")
                .explains("P26", "B04");
    }

    /** A pack joins a live one and nobody compared their voltages. */
    static Draft unmeasured(Situation at, List<String> first, List<String> joining, MadeOrder.Made closing) {
        String names = String.join(", ", joining);
        String others = String.join(", ", first);
        return Draft.of(
                        Severity.S1,
                        "plug order: " + names + " joins " + others + " at " + closing.name()
                                + ", and no step before compares their voltages")
                .about(joining)
                .at(place(at, closing))
                .sum("no check of the voltages of " + others + " and " + names + " before " + closing.name())
                .why("packs at different charge put tens of amperes through each other at the plug")
                .meter("volts from " + closing.name() + " to its lead before it goes in: under 0.05 V a cell")
                .fix("add a step before it: compare the voltages of " + others + " and " + names)
                .cause("joining of " + names)
                .explains("B04");
    }

    private static Place place(Situation at, MadeOrder.Made plug) {
        return plug.place().span().known()
                ? plug.place()
                : new Place(at.aircraft().airframe().at(), "plug order", "plug order of the airframe");
    }
}
