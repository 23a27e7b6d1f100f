package ringout.read.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import ringout.model.Aircraft;
import ringout.model.Awg;
import ringout.model.BusPort;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.LeadKind;
import ringout.model.Origin;
import ringout.model.Pin;
import ringout.model.PinRole;
import ringout.model.PortSetting;
import ringout.model.Unit;
import ringout.model.UnitType;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.source.MemoryFolder;
import ringout.text.Problem;

/** One habit of hand-kept tables after the other. */
class TableReaderTest {
    private static final MemoryFolder EMPTY = MemoryFolder.named("test");

    private static Aircraft read(String file, String text) {
        return read(EMPTY.with(file, text));
    }

    private static Aircraft read(MemoryFolder folder) {
        ReadResult result = AircraftReader.read(folder);
        assertEquals(List.of(), result.problems().stream().map(Problem::words).toList());
        return result.aircraft();
    }

    private static List<Lead> leads(String... lines) {
        return read("leads.csv", String.join("\n", lines)).leads();
    }

    private static List<String> problems(String file, String... lines) {
        return AircraftReader.read(EMPTY.with(file, String.join("\n", lines))).problems().stream()
                .map(Problem::words)
                .toList();
    }

    @Test
    void headsByFieldNameTradeWordAndUnitOfMeasure() {
        Lead lead = leads(
                        "Run;FROM;To ;type;gauge;Length (cm);route_mm;fuse_A;avg [mA];pins (if not straight);Remark",
                        "W65 ; FC-C2;GN1-C1;CAN;AWG 26;62;650;3;40;1>1 2>3;red not fitted")
                .get(0);
        assertEquals("W65", lead.id());
        assertEquals("FC-C2", lead.from().text());
        assertEquals(Datum.of(LeadKind.CAN), lead.kind());
        assertEquals(Datum.of(new Awg(26)), lead.awg());
        assertEquals(Datum.of(620.0), lead.lengthMm());
        assertEquals(Datum.of(650.0), lead.routeMm());
        assertEquals(Datum.of(3.0), lead.fuseA());
        assertEquals(Datum.of(0.04), lead.averageA());
        assertEquals("1>1 2>3", lead.pins().known().orElseThrow().toString());
        assertEquals(Datum.of("red not fitted"), lead.note());
        assertEquals("leads.csv row 2", lead.at().words());
    }

    @Test
    void separatorsAndDecimalComma() {
        for (String separator : List.of(",", ";", "\t", "|")) {
            String quoted = separator.equals(",") ? "\"62,5\"" : "62,5";
            Lead lead = leads(
                            String.join(separator, "id", "from", "to", "len_cm"),
                            String.join(separator, "W1", "A-1", "B-1", quoted))
                    .get(0);
            assertEquals(Datum.of(625.0), lead.lengthMm(), separator);
        }
        assertEquals("W1", leads("sep=;", "id;from;to", "W1;A-1;B-1").get(0).id());
    }

    @Test
    void aDoubtfulThousandIsAskedForUnlessTheTableTells() {
        assertEquals(
                List.of("leads.csv row 2, `length`: '1,250' can be read in two ways (write 1250 or 1.250)"),
                problems("leads.csv", "id;from;to;length", "W1;A-1;B-1;1,250"));
        assertEquals(
                Datum.of(1.25),
                leads("id;from;to;length", "W1;A-1;B-1;1,250", "W2;A-2;B-2;0,5")
                        .get(0)
                        .lengthMm());
        assertEquals(
                Datum.of(1250.0),
                leads("id;from;to;length", "W1;A-1;B-1;1,250", "W2;A-2;B-2;0.5")
                        .get(0)
                        .lengthMm());
        assertEquals(
                List.of("leads.csv row 2, `length`: '1.250' can be read in two ways (write 1250 or 1.250)"),
                problems("leads.csv", "id;from;to;length", "W1;A-1;B-1;1.250", "W2;A-2;B-2;0,5"));
        assertEquals(
                Datum.of(1.25),
                leads("id;from;to;length", "W1;A-1;B-1;1.250").get(0).lengthMm());
    }

    @Test
    void encodingsAreToldApart() {
        String text = "id;from;to;remark\nW1;A-1;B-1;läuft über Träger\n";
        List<byte[]> forms = List.of(
                text.getBytes(StandardCharsets.UTF_8),
                ("\ufeff" + text).getBytes(StandardCharsets.UTF_8),
                ("\ufeff" + text).getBytes(StandardCharsets.UTF_16LE),
                ("\ufeff" + text).getBytes(StandardCharsets.UTF_16BE),
                text.getBytes(StandardCharsets.UTF_16LE),
                text.getBytes(StandardCharsets.UTF_16BE),
                text.getBytes(Charset.forName("windows-1252")));
        for (byte[] form : forms) {
            assertEquals(
                    Datum.of("läuft über Träger"),
                    read(EMPTY.with("leads.csv", form)).leads().get(0).note());
        }
        byte[] zip = {'P', 'K', 3, 4, 0, 0};
        assertEquals(
                List.of("leads.csv: this is a spreadsheet file, not a table in text (save it as CSV)"),
                AircraftReader.read(EMPTY.with("leads.csv", zip)).problems().stream()
                        .map(Problem::words)
                        .toList());
    }

    @Test
    void dittoMarksCommentsBlankLinesAndQuotes() {
        List<Lead> leads = leads(
                "# list of \"today",
                "",
                "id,from,to,kind,note",
                "W1,A-1,B-1,can,\"goes \"\"over\"\", then under\"",
                "# W2 is gone",
                "W3,\",B-2,-\"-,ditto",
                "W4, \" ,B-3,'',",
                ",,,,",
                "W5,C-1,D-1, pwm , \"24\" loom \"");
        assertEquals(
                List.of("A-1", "A-1", "A-1", "C-1"),
                leads.stream().map(l -> l.from().text()).toList());
        assertEquals(Datum.of("goes \"over\", then under"), leads.get(1).note());
        assertEquals(Datum.of(LeadKind.CAN), leads.get(2).kind());
        assertEquals(List.of(4, 6, 7, 9), leads.stream().map(l -> l.at().line()).toList());
        assertEquals(
                List.of("leads.csv row 2, `from`: a ditto mark with nothing above it (write the value)"),
                problems("leads.csv", "id,from,to", "W1,\",B-1"));
        assertEquals(
                List.of("leads.csv row 3: a quote opens here and never closes (close it or leave it away)"),
                problems("leads.csv", "id,from,to,note", "W1,A-1,B-1,x", "W2,A-2,B-2,\"open", "W3,A-3,B-3,y"));
    }

    @Test
    void rangesMakeARowForEachInStep() {
        List<Lead> leads = leads("id,from,to,fromLabel,note", "W11..13,PDB-K1..3,ESC1..ESC3-P,L1..3,see 1..3");
        assertEquals(List.of("W11", "W12", "W13"), leads.stream().map(Lead::id).toList());
        assertEquals(
                List.of("PDB-K1", "PDB-K2", "PDB-K3"),
                leads.stream().map(l -> l.from().text()).toList());
        assertEquals(
                List.of("ESC1-P", "ESC2-P", "ESC3-P"),
                leads.stream().map(l -> l.to().text()).toList());
        assertEquals(Datum.of("L2"), leads.get(1).fromLabel());
        assertEquals(Datum.of("see 1..3"), leads.get(1).note());
        List<Unit> units =
                read("units.csv", "ref,type,address\nESC01..03,E,CAN=11..13\n").units();
        assertEquals(
                List.of("ESC01", "ESC02", "ESC03"),
                units.stream().map(Unit::ref).toList());
        assertEquals(Datum.of(12), units.get(1).ports().get(0).address());
        assertEquals(
                List.of("leads.csv row 2, `to`: 'B1..4' does not go in step with the row (ranges of one row must be"
                        + " equally long, 1000 at most)"),
                problems("leads.csv", "id,from,to", "W1..3,A-1,B1..4"));
        assertTrue(
                problems("leads.csv", "id,from,to", "W1..999999,A-1,B-1").get(0).contains("1000 at most"));
    }

    @Test
    void threeKindsOfNothingAndOrigins() {
        Lead lead = leads("id,from,to,len,route,peak_a,awg,note", "W1,A-1,B-1,?,N/A,,26 (label),620 (seen)")
                .get(0);
        assertEquals(Datum.unknown(), lead.lengthMm());
        assertEquals(Datum.notApplicable(), lead.routeMm());
        assertEquals(Datum.notAsked(), lead.peakA());
        assertEquals(new Datum.Known<>(new Awg(26), Origin.LABEL, ""), lead.awg());
        assertEquals(Datum.of("620 (seen)"), lead.note());
        Lead measured = leads("id,from,to,length_cm", "W1,A-1,B-1,62 (measured 2026-03-01)")
                .get(0);
        assertEquals(new Datum.Known<>(620.0, Origin.MEASURED, "2026-03-01"), measured.lengthMm());
    }

    @Test
    void aColumnOfWireSizesMayHoldGaugesAndCrossSections() {
        List<Lead> leads = leads("id;from;to;size", "W1;A-1;B-1;26", "W2;A-2;B-2;0,14 mm²", "W3;A-3;B-3;AWG 4/0");
        assertEquals(Datum.of(new Awg(26)), leads.get(0).awg());
        assertEquals(Datum.notAsked(), leads.get(1).awg());
        assertEquals(Datum.of(0.14), leads.get(1).areaMm2());
        assertEquals(Datum.of(new Awg(-3)), leads.get(2).awg());
    }

    @Test
    void endsMayHaveColumnsOfTheirOwn() {
        Lead lead = leads("wire no,from unit,from plug,from pin,to unit,to connector,to pin", "1,FC,C2,H,GN1,C1,2")
                .get(0);
        assertEquals("FC-C2-H", lead.from().text());
        assertEquals("GN1-C1-2", lead.to().text());
    }

    @Test
    void settingsOfPorts() {
        List<Unit> units = read("units.csv", """
                ref,type,addresses,terminator,i2c,bus
                FC,FC,CAN1=10 CAN2 = 10 ,CAN1=fixed; CAN2=off,,CAN1=bus A
                LOG,L,31,on,0x62,
                GMC,G,?,CAN2=?,n/a,
                """).units();
        List<PortSetting> fc = units.get(0).ports();
        assertEquals(List.of("CAN1", "CAN2"), fc.stream().map(PortSetting::port).toList());
        assertEquals(Datum.of(10), fc.get(1).address());
        assertEquals(Datum.of("bus A"), fc.get(0).bus());
        assertEquals(1, units.get(1).ports().size());
        assertEquals(Datum.of("0x62"), units.get(1).ports().get(0).i2cAddress());
        assertEquals(Datum.unknown(), units.get(2).ports().get(1).terminator());
        assertEquals(
                List.of(
                        "units.csv row 2, `address`: 'CAN1=' is not a setting for each port (write PORT=value PORT=value)"),
                problems("units.csv", "ref,type,address", "A,B,CAN1="));
    }

    @Test
    void unitTypesFromTheirTables() {
        UnitType type = read(EMPTY.with("pins.csv", """
                type,plug,pin,role,joins,signal
                LOGGER,C1,1,in,5.3,VCC
                ,,2,can_h,CAN2,
                ,,3,CAN L,CAN2,
                ,PWR,1,supply in,44,
                """)
                        .with("ports.csv", "type,port,kind,terminator,node_kohm\nlogger,CAN2,can,switch,30\n")
                        .with("loads.csv", "type,rail,idle,avg_A,peak_mA\nLOGGER,44,0.03,.04,70\n")
                        .with("parts.csv", "type,name,kind,from,to,rating_A,milliohm\nLOGGER,F1,fuse,PWR-1,44,1,10\n")
                        .with("rails.csv", "type,rail,nominal,min_v\nLOGGER,44,44,18\n"))
                .types()
                .get(0);
        assertEquals(
                List.of("C1", "PWR"), type.plugs().stream().map(p -> p.name()).toList());
        Pin pin = type.plugs().get(0).pins().get(1);
        assertEquals(Datum.of(PinRole.CAN_H), pin.role());
        assertEquals(Datum.of("CAN2"), pin.inside());
        BusPort port = type.ports().get(0);
        assertEquals(Datum.of(30000.0), port.nodeOhm());
        assertEquals(Datum.of(0.07), type.loads().get(0).peakA());
        assertEquals(Datum.of(1.0), type.parts().get(0).rating().ratingA());
        assertEquals("PWR-1", type.parts().get(0).from());
        assertEquals(Datum.of(18.0), type.rails().get(0).minV());
    }

    @Test
    void tablesAndJsonMakeOneAircraft() {
        MemoryFolder folder = EMPTY.with("leads.csv", "id,from,to,len_mm\nW1,A-1,B-1,620\nW2,A-2,B-2,\n")
                .with("aircraft.json", """
                        {"name": "LW", "leads": [{"id": "w1", "twisted": true, "lengthMm": 620}, {"id": "W2", "lengthMm": 5}]}
                        """);
        List<Lead> leads = read(folder).leads();
        assertEquals(2, leads.size());
        assertEquals("leads.csv row 2", leads.get(0).at().words());
        assertEquals(Datum.of(true), leads.get(0).twisted());
        assertEquals(Datum.of(5.0), leads.get(1).lengthMm());
        assertEquals(
                List.of("aircraft.json line 1, column 12: `lengthMm` of lead W1 is 610 here and 620 in leads.csv row 2"
                        + " (keep one of them)"),
                AircraftReader.read(folder.with("aircraft.json", "{\"leads\": [{\"id\": \"W1\", \"lengthMm\": 610}]}"))
                        .problems()
                        .stream()
                        .map(Problem::words)
                        .toList());
    }

    @Test
    void allProblemsAtOnceInTheWordsOfTheTable() {
        assertEquals(
                List.of(
                        "leads.csv row 1, `lenght`: no column `lenght` in a table of leads (did you mean length?)",
                        "leads.csv row 1, `price`: no column `price` in a table of leads (rename it, or call it note to"
                                + " keep it)",
                        "leads.csv row 2, `size`: 'thin' is not a wire gauge (write 26, 4/0, or give mm2 in its own"
                                + " column)",
                        "leads.csv row 3: lead W2 has no `to` (give it, or write ? when it is not known)",
                        "leads.csv row 3, `kind`: 'cann' is not one of power, power 5 V, return, can, pulse, phase,"
                                + " sense, light, data, serial, i2c, video, trigger, coax, other (did you mean can?)",
                        "leads.csv row 4, `cell 8`: 'stray' stands under no column head (give the column a head, or call"
                                + " it note)"),
                problems(
                        "leads.csv",
                        "id,from,to,size,kind,lenght,price",
                        "W1,A-1,B-1,thin,can,,",
                        "W2,A-2,,26,cann,,",
                        "W3,A-3,B-3,26,can,,,stray"));
        assertEquals(
                List.of("leads.csv row 1: no column `to` (a table of leads needs it)"),
                problems("leads.csv", "id,from,destiny_", "W1,A-1,B-1").stream()
                        .filter(p -> !p.contains("destiny"))
                        .toList());
        assertEquals(
                List.of("leeds.csv: no table of this name is read (did you mean leads.csv?)"),
                problems("leeds.csv", "id,from,to", "W1,A-1,B-1"));
        assertEquals(
                List.of("leads.csv: the table is empty (remove the file, or give it a row of column heads)"),
                problems("leads.csv", ""));
    }

    @Test
    void aTitleAboveTheHeadsIsNoHead() {
        assertEquals(
                "W1",
                leads("Wiring of the new one;;;", ";;;", "id;from;to;note", "W1;A-1;B-1;x")
                        .get(0)
                        .id());
    }
}
