package ringout.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import ringout.draw.card.CardSheet;
import ringout.draw.harness.FaceSheets;
import ringout.draw.harness.LeadSheets;
import ringout.draw.harness.SurveySheets;
import ringout.finding.Report;
import ringout.graph.Circuit;
import ringout.present.svg.SvgOutcome;
import ringout.sheet.document.Figure;
import ringout.sheet.pack.Plates;

/** The drawings of a pack: each only when the verifier passed it. */
final class PackPlates {
    private final List<String> refused = new ArrayList<>();
    private final Plates plates;

    /** Draws those of one state. */
    PackPlates(Circuit circuit, Report report, String hash) {
        List<Figure> maps = new ArrayList<>();
        SurveySheets.map(circuit, report, hash)
                .ifPresent(map -> add(maps, "motors and surfaces", SvgOutcome.of(map.numbered(1, 1))));
        plates = new Plates(
                maps,
                cards("leads", LeadSheets.of(circuit, report, hash)),
                cards("plugs", FaceSheets.of(circuit, report, hash)));
    }

    private List<Figure> cards(String what, List<CardSheet> sheets) {
        // Each sheet is written and looked through by itself: on as many cores as there are.
        List<SvgOutcome> outcomes = IntStream.range(0, sheets.size())
                .parallel()
                .mapToObj(i -> SvgOutcome.of(
                        sheets.get(i).numbered(i + 1, sheets.size()).sheet()))
                .toList();
        List<Figure> figures = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            List<String> names = sheets.get(i).names();
            add(figures, what + " " + names.get(0) + " to " + names.get(names.size() - 1), outcomes.get(i));
        }
        return figures;
    }

    private void add(List<Figure> figures, String title, SvgOutcome outcome) {
        if (outcome instanceof SvgOutcome.Verified verified) {
            figures.add(new Figure(title, verified::text));
        } else if (outcome instanceof SvgOutcome.Refused no) {
            refused.add("drawing " + title + " is not legible and was left out: " + no.flaws());
        }
    }

    Plates plates() {
        return plates;
    }

    /** Drawings that were left out, and why. */
    List<String> refused() {
        return List.copyOf(refused);
    }
}
