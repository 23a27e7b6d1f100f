package ringout.draw.harness;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import ringout.draw.letter.Lettering;
import ringout.draw.map.MapScene;
import ringout.draw.map.MapScene.MapRotor;
import ringout.draw.map.MapScene.Spot;
import ringout.draw.map.MapScene.SurfaceRow;
import ringout.draw.map.MapScene.Tier;
import ringout.draw.map.MapScene.Turn;
import ringout.finding.Headline;
import ringout.graph.Circuit;
import ringout.graph.signal.ActualSpin;
import ringout.graph.signal.MotorDrive;
import ringout.graph.signal.MotorDrives;
import ringout.model.Airframe;
import ringout.model.Level;
import ringout.model.Rotor;
import ringout.model.Spin;
import ringout.model.Surface;
import ringout.model.Unit;
import ringout.solve.rotor.Hover;

/** Motors and control surfaces of an aircraft as a map: what the frame table wants, and what drives each. */
final class MapPicture {
    private static final String UNKNOWN = "?";

    private final Circuit circuit;
    private final DriveWords words;
    private final Ids ids = new Ids();
    private final List<String> notes = new ArrayList<>();
    private final Map<String, Set<String>> ofUnit = new LinkedHashMap<>();
    private final List<MapRotor> rotors = new ArrayList<>();
    private final List<List<Column>> columns = new ArrayList<>();

    /** A cell of the table, with the unit it is a plug or port of, which the head can say for all. */
    record Column(String head, String unit, String text) {
        static Column of(String head, String text) {
            return new Column(head, "", text);
        }
    }

    private MapPicture(Circuit circuit) {
        this.circuit = circuit;
        this.words = new DriveWords(circuit);
    }

    /** The scene with its title block; nothing when nothing turns or steers. */
    static Optional<MapScene> of(Circuit circuit, List<Headline> headlines, SheetTitle title) {
        Airframe airframe = circuit.wiring().aircraft().airframe();
        MapPicture picture = new MapPicture(circuit);
        picture.collect(airframe);
        List<SurfaceRow> surfaces = picture.surfaces(airframe);
        if (picture.rotors.isEmpty() && surfaces.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(picture.scene(airframe, surfaces, headlines, title));
    }

    private MapScene scene(Airframe airframe, List<SurfaceRow> surfaces, List<Headline> headlines, SheetTitle title) {
        UnitMarks marks = new UnitMarks(circuit, headlines, ofUnit);
        List<String> used = usedHeads();
        List<String> heads = new ArrayList<>(List.of("motor"));
        used.forEach(head -> heads.add(headOf(head)));
        List<MapRotor> told = new ArrayList<>();
        for (int i = 0; i < rotors.size(); i++) {
            MapRotor rotor = rotors.get(i);
            List<Column> row = columns.get(i);
            told.add(new MapRotor(
                    rotor.id(),
                    rotor.name(),
                    rotor.spot(),
                    rotor.bearingDeg(),
                    rotor.tier(),
                    rotor.turn(),
                    used.stream().map(head -> cell(row, head)).toList()));
        }
        String convention = airframe.conventionSource()
                .known()
                .map(source -> "numbers and turning by " + Lettering.printable(source))
                .orElse("where numbers and turning come from: not given");
        return new MapScene(
                title.info(
                        "motors and surfaces",
                        "motor and surface map",
                        marks.lines().size()),
                convention,
                told,
                heads,
                surfaces,
                surfaces.isEmpty() ? List.of() : List.of("surface", "servo", "output", "reversed\nwanted"),
                marks.marks(),
                marks.lines(),
                notes);
    }

    private void collect(Airframe airframe) {
        List<MotorDrive> drives = MotorDrives.of(circuit);
        for (Rotor rotor : airframe.rotors()) {
            add(
                    rotor,
                    drives.stream()
                            .filter(drive -> drive.rotor().filter(rotor::equals).isPresent())
                            .findFirst());
        }
        for (MotorDrive drive : drives) {
            if (drive.rotor().isEmpty()) {
                add(drive);
            }
        }
    }

    private void add(Rotor rotor, Optional<MotorDrive> drive) {
        String name = rotor.number().known().map(number -> "M" + number).orElse(Hover.name(rotor));
        OptionalDouble bearing =
                rotor.bearingDeg().known().map(OptionalDouble::of).orElse(OptionalDouble.empty());
        Optional<Spot> spot = spot(rotor);
        String motor = rotor.motor().or("");
        if (spot.isEmpty()) {
            notes.add("bearing or distance of " + name + " not given: it is in the table only");
        }
        if (drive.isEmpty()) {
            notes.add("the motor of " + name + " is not aboard in this state, or not named in the frame table");
        }
        Tier tier =
                rotor.level().is(Level.UPPER) ? Tier.UPPER : rotor.level().is(Level.LOWER) ? Tier.LOWER : Tier.SINGLE;
        add(name, motor, spot, bearing, tier, rotor.spin().known(), drive);
    }

    private static Optional<Spot> spot(Rotor rotor) {
        if (!rotor.bearingDeg().isKnown() || !rotor.radiusMm().isKnown()) {
            return Optional.empty();
        }
        double angle = Math.toRadians(rotor.bearingDeg().or(0.0));
        double radius = rotor.radiusMm().or(0.0);
        return Optional.of(new Spot(radius * Math.cos(angle), radius * Math.sin(angle)));
    }

    /** A motor without a row in the frame table stands where its unit does. */
    private void add(MotorDrive drive) {
        Unit unit = drive.motor();
        boolean placed = unit.xMm().isKnown() && unit.yMm().isKnown();
        Optional<Spot> spot =
                placed ? Optional.of(new Spot(unit.xMm().or(0.0), unit.yMm().or(0.0))) : Optional.empty();
        String name = drive.number().map(number -> "M" + number).orElse(unit.ref());
        OptionalDouble bearing = placed
                ? OptionalDouble.of(
                        Math.toDegrees(Math.atan2(unit.yMm().or(0.0), unit.xMm().or(0.0))))
                : OptionalDouble.empty();
        notes.add(name + " has no row in the frame table: turning direction wanted not known"
                + (placed ? "" : ", place neither"));
        add(name, unit.ref(), spot, bearing, Tier.SINGLE, Optional.empty(), Optional.of(drive));
    }

    private void add(
            String name,
            String motor,
            Optional<Spot> spot,
            OptionalDouble bearing,
            Tier tier,
            Optional<Spin> wanted,
            Optional<MotorDrive> drive) {
        String id = ids.of("rotor " + rotors.size(), Lettering.printable(name));
        mark(motor, id);
        drive.flatMap(MotorDrive::controller)
                .ifPresent(unit -> mark(circuit.wiring().directory().name(unit), id));
        Optional<Turn> turn = wanted.map(spin -> spin == Spin.CW ? Turn.CW : Turn.CCW);
        rotors.add(new MapRotor(id, Lettering.printable(name), spot, bearing, tier, turn, List.of()));
        List<Column> row = new ArrayList<>();
        drive.ifPresent(one -> row.addAll(words.drivenBy(one)));
        Optional<Spin> wired = drive.flatMap(one -> ActualSpin.of(circuit, one));
        String wish =
                wired.equals(wanted) ? "" : ", wants " + wanted.map(Enum::name).orElse(UNKNOWN);
        row.add(Column.of(DriveWords.TURNS, wired.map(Enum::name).orElse(UNKNOWN) + wish));
        row.add(Column.of("prop", drive.map(one -> propeller(one.motor())).orElse(UNKNOWN)));
        columns.add(row);
    }

    private static String propeller(Unit motor) {
        String hand = motor.propeller().known().map(Enum::name).orElse(UNKNOWN);
        return motor.pusher().is(true) ? hand + " push" : hand;
    }

    private void mark(String unit, String id) {
        if (!unit.isEmpty()) {
            ofUnit.computeIfAbsent(unit, key -> new LinkedHashSet<>()).add(id);
        }
    }

    /** Heads of the columns that say something, in their order. */
    private List<String> usedHeads() {
        return columns.stream()
                .flatMap(List::stream)
                .map(Column::head)
                .distinct()
                .sorted((a, b) -> Integer.compare(DriveWords.ORDER.indexOf(a), DriveWords.ORDER.indexOf(b)))
                .toList();
    }

    /** One unit for a whole column stands in its head. */
    private Optional<String> unitOf(String head) {
        List<String> units = columns.stream()
                .flatMap(List::stream)
                .filter(column -> column.head().equals(head))
                .map(Column::unit)
                .distinct()
                .toList();
        return units.size() == 1 && !units.get(0).isEmpty() ? Optional.of(units.get(0)) : Optional.empty();
    }

    private String headOf(String head) {
        return unitOf(head).map(unit -> head + "\n" + unit).orElse(head);
    }

    private String cell(List<Column> row, String head) {
        boolean inHead = unitOf(head).isPresent();
        String text = row.stream()
                .filter(column -> column.head().equals(head))
                .map(column -> inHead || column.unit().isEmpty() ? column.text() : column.unit() + " " + column.text())
                .collect(Collectors.joining(" "));
        return text.isEmpty() ? "-" : Lettering.printable(text);
    }

    private List<SurfaceRow> surfaces(Airframe airframe) {
        List<SurfaceRow> rows = new ArrayList<>();
        for (Surface surface : airframe.surfaces()) {
            String id = ids.of("surface " + rows.size(), Lettering.printable(surface.name()));
            mark(surface.servo().or(""), id);
            String reversed =
                    surface.reversed().known().map(yes -> yes ? "yes" : "no").orElse(UNKNOWN);
            rows.add(new SurfaceRow(
                    id,
                    Arrays.asList(
                            Lettering.printable(surface.name()),
                            Lettering.printable(surface.servo().or(UNKNOWN)),
                            Lettering.printable(surface.output().or(UNKNOWN)),
                            reversed)));
        }
        return rows;
    }
}
