package ringout.draw.block;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.draw.scene.SheetInfo;
import ringout.draw.scene.WireKind;

/**
 * Units by zone and the leads between them, ready to be laid out.
 *
 * @param info the title block
 * @param zones in the order of the list
 * @param leads in the order of the list
 * @param marks badges on units
 * @param findings the finding list
 * @param notes lines below it
 */
public record BlockScene(
        SheetInfo info,
        List<BlockZone> zones,
        List<BlockLead> leads,
        List<Mark> marks,
        List<FindingLine> findings,
        List<String> notes) {
    /**
     * A part of the airframe.
     *
     * @param name as the list calls it; empty for units whose zone is not given
     * @param units aboard there
     */
    public record BlockZone(String name, List<BlockUnit> units) {
        /** Keeps an unmodifiable copy. */
        public BlockZone {
            units = List.copyOf(units);
        }
    }

    /**
     * A unit.
     *
     * @param id identifier on the sheet
     * @param name as the list calls it
     * @param depth how many leads away from a pack it is fed; what is not fed lies one above what it is joined to
     */
    public record BlockUnit(String id, String name, int depth) {}

    /**
     * A lead.
     *
     * @param id identifier on the sheet
     * @param label what stands on it
     * @param from the unit it starts at
     * @param to the unit it ends at, another one
     * @param kind what it carries, by the gravest of its conductors
     */
    public record BlockLead(String id, String label, String from, String to, WireKind kind) {}

    /** Keeps unmodifiable copies and refuses a scene that contradicts itself. */
    public BlockScene {
        zones = List.copyOf(zones);
        leads = List.copyOf(leads);
        marks = List.copyOf(marks);
        findings = List.copyOf(findings);
        notes = List.copyOf(notes);
        Set<String> units = new HashSet<>();
        zones.forEach(zone ->
                zone.units().forEach(unit -> need(units.add(unit.id()), "identifier used twice: " + unit.id())));
        Set<String> lines = new HashSet<>();
        for (BlockLead lead : leads) {
            need(lines.add(lead.id()), "identifier used twice: " + lead.id());
            need(units.contains(lead.from()) && units.contains(lead.to()), "lead " + lead.id() + " has an unknown end");
            need(!lead.from().equals(lead.to()), "lead " + lead.id() + " ends where it starts");
        }
        marks.forEach(
                mark -> mark.targets().forEach(target -> need(units.contains(target), "mark on unknown " + target)));
    }

    private static void need(boolean kept, String breach) {
        if (!kept) {
            throw new IllegalArgumentException(breach);
        }
    }
}
