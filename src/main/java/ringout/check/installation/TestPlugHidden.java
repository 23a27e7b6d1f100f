package ringout.check.installation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Figures;
import ringout.check.form.Gaps;
import ringout.check.form.InstallationThresholds;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.check.form.Threshold;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.Site;
import ringout.graph.order.Covers;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.PlannedTest;

/**
 * A test in the field at a plug that takes long to get at.
 *
 * <p>Why it matters: in the wind, with gloves, nobody takes two lids off for one reading: the test is left out, or something else
 * breaks on the way in.
 *
 * <p>Condition: a planned test that belongs to no step of the procedure, and so is made in service, uses a contact under lids that take
 * more than 10 minutes off and on together.
 *
 * <p>Does not see: tests of the build, which are made before the lids go on (B02); plugs that are hard to reach without a lid.
 *
 * <p>Reference: judgement.
 */
@CheckInfo(
        code = "M26",
        name = "test-plug-hidden",
        severity = Severity.S4,
        since = "0.3",
        needs = {"minutes of each lid", "step each planned test belongs to"})
public final class TestPlugHidden implements Check {
    /** A plug, the contacts of it that tests use, and the tests. */
    private record Used(List<Integer> pins, List<PlannedTest> tests) {}

    @Override
    public void look(Situation at, Outcomes out) {
        if (at.aircraft().airframe().covers().isEmpty()) {
            return;
        }
        Gaps gaps = new Gaps();
        Covers covers = Covers.of(at.circuit());
        Map<String, Used> byPlug = new LinkedHashMap<>();
        for (PlannedTest test : at.aircraft().record().tests()) {
            if (test.step() instanceof Datum.Unknown) {
                gaps.add("step of the procedure", "test " + test.id());
            } else if (!test.step().isKnown()) {
                gather(at, byPlug, test);
            }
        }
        byPlug.forEach((plug, used) -> look(at, out, gaps, covers, plug, used));
        gaps.tell(
                out,
                datum -> datum.startsWith("step")
                        ? new Gaps.Way("ask whoever planned the test", 2)
                        : new Gaps.Way("take it off and on by the clock", 15));
    }

    private static void gather(Situation at, Map<String, Used> byPlug, PlannedTest test) {
        for (String name : test.pins()) {
            if (at.directory().resolve(new End(name)) instanceof Site.OnPin on) {
                int pin = at.wiring().pinVertex(on.unit(), on.pin());
                Used used = byPlug.computeIfAbsent(
                        at.wiring().plugName(on.unit(), on.plug()),
                        key -> new Used(new ArrayList<>(), new ArrayList<>()));
                used.pins().add(pin);
                used.tests().add(test);
            }
        }
    }

    private static void look(Situation at, Outcomes out, Gaps gaps, Covers covers, String plug, Used used) {
        Threshold limit = at.limit(InstallationThresholds.FIELD_ACCESS);
        int pin = deepest(covers, used);
        double minutes = minutes(covers, pin);
        TreeSet<String> open = new TreeSet<>();
        for (int cover : over(covers, pin)) {
            if (covers.all().get(cover).minutes().isMissing()) {
                open.add(covers.name(cover));
            }
        }
        if (minutes > limit.value()) {
            out.finding(draft(at, covers, plug, used, pin, limit));
        } else if (open.isEmpty()) {
            out.looked();
        } else {
            open.forEach(name -> gaps.add("minutes off and on", name));
        }
    }

    /** Lids that hide a contact, each that lies over another included. */
    private static List<Integer> over(Covers covers, int pin) {
        List<Integer> over = new ArrayList<>();
        for (int cover = 0; cover < covers.all().size(); cover++) {
            if (covers.hides(cover, pin)) {
                over.add(cover);
            }
        }
        return over;
    }

    /** The contact that takes longest to get at. */
    private static int deepest(Covers covers, Used used) {
        return used.pins().stream()
                .max(Comparator.comparingDouble(pin -> minutes(covers, pin)))
                .orElseThrow();
    }

    /** Minutes to get at a contact, as far as they are told. */
    private static double minutes(Covers covers, int pin) {
        return over(covers, pin).stream()
                .mapToDouble(cover -> covers.all().get(cover).minutes().or(0.0))
                .sum();
    }

    private static Draft draft(Situation at, Covers covers, String plug, Used used, int deepest, Threshold limit) {
        double minutes = minutes(covers, deepest);
        List<String> lids = over(covers, deepest).stream().map(covers::name).toList();
        String tests = String.join(
                ", ", used.tests().stream().map(PlannedTest::id).distinct().toList());
        Draft draft = Draft.of(
                        Severity.S4,
                        "test plug hard to reach: " + plug + " for test " + tests + ", under "
                                + String.join(" and ", lids) + ", " + Figures.of(minutes) + " min")
                .about(plug)
                .cause(plug + "/access")
                .sum(String.join(" + ", lids) + ": " + Figures.of(minutes) + " min off and on, at most "
                        + Figures.of(limit.value()) + " min in the field")
                .judged(minutes, limit.value(), "min", limit.source())
                .why("in the field the test is left out, or something breaks on the way in")
                .fix(instead(at, covers, used, limit)
                        .map(other -> "measure at " + other + " instead, the same nets")
                        .orElse("bring the contacts of " + plug + " out to a test point outside " + lids.get(0)));
        used.tests().stream()
                .distinct()
                .forEach(test -> draft.at(
                        new Place(test.at(), test.id(), "test " + test.id() + ": " + String.join(" ", test.pins()))));
        return draft;
    }

    /** Contacts of another plug, within reach, that are one net each with those the tests use. */
    private static Optional<String> instead(Situation at, Covers covers, Used used, Threshold limit) {
        List<Integer> pins = used.pins().stream().distinct().toList();
        for (int other : net(at, pins.get(0))) {
            if (minutes(covers, other) > limit.value()
                    || at.directory().isJoint(at.wiring().unitOf(other))) {
                continue;
            }
            List<String> names = new ArrayList<>();
            for (int pin : pins) {
                for (int twin : net(at, pin)) {
                    if (at.wiring().unitOf(twin) == at.wiring().unitOf(other)
                            && at.wiring().plugIndex(twin) == at.wiring().plugIndex(other)
                            && names.size() < pins.size()) {
                        names.add(at.wiring().name(twin));
                        break;
                    }
                }
            }
            if (names.size() == pins.size()) {
                return Optional.of(String.join(" and ", names));
            }
        }
        return Optional.empty();
    }

    private static int[] net(Situation at, int pin) {
        return at.whole().nets().pins(at.whole().nets().of(pin));
    }
}
