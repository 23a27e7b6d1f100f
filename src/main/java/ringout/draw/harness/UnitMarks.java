package ringout.draw.harness;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.finding.Finding;
import ringout.finding.Headline;
import ringout.finding.Place;
import ringout.finding.Severity;
import ringout.graph.Circuit;
import ringout.graph.Directory;
import ringout.graph.Wire;

/** Findings on a sheet of units: a badge on every unit that a finding names, or that a row it is caused by ends at. */
final class UnitMarks {
    private final List<Mark> marks = new ArrayList<>();
    private final List<FindingLine> lines = new ArrayList<>();

    /**
     * Finds them.
     *
     * @param ofUnit identifiers on the sheet that stand for a unit, by its name
     */
    UnitMarks(Circuit circuit, List<Headline> headlines, Map<String, Set<String>> ofUnit) {
        Map<String, Set<String>> unitsOfRow = new HashMap<>();
        Directory directory = circuit.wiring().directory();
        for (Wire wire : circuit.wiring().wires()) {
            Set<String> units = unitsOfRow.computeIfAbsent(wire.lead().id(), key -> new LinkedHashSet<>());
            units.add(directory.name(circuit.wiring().unitOf(wire.fromPin())));
            units.add(directory.name(circuit.wiring().unitOf(wire.toPin())));
        }
        for (int i = 0; i < headlines.size(); i++) {
            Finding finding = headlines.get(i).finding();
            Set<String> targets = targets(finding, ofUnit, unitsOfRow);
            if (!targets.isEmpty() && finding.severity().atLeast(Severity.S4)) {
                BadgeKind kind = BadgeKind.valueOf(finding.severity().name());
                marks.add(new Mark(i + 1, kind, false, List.copyOf(targets)));
                lines.add(new FindingLine(i + 1, kind, false, finding.code(), finding.title()));
            }
        }
    }

    private static Set<String> targets(
            Finding finding, Map<String, Set<String>> ofUnit, Map<String, Set<String>> unitsOfRow) {
        Set<String> units = new LinkedHashSet<>(finding.objects());
        for (Place place : finding.at()) {
            units.add(place.row());
            if (finding.causes().contains(place.row())) {
                units.addAll(unitsOfRow.getOrDefault(place.row(), Set.of()));
            }
        }
        Set<String> targets = new LinkedHashSet<>();
        units.forEach(unit -> targets.addAll(ofUnit.getOrDefault(unit, Set.of())));
        return targets;
    }

    List<Mark> marks() {
        return marks;
    }

    List<FindingLine> lines() {
        return lines;
    }
}
