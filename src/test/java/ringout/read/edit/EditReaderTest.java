package ringout.read.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.model.Aircraft;
import ringout.model.Datum;
import ringout.model.End;
import ringout.model.Lead;
import ringout.model.Origin;
import ringout.model.PortSetting;
import ringout.model.TerminatorState;
import ringout.model.edit.Edited;
import ringout.model.edit.Edits;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.source.MemoryFolder;
import ringout.text.Problem;

/** Edits as text, applied to an aircraft. */
class EditReaderTest {
    private static final Aircraft AIRCRAFT = aircraft();

    private static Aircraft aircraft() {
        ReadResult result = AircraftReader.read(MemoryFolder.named("test").with("aircraft.json", """
                {"types": [{"name": "GIMCTL", "loads": [{"rail": "12", "peakA": 5}, {"rail": "5", "peakA": 1}]}],
                 "units": [{"ref": "LOG", "type": "L", "zone": "hub", "ports": [{"port": "CAN2", "address": 31}]},
                           {"ref": "ONE", "type": "L", "ports": [{"port": "", "address": 7}]},
                           {"ref": "NEW", "type": "L"}, {"ref": "left wing", "type": "W"}],
                 "leads": [{"id": "W41", "from": "A-1", "to": "B-1", "route": [{"xMm": 5}, {"xMm": 9}]},
                           {"id": "W42", "from": "A-2-1", "to": "B-2-1"}, {"id": "W42", "from": "A-2-2", "to": "B-2-2"}]}
                """));
        assertEquals(List.of(), result.problems());
        return result.aircraft();
    }

    private static Aircraft edit(String... lines) {
        EditReader.Result edits = EditReader.read("edits.txt", String.join("\n", lines));
        assertEquals(List.of(), edits.problems());
        Edited edited = Edits.apply(AIRCRAFT, edits.edits());
        assertEquals(List.of(), edited.problems());
        return edited.aircraft();
    }

    private static List<String> problems(String... lines) {
        EditReader.Result edits = EditReader.read("e", String.join("\n", lines));
        List<Problem> all = new java.util.ArrayList<>(edits.problems());
        all.addAll(Edits.apply(AIRCRAFT, edits.edits()).problems());
        return all.stream().map(Problem::words).toList();
    }

    @Test
    void setsAFieldAsACellWouldSayIt() {
        Lead lead = edit("set leads[W41].pins 1>1 2>3 3>2", "set leads[w41].lengthMm 62 cm (measured 2026-03-01)")
                .leads()
                .get(0);
        assertEquals("1>1 2>3 3>2", lead.pins().known().orElseThrow().toString());
        assertEquals(new Datum.Known<>(620.0, Origin.MEASURED, "2026-03-01"), lead.lengthMm());
        assertEquals(
                new End("B-9"), edit("set leads[W41].to B-9").leads().get(0).to());
        assertEquals(
                Datum.unknown(), edit("set units[LOG].zone ?").units().get(0).zone());
        assertEquals(
                Datum.notApplicable(),
                edit("set units[LOG].zone n/a").units().get(0).zone());
        assertEquals(
                Datum.notAsked(), edit("clear units[LOG].zone").units().get(0).zone());
        assertEquals(
                Datum.of("fin"),
                edit("set units[left wing].zone fin").units().get(3).zone());
        assertEquals(
                Datum.of(18.0), edit("set airframe.missionMin 18").airframe().missionMin());
        assertEquals(
                List.of("LOG", "ONE"),
                edit("set units[NEW].redundantWith LOG, ONE").units().get(2).redundantWith());
    }

    @Test
    void findsRecordsByKeyRailNumberOrPlace() {
        assertEquals(
                Datum.of(6.5),
                edit("set types[GIMCTL].loads[12].peakA 6.5")
                        .types()
                        .get(0)
                        .loads()
                        .get(0)
                        .peakA());
        assertEquals(
                Datum.of(2.0),
                edit("set types[GIMCTL].loads[#2].peakA 2")
                        .types()
                        .get(0)
                        .loads()
                        .get(1)
                        .peakA());
        assertEquals(
                Datum.of(7.0),
                edit("set leads[#1].route[2].xMm 7")
                        .leads()
                        .get(0)
                        .route()
                        .get(1)
                        .xMm());
        assertEquals(
                Datum.of("b"), edit("set leads[W42#2].note b").leads().get(2).note());
    }

    @Test
    void settingsOfAPortAreMadeWhenMissing() {
        List<PortSetting> log =
                edit("set units[LOG].ports[CAN2].terminator on").units().get(0).ports();
        assertEquals(1, log.size());
        assertEquals(Datum.of(TerminatorState.ON), log.get(0).terminator());
        assertEquals(Datum.of(31), log.get(0).address());
        List<PortSetting> only =
                edit("set units[ONE].ports[CAN1].address 8").units().get(1).ports();
        assertEquals(1, only.size());
        assertEquals(Datum.of(8), only.get(0).address());
        List<PortSetting> fresh =
                edit("set units[NEW].ports[CAN1].address 8").units().get(2).ports();
        assertEquals("CAN1", fresh.get(0).port());
        assertEquals(Datum.of(8), fresh.get(0).address());
    }

    @Test
    void addsAndRemovesAndLeavesTheFirstAircraftAlone() {
        Aircraft edited = edit(
                "# a comment", "", "remove leads[W42#1]", "add leads {\"id\":\"W99\",\"from\":\"A-3\",\"to\":\"B-3\"}");
        assertEquals(
                List.of("W41", "W42", "W99"),
                edited.leads().stream().map(Lead::id).toList());
        assertEquals("edits.txt line 4, column 1", edited.leads().get(2).at().words());
        assertEquals(3, AIRCRAFT.leads().size());
    }

    @Test
    void tellsEveryLineThatCannotBeMade() {
        assertEquals(
                List.of(
                        "e line 1, column 1: 'sett' is not an edit (did you mean set?)",
                        "e line 2, column 1: no field `zon` here (did you mean zone?)",
                        "e line 3, column 1: `lengthMm` 'long' is not a number (write a number or ?)",
                        "e line 4, column 1: `leads` is a list (say which record: leads[...])",
                        "e line 5, column 1: no path after 'set' (such as units[LOG].zone)",
                        "e line 6, column 1: `to` cannot be empty (write ? when it is not known)",
                        "e line 7, column 1: lead W99 has no `from`; lead W99 has no `to` (give it, or write ? when it"
                                + " is not known)",
                        "e line 8, column 1: remove takes one record (such as leads[W63])",
                        "e line 9, column 1: units[LOGG].zone: there is no 'LOGG' (did you mean LOG?)",
                        "e line 10, column 1: leads[W42].note: there are 2 of 'W42' (say which: [W42#1])",
                        "e line 11, column 1: units: there would be two of 'log'",
                        "e line 12, column 1: units[ONE].ref: there would be two of 'LOG'",
                        "e line 13, column 1: leads[W41].route[#3].xMm: there is no number 3 (there are 2)"),
                problems(
                        "sett units[LOG].zone x",
                        "set units[LOG].zon x",
                        "set leads[W41].lengthMm long",
                        "set leads.lengthMm 3",
                        "set units[LOG zone x",
                        "clear leads[W41].to",
                        "add leads {\"id\":\"W99\"}",
                        "remove leads",
                        "set units[LOGG].zone x",
                        "set leads[W42].note x",
                        "add units {\"ref\":\"log\",\"type\":\"L\"}",
                        "set units[ONE].ref LOG",
                        "set leads[W41].route[#3].xMm 3"));
    }

    @Test
    void everyPathReadsBackAsItIsWritten() {
        for (String key : List.of("W41", "a b", "we]ird", "say \"so\"", "back\\slash", "W#1", " blank ", "")) {
            String line = "set " + ringout.model.edit.Path.of("leads").at(key).then("note") + " x";
            assertEquals(
                    key,
                    EditReader.read("e", line)
                            .edits()
                            .get(0)
                            .path()
                            .steps()
                            .get(0)
                            .pick()
                            .key(),
                    line);
        }
    }
}
