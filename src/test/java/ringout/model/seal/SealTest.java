package ringout.model.seal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.model.Aircraft;
import ringout.model.AsBuilt;
import ringout.model.Datum;
import ringout.model.Lead;
import ringout.model.Step;
import ringout.model.Unit;
import ringout.model.shape.Shape;
import ringout.present.csv.AircraftTables;
import ringout.present.json.AircraftJson;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;

/** The mark of the data: the same for the same meaning, another for every other. */
class SealTest {
    private static final Shape<Aircraft> AIRCRAFT = Shape.of(Aircraft.class);
    private static final Aircraft SAMPLE =
            AircraftReader.read(Path.of("samples", "linewarden")).aircraft();

    /** Oracle: RFC 8785, appendix B, bits and their one form. */
    @ParameterizedTest
    @CsvSource({
        "0000000000000000, 0",
        "8000000000000000, 0",
        "0000000000000001, 5e-324",
        "8000000000000001, -5e-324",
        "7fefffffffffffff, 1.7976931348623157e+308",
        "4340000000000000, 9007199254740992",
        "c340000000000000, -9007199254740992",
        "4430000000000000, 295147905179352830000",
        "44b52d02c7e14af5, 9.999999999999997e+22",
        "44b52d02c7e14af6, 1e+23",
        "44b52d02c7e14af7, 1.0000000000000001e+23",
        "444b1ae4d6e2ef4e, 999999999999999700000",
        "444b1ae4d6e2ef4f, 999999999999999900000",
        "444b1ae4d6e2ef50, 1e+21",
        "3eb0c6f7a0b5ed8c, 9.999999999999997e-7",
        "3eb0c6f7a0b5ed8d, 0.000001",
        "41b3de4355555553, 333333333.3333332",
        "41b3de4355555554, 333333333.33333325",
        "41b3de4355555555, 333333333.3333333",
        "becbf647612f3696, -0.0000033333333333333333",
        "43143ff3c1cb0959, 1424953923781206.2"
    })
    void aNumberHasOneForm(String bits, String form) {
        assertEquals(form, JsonForm.number(Double.longBitsToDouble(Long.parseUnsignedLong(bits, 16))));
    }

    /** Oracle: FIPS 180-4, example of one block. */
    @Test
    void theHashIsThatOfTheStandard() {
        assertEquals(
                "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad",
                Seal.of("abc").hex());
        assertEquals("ba7816bf", Seal.of("abc").mark());
    }

    @Test
    void stringsAndNamesAreInTheirOneForm() {
        assertEquals("\"\u20ac$\\u000f\\nA'B\\\"\\\\\\\"/\"", JsonForm.string("\u20ac$\u000f\nA'B\"\\\"/"));
        Aircraft small = read("{\"units\": [{\"type\": \"T\", \"ref\": \"B\"}, {\"ref\": \"A\", \"type\": \"T\","
                + " \"restV\": {\"value\": 25.10, \"origin\": \"measured\"}}], \"name\": \"x\", \"tail\": \"?\"}");
        assertEquals(
                "{\"name\":\"x\",\"tail\":\"?\",\"units\":[{\"ref\":\"A\",\"restV\":{\"origin\":\"measured\",\"value\":25.1},"
                        + "\"type\":\"T\"},{\"ref\":\"B\",\"type\":\"T\"}]}",
                Canonical.all(small));
    }

    @Test
    void theFormItCameInSaysNothing() {
        Aircraft alone = AIRCRAFT.with(SAMPLE, "library", List.of());
        MemoryFolder folder = MemoryFolder.named("x");
        for (Map.Entry<String, String> file : AircraftTables.of(alone).entrySet()) {
            folder = folder.with(file.getKey(), file.getValue());
        }
        Seal tables = Seal.ofAll(AircraftReader.read(folder).aircraft());
        Seal json = Seal.ofAll(read(AircraftJson.of(alone)));
        assertEquals(Seal.ofAll(SAMPLE), tables);
        assertEquals(Seal.ofAll(SAMPLE), json);
    }

    @Test
    void theOrderOfRowsSaysNothing() {
        Random random = new Random(7);
        Aircraft mixed = SAMPLE;
        for (String list : List.of("types", "units", "leads")) {
            List<Object> rows =
                    new ArrayList<>((List<?>) AIRCRAFT.slot(list).orElseThrow().get(mixed));
            Collections.shuffle(rows, random);
            mixed = AIRCRAFT.with(mixed, list, List.copyOf(rows));
        }
        assertNotEquals(AircraftJson.of(SAMPLE), AircraftJson.of(mixed));
        assertEquals(Seal.ofAll(SAMPLE), Seal.ofAll(mixed));
        assertEquals(Seal.ofList(SAMPLE), Seal.ofList(mixed));
    }

    @Test
    void theOrderOfAWayAndOfAProcedureSaysSomething() {
        Aircraft one = read("{\"name\": \"x\", \"airframe\": {\"plugOrder\": [\"A-1\", \"B-1\"]}}");
        Aircraft other = read("{\"name\": \"x\", \"airframe\": {\"plugOrder\": [\"B-1\", \"A-1\"]}}");
        assertNotEquals(Seal.ofList(one), Seal.ofList(other));
    }

    @Test
    void everyValueCounts() {
        Shape<Lead> lead = Shape.of(Lead.class);
        List<Lead> leads = new ArrayList<>(SAMPLE.leads());
        leads.set(3, lead.with(leads.get(3), "lengthMm", Datum.of(551.0)));
        Aircraft longer = AIRCRAFT.with(SAMPLE, "leads", leads);
        assertNotEquals(Seal.ofList(SAMPLE).mark(), Seal.ofList(longer).mark());
    }

    @Test
    void whatIsWrittenOnThePagesLeavesTheirMark() {
        Aircraft plain = read("{\"name\": \"x\", \"units\": [{\"ref\": \"A\", \"type\": \"T\"}],"
                + " \"record\": {\"steps\": [{\"id\": \"1\", \"action\": \"fit\"}]}}");
        Aircraft done = read("{\"name\": \"x\", \"units\": [{\"ref\": \"A\", \"type\": \"T\","
                + " \"asRead\": {\"address\": 4}}], \"record\": {\"steps\": [{\"id\": \"1\", \"action\": \"fit\","
                + " \"done\": \"2026-03-01\", \"by\": \"ab\"}], \"ticks\": [{\"lead\": \"W1\", \"end\": \"from\"}]}}");
        assertEquals(Seal.ofList(plain), Seal.ofList(done));
        assertNotEquals(Seal.ofAll(plain), Seal.ofAll(done));
        Aircraft planned = AIRCRAFT.with(
                plain,
                "record",
                Shape.of(AsBuilt.class)
                        .with(
                                plain.record(),
                                "steps",
                                List.of(Shape.of(Step.class)
                                        .with(plain.record().steps().get(0), "action", Datum.of("close")))));
        assertNotEquals(Seal.ofList(plain), Seal.ofList(planned));
        assertTrue(Shape.of(Unit.class).slot("asRead").isPresent());
    }

    private static Aircraft read(String json) {
        return AircraftReader.read(MemoryFolder.named("x").with("aircraft.json", json))
                .aircraft();
    }
}
