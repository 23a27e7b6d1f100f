package ringout.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import ringout.draw.scene.BadgeKind;
import ringout.draw.scene.BusLead;
import ringout.draw.scene.BusLead.Legs;
import ringout.draw.scene.BusMember;
import ringout.draw.scene.BusPoint;
import ringout.draw.scene.BusScene;
import ringout.draw.scene.BusStub;
import ringout.draw.scene.BusTee;
import ringout.draw.scene.FindingLine;
import ringout.draw.scene.Mark;
import ringout.draw.scene.Move;
import ringout.draw.scene.OhmsLine;
import ringout.draw.scene.Presence;
import ringout.draw.scene.SheetInfo;
import ringout.draw.scene.Terminator;

/** Buses of any length, with tees, stubs, rings, lost legs, unknown and absurd lengths. */
public final class RandomBuses {
    private final Random random;
    private final List<String> targets = new ArrayList<>();
    private final List<String> terminators = new ArrayList<>();

    private RandomBuses(Random random) {
        this.random = random;
    }

    /** {@return a bus} */
    public static BusScene of(Random random) {
        return new RandomBuses(random).scene();
    }

    private BusScene scene() {
        int places = 1 + random.nextInt(8);
        List<BusPoint> trunk = new ArrayList<>();
        List<BusLead> leads = new ArrayList<>();
        List<BusStub> stubs = new ArrayList<>();
        for (int i = 0; i < places; i++) {
            boolean inner = i > 0 && i < places - 1;
            boolean tee = inner && random.nextInt(5) == 0;
            String id = (tee ? "T" : "U") + i;
            trunk.add(tee ? new BusTee(id) : member(id));
            if (tee || random.nextInt(6) == 0) {
                stubs.add(new BusStub(id, lead("WS" + i, 1), member("S" + i)));
            }
            if (i > 0) {
                leads.add(lead("W" + i, 2));
            }
        }
        boolean ring = places > 1 && random.nextInt(6) == 0;
        List<Mark> marks = new ArrayList<>();
        List<FindingLine> findings = new ArrayList<>();
        for (int n = 1; n <= random.nextInt(5); n++) {
            BadgeKind kind = pick(List.of(BadgeKind.values()));
            marks.add(new Mark(n, kind, random.nextInt(4) == 0, List.of(pick(targets))));
            findings.add(new FindingLine(n, kind, false, "T07", "what is wrong, number " + n));
        }
        List<Move> moves = new ArrayList<>();
        if (terminators.size() > 1 && random.nextInt(3) == 0) {
            moves.add(new Move("move", terminators.get(0), terminators.get(terminators.size() - 1)));
        }
        List<OhmsLine> ohms = new ArrayList<>();
        for (int i = 0; i < random.nextInt(10); i++) {
            ohms.add(new OhmsLine("U" + i + "-C1", "60", "120", "over 25 k"));
        }
        return new BusScene(
                SheetInfo.of("bus", "bus diagram", "test", "as flown"),
                "CAN1",
                "1 Mbit/s",
                trunk,
                leads,
                stubs,
                ring ? Optional.of(lead("WR", 2)) : Optional.empty(),
                moves,
                ohms,
                marks,
                findings,
                List.of());
    }

    private <T> T pick(List<T> from) {
        return from.get(random.nextInt(from.size()));
    }

    private BusLead lead(String id, double longest) {
        targets.add(id);
        OptionalDouble length = random.nextInt(8) == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(0.01 + random.nextDouble() * random.nextDouble() * longest);
        Legs legs = random.nextInt(6) == 0 ? pick(List.of(Legs.values())) : Legs.BOTH;
        return new BusLead(id, id, length, legs, presence());
    }

    private Presence presence() {
        return random.nextInt(8) == 0 ? pick(List.of(Presence.values())) : Presence.FITTED;
    }

    private BusMember member(String id) {
        Terminator terminator = pick(List.of(Terminator.values()));
        targets.add(id);
        if (terminator != Terminator.NONE) {
            targets.add(id + "-R");
            terminators.add(id + "-R");
        }
        String what =
                random.nextInt(3) == 0 ? "" : random.nextInt(3) == 0 ? "\u00C5 long name of a unit (old)" : "unit";
        String address = random.nextInt(3) == 0 ? "" : Integer.toString(random.nextInt(127));
        return new BusMember(id, id, what, address, terminator, "120 ohm", presence());
    }
}
