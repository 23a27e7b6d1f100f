package ringout.read.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import ringout.model.Aircraft;
import ringout.model.AsBuilt;
import ringout.model.Unit;
import ringout.model.seal.Seal;
import ringout.present.csv.AircraftTables;
import ringout.read.AircraftReader;
import ringout.read.ReadResult;
import ringout.read.source.MemoryFolder;

/** The as-built record as tables, in the words a technician heads them with; and out again. */
class RecordTablesTest {
    private static final MemoryFolder TABLES = MemoryFolder.named("tail 03")
            .with("units.csv", "ref,type\nLOG,LOGGER\nGN1,GNSS\n")
            .with("leads.csv", "id,from,to,length\nW68,LOG-C2,GN1-C1,450\n")
            .with("types.csv", "name\nLOGGER\nGNSS\n")
            .with("As read.csv", "unit;s/n;fw;node id;when\nLOG;0042;2.2;31;2026-03-01\nGN1;A7;4.4;?;2026-03-01\n")
            .with("as fitted.csv", """
                    lead,column,is,decided,initials,day
                    W68,length,462 mm,accept,KB,2026-03-01
                    W68,colour,GY for WH,accept,KB,2026-03-01
                    """)
            .with("measurements.csv", """
                    between,what,reading,low,high,meter,initials,when
                    LOG-C2-2 GN1-C1-2,ohm,"0,12",0,"0,5",DMM 2,KB,2026-03-01
                    """)
            .with("meters.csv", "meter,calibrated until\nDMM 2,2026-09-30\n")
            .with("ticks.csv", """
                    wire,end,tick,initials,day,mark
                    W68,from,made,KB,2026-03-01,0a1b2c3d
                    ",to,",",","
                    """)
            .with("sign off.csv", "object,as,initials,day\nW68,made,KB,2026-03-01\nW68,inspected,TO,2026-03-02\n")
            .with("initials.csv", "initials,name,licence\nKB,K. Builder,\"no. 17\"\nTO,T. Other,\n")
            .with("photos.csv", "object,file name,sha-256,initials,when\nLOG,log.jpg,ab12,KB,2026-03-01\n")
            .with("changes.csv", """
                    no,description,rows,why,who,when,retest,signatures that lapse
                    C1,longer by one loop,W68,the clamp sits lower than drawn,KB,2026-03-01,T4,W68 inspected;
                    """);

    @Test
    void everyTableIsRead() {
        ReadResult read = AircraftReader.read(TABLES);
        assertEquals(List.of(), read.problems());
        AsBuilt record = read.aircraft().record();
        Unit log = read.aircraft().units().get(0);
        assertEquals("0042", log.asRead().serial().or(""));
        assertEquals(31, log.asRead().address().or(0));
        assertEquals(
                "marked ?", read.aircraft().units().get(1).asRead().address().absence());
        assertEquals("462 mm", record.found().get(0).value().or(""));
        assertEquals("accept", record.found().get(1).decision().or(""));
        assertEquals(0.12, record.readings().get(0).value().or(0.0));
        assertEquals(0.5, record.readings().get(0).expectedHigh().or(0.0));
        assertEquals("2026-09-30", record.instruments().get(0).calibratedUntil().or(""));
        assertEquals("to", record.ticks().get(1).end().or(""));
        assertEquals("0a1b2c3d", record.ticks().get(1).revision().or(""));
        assertEquals("inspected", record.signatures().get(1).role().or(""));
        assertEquals("K. Builder", record.signers().get(0).fullName().or(""));
        assertEquals("ab12", record.photos().get(0).hash().or(""));
        assertEquals(List.of("W68 inspected"), record.changes().get(0).lapses());
        assertEquals(
                "the clamp sits lower than drawn",
                record.changes().get(0).reason().or(""));
    }

    @Test
    void theyComeBackTheSame() {
        Aircraft aircraft = AircraftReader.read(TABLES).aircraft();
        Map<String, String> files = AircraftTables.of(aircraft);
        assertEquals("""
                    lead,end,what,by,date,revision
                    W68,from,made,KB,2026-03-01,0a1b2c3d
                    W68,to,made,KB,2026-03-01,0a1b2c3d
                    """, files.get("ticks.csv"));
        MemoryFolder again = MemoryFolder.named("tail 03");
        for (Map.Entry<String, String> file : files.entrySet()) {
            again = again.with(file.getKey(), file.getValue());
        }
        ReadResult back = AircraftReader.read(again);
        assertEquals(List.of(), back.problems());
        assertEquals(Seal.ofAll(aircraft), Seal.ofAll(back.aircraft()));
        assertEquals(files, AircraftTables.of(back.aircraft()));
    }
}
