package ringout.sheet.pack;

import java.util.List;
import java.util.Optional;
import ringout.finding.Report;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.sheet.Cautions;
import ringout.sheet.document.Document;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Section;
import ringout.sheet.document.SignOff;
import ringout.sheet.harness.Conductors;

/**
 * What the documents of a pack are made from.
 *
 * @param circuits the aircraft in its declared states, of one wiring; the pack is about the first
 * @param report the review of them all
 * @param today day waivers and dates are held against, YYYY-MM-DD
 * @param mark on every page
 * @param conductors names of conductors
 */
public record PackSource(
        List<Circuit> circuits, Report report, String today, RevisionMark mark, Conductors conductors) {
    private static final List<String> ROLES = List.of("made by", "inspected by", "released by");

    /** Keeps its own copy. */
    public PackSource {
        circuits = List.copyOf(circuits);
    }

    /** {@return what a pack of some states is made from} */
    public static PackSource of(List<Circuit> circuits, Report report, String today) {
        Circuit first = circuits.get(0);
        RevisionMark mark =
                RevisionMark.of(first.wiring().aircraft(), first.state().name());
        return new PackSource(circuits, report, today, mark, new Conductors(first.wiring()));
    }

    /** {@return the state the pack is about} */
    Circuit circuit() {
        return circuits.get(0);
    }

    Wiring wiring() {
        return circuit().wiring();
    }

    Aircraft aircraft() {
        return wiring().aircraft();
    }

    /** Type of a unit; empty for one that has no name to be found by. */
    Optional<UnitType> type(Unit unit) {
        return wiring().directory().find(unit.ref()).map(wiring().directory()::type);
    }

    /** Findings that forbid to power or to fly, in one line each. */
    public List<String> grave() {
        return report.headlines().stream()
                .filter(headline -> headline.finding().severity().atLeast(Severity.S2))
                .map(headline -> headline.finding().severity() + " "
                        + headline.finding().code() + " " + headline.finding().title())
                .toList();
    }

    /** Lines for signatures, or why none is offered: no page is signed while something grave is open. */
    SignOff signOff() {
        return new SignOff(ROLES, grave());
    }

    Document upright(String kind, String title, List<Section> sections) {
        return new Document(kind, title, mark, 1, 1, Document.Form.PORTRAIT, Cautions.FOOT, sections);
    }

    Document upright(String kind, String title, String foot, List<Section> sections) {
        return new Document(kind, title, mark, 1, 1, Document.Form.PORTRAIT, foot, sections);
    }

    Document flat(String kind, String title, List<Section> sections) {
        return new Document(kind, title, mark, 1, 1, Document.Form.LANDSCAPE, Cautions.FOOT, sections);
    }
}
