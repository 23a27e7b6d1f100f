package ringout.check;

import java.util.List;
import ringout.check.build.CheckAfterCover;
import ringout.check.build.CircularOrder;
import ringout.check.build.ConnectionAfterCover;
import ringout.check.build.HoldUnsigned;
import ringout.check.build.NoOutsidePoint;
import ringout.check.build.NoWitness;
import ringout.check.build.PlugOrder;
import ringout.check.build.PoweredTooEarly;
import ringout.check.build.PropellersFitted;
import ringout.check.build.SettingLockedIn;
import ringout.check.build.TestSpoiled;
import ringout.check.form.Check;
import ringout.check.record.BillDiffers;
import ringout.check.record.ConfigurationDiffers;
import ringout.check.record.DataHole;
import ringout.check.record.DifferenceUndecided;
import ringout.check.record.MeterExpired;
import ringout.check.record.MixedPack;
import ringout.check.record.NoIdentity;
import ringout.check.record.NoPhoto;
import ringout.check.record.OnePerson;
import ringout.check.record.PinoutUnverified;
import ringout.check.record.ReadingOutside;
import ringout.check.record.RunInNoStep;
import ringout.check.record.StepContradicts;
import ringout.check.record.TailDiffers;
import ringout.check.record.ToldTwice;
import ringout.check.record.UnitDoubtful;
import ringout.check.record.WaiverLapsed;

/** The checks of build order and of records, each family in the order of its codes. */
final class RecordCatalogue {
    /** Build order and energising. */
    static final List<Check> BUILD = List.of(
            new ConnectionAfterCover(), // B01
            new CheckAfterCover(), // B02
            new CircularOrder(), // B03
            new PoweredTooEarly(), // B04
            new PlugOrder(), // B05
            new PropellersFitted(), // B06
            new HoldUnsigned(), // B07
            new NoOutsidePoint(), // B08
            new TestSpoiled(), // B09
            new NoWitness(), // B10
            new SettingLockedIn()); // B11

    /** Procedure, records and completeness. */
    static final List<Check> RECORD = List.of(
            new DataHole(), // X01
            new NoIdentity(), // X02
            new DifferenceUndecided(), // X03
            new StepContradicts(), // X04
            new RunInNoStep(), // X05
            new ToldTwice(), // X06
            new NoPhoto(), // X07
            new ReadingOutside(), // X08
            new OnePerson(), // X09
            new WaiverLapsed(), // X10
            new ConfigurationDiffers(), // X11
            new TailDiffers(), // X12
            new BillDiffers(), // X13
            new UnitDoubtful(), // X14
            new PinoutUnverified(), // X15
            new MixedPack(), // X16
            new MeterExpired()); // X17

    private RecordCatalogue() {}
}
