package ringout.check;

import java.util.List;
import ringout.check.address.DuplicateAddress;
import ringout.check.form.Check;
import ringout.check.signal.MotorOrder;
import ringout.check.signal.MotorTurnsWrongWay;
import ringout.check.signal.NoCommonReference;
import ringout.check.signal.NoDriver;
import ringout.check.signal.OpenDrainWithoutPullUp;
import ringout.check.signal.OutputTied;
import ringout.check.signal.PropellerHand;
import ringout.check.signal.ReturnFarAway;
import ringout.check.signal.RotationPattern;
import ringout.check.signal.SerialNotCrossed;
import ringout.check.signal.SerialPolarity;
import ringout.check.signal.TwoDrivers;
import ringout.check.signal.WrongLevel;
import ringout.check.topology.TerminatorCount;
import ringout.check.topology.TerminatorNotAtEnd;

/** Every check, in the order of the families T, A, P, S, M, R, B, X and of its code. */
public final class Catalogue {
    private static final List<Check> TOPOLOGY = List.of(
            new TerminatorCount(), // T06
            new TerminatorNotAtEnd()); // T07

    private static final List<Check> ADDRESS = List.of(new DuplicateAddress()); // A01

    private static final List<Check> SIGNAL = List.of(
            new TwoDrivers(), // S01
            new NoDriver(), // S02
            new WrongLevel(), // S03
            new NoCommonReference(), // S04
            new ReturnFarAway(), // S05
            new OutputTied(), // S06
            new SerialNotCrossed(), // S07
            new SerialPolarity(), // S08
            new MotorOrder(), // S10
            new RotationPattern(), // S11
            new MotorTurnsWrongWay(), // S12
            new PropellerHand(), // S13
            new OpenDrainWithoutPullUp()); // S20

    private static final List<Check> ALL =
            List.of(TOPOLOGY, ADDRESS, SIGNAL).stream().flatMap(List::stream).toList();

    private Catalogue() {}

    /** All checks. */
    public static List<Check> all() {
        return ALL;
    }
}
