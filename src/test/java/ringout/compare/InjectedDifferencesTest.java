package ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import ringout.compare.difference.Kind;
import ringout.model.Aircraft;
import ringout.model.shape.Shape;
import ringout.model.shape.Slot;

/** Random changes of the sample aircraft: every one is found, as what it is, and nothing else. */
class InjectedDifferencesTest {
    private static final int ROUNDS = 90;

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker"})
    void everyChangeIsFoundAndNothingElse(String sample) {
        Aircraft base = Lists.sample(sample);
        Set<Kind> met = EnumSet.noneOf(Kind.class);
        for (int round = 0; round < ROUNDS; round++) {
            List<Changes.Change> changes = new Changes(base, new Random(round)).some(1 + round % 6);
            List<String> wanted = new ArrayList<>();
            List<String> edits = new ArrayList<>();
            for (Changes.Change change : changes) {
                wanted.add(change.kind() + " " + change.object());
                edits.addAll(change.edits());
                met.add(change.kind());
            }
            Aircraft other = Lists.edited(base, edits.toArray(new String[0]));
            List<String> found = new ArrayList<>(Lists.differences(base, other).stream()
                    .map(one -> one.kind() + " " + one.object())
                    .toList());
            Collections.sort(wanted);
            Collections.sort(found);
            assertEquals(wanted, found, "round " + round + " " + edits);
        }
        assertEquals(31, met.size(), "kinds of changes tried: " + met);
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "starter"})
    void anAircraftDoesNotDifferFromItself(String sample) {
        assertEquals(List.of(), Lists.lines(Lists.sample(sample), Lists.sample(sample)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"linewarden", "dewmaker", "starter"})
    void theOrderOfRowsIsNoDifference(String sample) {
        Aircraft base = Lists.sample(sample);
        Object[] values = Shape.of(Aircraft.class).values(base);
        for (Slot slot : Shape.of(Aircraft.class).slots()) {
            if (slot.kind() == Slot.Kind.RECORDS) {
                List<Object> rows = new ArrayList<>((List<?>) values[slot.index()]);
                Collections.shuffle(rows, new Random(5));
                values[slot.index()] = List.copyOf(rows);
            }
        }
        assertEquals(List.of(), Lists.lines(base, Shape.of(Aircraft.class).make(values)));
    }

    @Test
    void theSpellingOfContactsAndRemarksAreNoDifference() {
        Aircraft base = Lists.sample("linewarden");
        Aircraft other = Lists.edited(
                base,
                "set leads[W68].from LOG.C2",
                "set leads[W68].to gmc/c1",
                "clear leads[W68].note",
                "set leads[W82].pins 1>1 2>3 3>2 4>4",
                "set leads[W66].note seen by two",
                "set leads[W65].lengthMm 620 (measured 2026-03-01)");
        assertEquals(List.of(), Lists.lines(base, other));
    }

    @Test
    void aLeadWrittenFromItsOtherEndIsTheSame() {
        Aircraft base = Lists.sample("linewarden");
        Aircraft other = Lists.edited(
                base,
                "set leads[W69].from LOG-PWR",
                "set leads[W69].to PDB-T2",
                "set leads[W69].fuseAt to",
                "set leads[W69].fromKey 44 V",
                "set leads[W82].from GN2-U",
                "set leads[W82].to FC-SER2",
                "set leads[W82].colours 1=RD 3=WH 2=GY 4=BK");
        assertEquals(List.of(), Lists.lines(base, other));
    }

    @Test
    void aRowForEachWireIsTheSameLead() {
        Aircraft base = Lists.sample("linewarden");
        String row = "\",\"kind\":\"power\",\"awg\":18,\"lengthMm\":420,\"zone\":\"nose rail\",\"colours\":\"";
        Aircraft plain = Lists.edited(
                base,
                "remove leads[W72]",
                "add leads {\"id\":\"W72\",\"from\":\"RG12-O1\",\"to\":\"GMC-PWR" + row + "1=RD 2=BK\"}");
        Aircraft wires = Lists.edited(
                base,
                "remove leads[W72]",
                "add leads {\"id\":\"W72\",\"from\":\"RG12-O1-2\",\"to\":\"GMC-PWR-2" + row + "2=BK\"}",
                "add leads {\"id\":\"W72\",\"from\":\"RG12-O1-1\",\"to\":\"GMC-PWR-1" + row + "1=RD\"}");
        assertEquals(List.of(), Lists.lines(plain, wires));
    }
}
