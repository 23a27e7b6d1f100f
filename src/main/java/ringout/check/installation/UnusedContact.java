package ringout.check.installation;

import java.util.List;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Plug;

/**
 * An unused contact of a plug in use that nobody has declared, or a large plug without any spare contact.
 *
 * <p>Why it matters: whether a contact is empty on purpose or forgotten cannot be told later; an open hole in a sealed plug lets
 * water in; a large plug without a spare has to be replaced for the first wire that is added.
 *
 * <p>Condition: no conductor ends at a contact, the plug has others in use, and the contact is neither declared spare nor of
 * the kind none. S5; S4 in a sealed plug. A plug of more than 12 contacts has none declared spare: S5. Plugs that are not sealed are
 * looked at once the project has declared a spare contact anywhere.
 *
 * <p>Does not see: blind plugs in open holes, contacts in joints.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "M11",
        name = "unused-contact",
        severity = Severity.S5,
        since = "0.3",
        needs = {"which contacts are spare"})
public final class UnusedContact implements Check {
    private static final int LARGE = 12;

    @Override
    public void look(Situation at, Outcomes out) {
        boolean begun = at.aircraft().types().stream()
                .flatMap(type -> type.plugs().stream())
                .flatMap(plug -> plug.pins().stream())
                .anyMatch(pin -> Asked.is(pin.spare()));
        Gaps gaps = new Gaps();
        for (PlugInUse plug : PlugInUse.all(at)) {
            if (begun || plug.plug().sealed().is(true)) {
                look(at, out, gaps, plug);
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("ask whoever drew the plug", 2));
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, PlugInUse use) {
        List<String> open = use.open(at);
        Plug plug = use.plug();
        if (!use.doubtful(at).isEmpty()) {
            gaps.add("spare contacts", use.name(at) + " " + String.join(", ", use.doubtful(at)));
        }
        if (!open.isEmpty()) {
            out.finding(open(at, use, open));
        } else {
            out.looked();
        }
        boolean spare = plug.pins().stream().anyMatch(pin -> !pin.spare().is(false) && Asked.is(pin.spare()));
        if (plug.pins().size() > LARGE && !spare) {
            out.finding(noSpare(at, use));
        }
    }

    private static Draft open(Situation at, PlugInUse use, List<String> open) {
        boolean sealed = use.plug().sealed().is(true);
        String name = use.name(at);
        String pins = String.join(", ", open);
        return Draft.of(
                        sealed ? Severity.S4 : Severity.S5,
                        (sealed ? "open hole in a sealed plug: " : "unused contact not declared: ") + name + " " + pins)
                .about(name)
                .cause(name + "/unused")
                .seen(at.directory().unit(use.unit()))
                .sum(name + " contact " + pins + ": no conductor, neither spare nor none; "
                        + use.plug().pins().size() + " contacts in all")
                .why(
                        sealed
                                ? "water goes in where no wire fills the hole"
                                : "whether it is empty on purpose or forgotten cannot be told later")
                .fix(
                        sealed
                                ? "close the hole with a blind plug or a short wire, and declare the contact spare"
                                : "declare unused contacts spare, or wire them");
    }

    private static Draft noSpare(Situation at, PlugInUse use) {
        String name = use.name(at);
        int pins = use.plug().pins().size();
        return Draft.of(Severity.S5, "no spare contact: " + name + " of " + pins + " contacts")
                .about(name, "spare")
                .cause(name + "/spare")
                .seen(at.directory().unit(use.unit()))
                .sum(pins + " contacts, none declared spare; a plug of more than " + LARGE + " keeps one")
                .why("for the first wire that is added the plug has to be replaced")
                .fix("keep a spare contact in plugs of more than " + LARGE);
    }
}
