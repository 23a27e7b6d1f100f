package ringout.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import ringout.compare.difference.Kind;
import ringout.compare.match.Match;
import ringout.graph.Wiring;
import ringout.model.Aircraft;
import ringout.model.End;
import ringout.model.Lead;
import ringout.model.Unit;
import ringout.model.shape.Shape;
import ringout.read.AircraftReader;
import ringout.read.source.MemoryFolder;
import ringout.synthetic.Specimen;

/** The same aircraft with other names and its rows in another order: what is what is told by how it is wired. */
class RenamedAircraftTest {
    private static final Shape<Aircraft> AIRCRAFT = Shape.of(Aircraft.class);
    private static final Shape<Unit> UNIT = Shape.of(Unit.class);
    private static final Shape<Lead> LEAD = Shape.of(Lead.class);

    /** An aircraft and the new names of its units. */
    private record Renamed(Aircraft aircraft, Map<String, String> names) {}

    private static Aircraft specimen(long seed, int conductors) {
        String file = "aircraft.json";
        return AircraftReader.read(
                        MemoryFolder.named("random")
                                .with(file, Specimen.of(seed, conductors).json()),
                        file)
                .aircraft();
    }

    /** A part of the units keeps its names; no lead does, and the rows are shuffled. */
    private static Renamed renamed(Aircraft aircraft, double kept, Random random) {
        Map<String, String> names = new HashMap<>();
        List<Unit> units = new ArrayList<>();
        for (Unit unit : aircraft.units()) {
            String name = random.nextDouble() < kept ? unit.ref() : "X" + (names.size() + 1);
            names.put(unit.ref(), name);
            units.add(UNIT.with(unit, "ref", name));
        }
        Wiring wiring = Wiring.of(aircraft);
        List<Lead> leads = new ArrayList<>();
        for (int row = 0; row < aircraft.leads().size(); row++) {
            Lead lead = aircraft.leads().get(row);
            Lead now = LEAD.with(lead, "id", "L" + row);
            now = LEAD.with(now, "from", end(wiring, lead.from(), names));
            leads.add(LEAD.with(now, "to", end(wiring, lead.to(), names)));
        }
        Collections.shuffle(units, random);
        Collections.shuffle(leads, random);
        Aircraft now = AIRCRAFT.with(aircraft, "units", List.copyOf(units));
        return new Renamed(AIRCRAFT.with(now, "leads", List.copyOf(leads)), names);
    }

    private static End end(Wiring wiring, End end, Map<String, String> names) {
        String text = end.text();
        for (int cut = text.length() - 1; cut > 0; cut--) {
            String name = names.get(text.substring(0, cut));
            if (name != null && !Character.isLetterOrDigit(text.charAt(cut))) {
                return new End(name + text.substring(cut));
            }
        }
        return wiring.directory()
                .find(text)
                .map(unit -> new End(names.getOrDefault(text, text)))
                .orElse(end);
    }

    private static double matched(Aircraft base, Renamed other) {
        Wiring here = Wiring.of(base);
        Wiring there = Wiring.of(other.aircraft());
        Match match = Match.of(here, there);
        int right = 0;
        for (int unit = 0; unit < base.units().size(); unit++) {
            int twin = match.unit(unit);
            boolean same = twin >= 0
                    && there.directory()
                            .name(twin)
                            .equals(other.names().get(base.units().get(unit).ref()));
            right += same ? 1 : 0;
        }
        return (double) right / base.units().size();
    }

    @ParameterizedTest
    @CsvSource({"1,300", "2,300", "3,1500", "4,1500", "5,6000"})
    void oneNameInTenIsEnough(long seed, int conductors) {
        Aircraft base = specimen(seed, conductors);
        double share = matched(base, renamed(base, 0.1, new Random(seed)));
        assertTrue(share >= 0.99, "units told: " + share);
    }

    @ParameterizedTest
    @CsvSource({"1,300", "3,1500"})
    void withoutAnyNameMostAreTold(long seed, int conductors) {
        Aircraft base = specimen(seed, conductors);
        double share = matched(base, renamed(base, 0, new Random(seed)));
        assertTrue(share >= 0.99, "units told: " + share);
    }

    @Test
    void leadsOfOtherNamesAreTheSameLeads() {
        Aircraft base = specimen(6, 300);
        Renamed other = renamed(base, 1, new Random(6));
        List<String> others = Lists.differences(base, other.aircraft()).stream()
                .filter(one -> one.kind() != Kind.LABEL)
                .map(one -> one.kind() + " " + one.what() + ": " + one.change())
                .toList();
        assertEquals(List.of(), others);
    }

    @Test
    void aChangeAmongRenamedUnitsIsStillFound() {
        Aircraft base = Lists.sample("linewarden");
        Aircraft other = Lists.edited(
                base,
                "set units[LOG].ref REC",
                "set leads[W67].to REC-C1",
                "set leads[W68].from REC-C2",
                "set leads[W69].to REC-PWR",
                "set leads[W90].from REC-AUX",
                "set units[REC].ports[CAN2].address 32",
                "remove leads[W90]",
                "set buses[CAN2].members FC:CAN2 GN1:CAN2 IMU:CAN2 REC:CAN2 GMC:CAN2");
        List<String> found = Lists.differences(base, other).stream()
                .filter(one -> !List.of(Kind.STATE, Kind.BUS, Kind.AIRFRAME, Kind.FUNCTION, Kind.RECORD)
                        .contains(one.kind()))
                .map(one -> one.kind() + " " + one.object())
                .toList();
        assertEquals(List.of("LEAD_GONE W90", "UNIT_NAME LOG", "ADDRESS LOG"), found);
        assertTrue(Lists.differences(base, other).stream()
                .noneMatch(one -> one.kind() == Kind.BUS && one.what().contains("CAN2 members")));
    }
}
