package ringout.sheet.build;

import java.util.List;
import ringout.plan.StagedPlan;
import ringout.sheet.document.Document;
import ringout.sheet.document.RevisionMark;
import ringout.sheet.document.Section;
import ringout.sheet.document.SignOff;

/**
 * What the sheets of a build are made from.
 *
 * @param plan the plan
 * @param mark on every page
 * @param grave open findings that forbid to power or to fly, one line each: no sheet is signed while there are any
 */
public record BuildSource(StagedPlan plan, RevisionMark mark, List<String> grave) {
    /** Keeps its own copy. */
    public BuildSource {
        grave = List.copyOf(grave);
    }

    Document sheet(String kind, String title, String foot, List<Section> sections) {
        return new Document(kind, title, mark, 1, 1, Document.Form.PORTRAIT, foot, sections);
    }

    SignOff signOff() {
        return new SignOff(List.of("made by", "inspected by (another person)"), grave);
    }
}
