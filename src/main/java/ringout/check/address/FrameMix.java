package ringout.check.address;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Severity;
import ringout.model.Bus;
import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.model.FrameForm;

/**
 * A unit that knows only classic frames on a bus with flexible-data frames.
 *
 * <p>Why it matters: it takes each such frame for an error and destroys it.
 *
 * <p>Condition: the bus is declared for flexible frames, or a unit on it sends them and the bus is not declared classic, while
 * another unit knows classic frames only.
 *
 * <p>Does not see: units set to classic frames although their bus is declared otherwise.
 *
 * <p>Reference: ISO 11898-1 (classic and flexible data rate frames).
 */
@CheckInfo(
        code = "A05",
        name = "frame-mix",
        severity = Severity.S2,
        since = "0.1",
        needs = {"frame form of each bus unit"})
public final class FrameMix implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        for (Members members : Members.all(at)) {
            look(out, members);
        }
    }

    private static void look(Outcomes out, Members members) {
        Optional<FrameForm> declared =
                members.buses().declaration(members.segment()).map(Bus::frame).flatMap(Datum::known);
        List<Members.Member> flexible = with(members, FrameForm.FLEXIBLE);
        List<Members.Member> classic = with(members, FrameForm.CLASSIC);
        List<Members.Member> open = members.nodes().stream()
                .filter(node -> frame(members, node).isMissing())
                .toList();
        boolean unsure = members.buses()
                .declaration(members.segment())
                .filter(bus -> bus.frame() instanceof Datum.Unknown)
                .isPresent();
        if (unsure && !classic.isEmpty()) {
            out.cannotTell(
                    "frame form of " + members.name(), "read it from the controller's setting", 3, members.name());
            return;
        }
        if (declared.filter(form -> form == FrameForm.FLEXIBLE).isPresent()) {
            String why = members.name() + " is declared for flexible frames";
            classic.forEach(node -> out.finding(deaf(members, node, why)));
        } else if (declared.isEmpty() && !flexible.isEmpty() && !classic.isEmpty()) {
            boolean fewer = flexible.size() <= classic.size();
            flexible.stream().filter(node -> fewer).forEach(node -> out.finding(loud(members, node, classic)));
            String why = words(flexible) + " sends flexible frames";
            classic.stream().filter(node -> !fewer).forEach(node -> out.finding(deaf(members, node, why)));
        }
        boolean harmless = declared.filter(form -> form == FrameForm.CLASSIC).isPresent();
        if (open.isEmpty() || harmless) {
            out.looked();
        } else {
            members.ask(out, "frame form", "look it up in the maker's data", open);
        }
    }

    private static Datum<FrameForm> frame(Members members, Members.Member node) {
        return members.port(node).map(BusPort::frame).orElse(Datum.notAsked());
    }

    private static List<Members.Member> with(Members members, FrameForm form) {
        return members.nodes().stream()
                .filter(node -> frame(members, node).is(form))
                .toList();
    }

    private static String words(List<Members.Member> nodes) {
        return nodes.stream().map(Members.Member::words).collect(Collectors.joining(", "));
    }

    private static Draft loud(Members members, Members.Member node, List<Members.Member> classic) {
        String ref = node.unit().ref();
        return draft(
                members,
                node,
                node.words() + " sends flexible frames, but " + words(classic) + " know classic ones only",
                "set " + ref + " to classic frames, or take it off " + members.name());
    }

    private static Draft deaf(Members members, Members.Member node, String why) {
        return draft(
                members,
                node,
                node.words() + " knows classic frames only, but " + why,
                "take " + node.unit().ref() + " off " + members.name() + ", or set all of it to classic frames");
    }

    private static Draft draft(Members members, Members.Member node, String fault, String fix) {
        Draft draft = Draft.of(Severity.S2, "frame forms mixed: " + fault)
                .about(node.unit().ref(), members.name())
                .at(node.unit(), "frame")
                .sum(fault)
                .source("ISO 11898-1")
                .why("a unit that knows classic frames only destroys every flexible one as an error")
                .meter("unplug " + node.unit().ref() + ": the errors stop")
                .fix(fix)
                .cause("frames of " + members.name());
        members.bridges().forEach(draft::cause);
        return draft;
    }
}
