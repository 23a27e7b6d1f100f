package ringout.check.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import ringout.check.form.Check;
import ringout.check.form.CheckInfo;
import ringout.check.form.Gaps;
import ringout.check.form.Outcomes;
import ringout.check.form.Situation;
import ringout.finding.Draft;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.model.Page;

/**
 * Pages of different states of the list in one document pack.
 *
 * <p>Why it matters: the sheet in the hand and the drawing on the wall tell of two aircraft, and nobody sees it.
 *
 * <p>Condition: the check codes on the pages handed over are not all the same, or a page bears another revision than the list has.
 *
 * <p>Does not see: pages that are not on record; whether all of them are of an old state.
 *
 * <p>Reference: common practice, no source.
 */
@CheckInfo(
        code = "X16",
        name = "mixed-revisions-in-a-pack",
        severity = Severity.S3,
        since = "0.3",
        needs = {"check code printed on each page"})
public final class MixedPack implements Check {
    @Override
    public void look(Situation at, Outcomes out) {
        Gaps gaps = new Gaps();
        Map<String, List<Page>> byHash = new TreeMap<>();
        List<Page> pages = at.aircraft().record().pages();
        for (Page page : pages) {
            if (page.hash().isMissing()) {
                gaps.add("check code", "page " + page.title());
            } else if (page.hash().isKnown()) {
                byHash.computeIfAbsent(page.hash().or("").strip(), key -> new ArrayList<>())
                        .add(page);
                out.looked();
            }
        }
        if (byHash.size() > 1) {
            out.finding(mixed(byHash));
        }
        String revision = at.aircraft().typeRevision().or("").strip();
        for (Page page : pages) {
            String printed = page.revision().or("").strip();
            if (!printed.isEmpty() && !revision.isEmpty() && !printed.equalsIgnoreCase(revision)) {
                out.finding(old(page, printed, revision));
            }
        }
        gaps.tell(out, datum -> new Gaps.Way("look at the foot of the page", 1));
    }

    private static Draft mixed(Map<String, List<Page>> byHash) {
        String most = byHash.entrySet().stream()
                .max(Comparator.comparingInt(entry -> entry.getValue().size()))
                .map(Map.Entry::getKey)
                .orElse("");
        List<Page> odd = byHash.entrySet().stream()
                .filter(entry -> !entry.getKey().equals(most))
                .flatMap(entry -> entry.getValue().stream())
                .toList();
        List<String> names = odd.stream().map(Page::title).toList();
        Draft draft = Draft.of(
                        Severity.S3,
                        "mixed revisions in a pack: " + String.join(", ", names)
                                + " not of the same state as the other pages")
                .about(names)
                .cause("pack")
                .sum(words(byHash))
                .why("the sheet in the hand and the drawing on the wall tell of two aircraft")
                .fix("print the whole pack anew from one state of the list");
        odd.forEach(page -> draft.at(new Place(page.at(), page.title(), page.title() + ": page")));
        return draft;
    }

    private static String words(Map<String, List<Page>> byHash) {
        return byHash.entrySet().stream()
                .map(entry -> entry.getKey() + " on "
                        + String.join(
                                ", ", entry.getValue().stream().map(Page::title).toList()))
                .collect(Collectors.joining("; "));
    }

    private static Draft old(Page page, String printed, String revision) {
        return Draft.of(
                        Severity.S3,
                        "mixed revisions in a pack: " + page.title() + " is of revision " + printed + ", the list of "
                                + revision)
                .about(page.title(), "revision")
                .at(new Place(page.at(), page.title(), page.title() + ": page"))
                .cause("pack")
                .sum("printed: " + printed + "; list: " + revision)
                .why("the sheet in the hand and the drawing on the wall tell of two aircraft")
                .fix("print the whole pack anew from one state of the list");
    }
}
