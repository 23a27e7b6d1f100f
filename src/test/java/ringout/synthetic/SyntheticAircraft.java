package ringout.synthetic;

import java.io.OutputStream;

/**
 * A valid aircraft of any size, made from a seed: packs in series and in parallel, power boards, regulators, speed
 * controllers and motors, chains, serial and I2C devices, payload. It is built as a person would build it, zone by zone, and
 * in words of its own: names, pin orders and chain orders are those of no sample. All data are there, so that a check that
 * knows its trade can decide and has nothing to say.
 *
 * @param conductors number of conductors made, near to the number asked for
 */
public record SyntheticAircraft(int conductors) {
    private static final int SMALL = 120;
    private static final int BOOKS = 3;
    private static final int ZONE = 90;
    private static final int PER_ROTOR = 9;

    /** Writes an aircraft as JSON. */
    public static SyntheticAircraft write(long seed, int conductors, OutputStream out) {
        return write(seed, conductors, new JsonSink(), out);
    }

    static SyntheticAircraft write(long seed, int conductors, JsonSink sink, OutputStream out) {
        int made = build(seed, conductors, sink);
        sink.write(out, "synthetic " + seed);
        return new SyntheticAircraft(made);
    }

    private static int build(long seed, int conductors, Sink sink) {
        Dice dice = new Dice(seed);
        boolean small = conductors <= SMALL;
        Style style = new Style(dice, small);
        Loom loom = new Loom(style, sink);
        int zones = small ? 1 : Math.max(1, Math.round(conductors / (float) (ZONE + PER_ROTOR * style.rotors())));
        TypeBook[] books = new TypeBook[Math.min(zones, BOOKS)];
        for (int b = 0; b < books.length; b++) {
            books[b] = new TypeBook(style, b + 1);
            books[b].all().forEach(type -> sink.add("types", type.row()));
        }
        Zone before = null;
        for (int z = 0; z < zones; z++) {
            Zone zone = new Zone(style, sink, loom, books[z % books.length], z + 1);
            int target = (int) ((long) conductors * (z + 1) / zones);
            ZoneBuilder.build(zone, new DrivePart.Ring(z * style.rotors(), zones * style.rotors()), target);
            if (before != null) {
                AvionicsPart.link(before, zone);
            }
            before = zone;
        }
        return loom.conductors();
    }
}
