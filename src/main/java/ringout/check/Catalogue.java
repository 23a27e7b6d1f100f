package ringout.check;

import java.util.List;
import java.util.stream.Stream;
import ringout.check.address.AddressMissing;
import ringout.check.address.AddressOutOfRange;
import ringout.check.address.AsReadDiffers;
import ringout.check.address.BusLoad;
import ringout.check.address.DuplicateAddress;
import ringout.check.address.EscIndex;
import ringout.check.address.FrameMix;
import ringout.check.address.I2cAddressClash;
import ringout.check.address.InstanceOrder;
import ringout.check.address.OutputUnassigned;
import ringout.check.address.PortFunction;
import ringout.check.address.RateMismatch;
import ringout.check.address.SenseScale;
import ringout.check.address.SharedIdentity;
import ringout.check.address.TimerConflict;
import ringout.check.form.Check;
import ringout.check.form.Trying;
import ringout.check.installation.AntennaTooClose;
import ringout.check.installation.BareOnConductiveFrame;
import ringout.check.installation.BendTooTight;
import ringout.check.installation.ColourMisleads;
import ringout.check.installation.CompassNearCurrent;
import ringout.check.installation.InsulationTooHot;
import ringout.check.installation.KeyOrCountDiffers;
import ringout.check.installation.LabelMissing;
import ringout.check.installation.LeadLength;
import ringout.check.installation.LeverArmWrong;
import ringout.check.installation.LookAlikePlugs;
import ringout.check.installation.MixedClampSizes;
import ringout.check.installation.OrientationWrong;
import ringout.check.installation.ParallelRun;
import ringout.check.installation.PassageTooTight;
import ringout.check.installation.PlugDoesNotMate;
import ringout.check.installation.ShieldGrounding;
import ringout.check.installation.ShiftedPlug;
import ringout.check.installation.TestPlugHidden;
import ringout.check.installation.UnguardedCrossing;
import ringout.check.installation.UnlikePlating;
import ringout.check.installation.UnsealedPlug;
import ringout.check.installation.Unsupported;
import ringout.check.installation.UnusedContact;
import ringout.check.installation.UnwitnessedScrew;
import ringout.check.installation.WireOutsideContact;
import ringout.check.installation.WrongClampCount;
import ringout.check.power.BackFeed;
import ringout.check.power.BusPowerOverloaded;
import ringout.check.power.ContactOverloaded;
import ringout.check.power.EventOverload;
import ringout.check.power.ExternalWithInternal;
import ringout.check.power.FuseAboveWire;
import ringout.check.power.FuseBelowLoad;
import ringout.check.power.FuseOrder;
import ringout.check.power.Inrush;
import ringout.check.power.IsolatorBypassed;
import ringout.check.power.LeadOverloaded;
import ringout.check.power.LinearRegulatorHot;
import ringout.check.power.LongBatteryLead;
import ringout.check.power.MonitorMissesLoad;
import ringout.check.power.NoSource;
import ringout.check.power.NoisyNeighbour;
import ringout.check.power.OutsideSupplyRange;
import ringout.check.power.PackOverloaded;
import ringout.check.power.PacksApart;
import ringout.check.power.PolarityReversed;
import ringout.check.power.PoweredThroughSignal;
import ringout.check.power.RailOnSignal;
import ringout.check.power.RailOnZero;
import ringout.check.power.RegulatorInputOutOfRange;
import ringout.check.power.RegulatorOverloaded;
import ringout.check.power.ReserveTooShort;
import ringout.check.power.ReturnMissing;
import ringout.check.power.ReturnShare;
import ringout.check.power.ReturnTooThin;
import ringout.check.power.SeriesPacksUnlike;
import ringout.check.power.ShortTimeHeating;
import ringout.check.power.TapOrder;
import ringout.check.power.TwoSources;
import ringout.check.power.UnprotectedBranch;
import ringout.check.power.VoltageAtModule;
import ringout.check.power.VoltageDrop;
import ringout.check.power.ZeroLoop;
import ringout.check.power.ZeroShift;
import ringout.check.redundancy.CommonBus;
import ringout.check.redundancy.CommonFirmware;
import ringout.check.redundancy.CommonReturn;
import ringout.check.redundancy.CommonRun;
import ringout.check.redundancy.CommonSupply;
import ringout.check.redundancy.FailsafeSharesFailure;
import ringout.check.redundancy.LatentRedundancy;
import ringout.check.redundancy.RotorsStopTogether;
import ringout.check.redundancy.SilentLoss;
import ringout.check.redundancy.SingleLossOfFunction;
import ringout.check.redundancy.UntestedConductor;
import ringout.check.signal.AnalogRun;
import ringout.check.signal.FailsafeChain;
import ringout.check.signal.FloatingSafetyInput;
import ringout.check.signal.HighSpeedPair;
import ringout.check.signal.I2cPullUps;
import ringout.check.signal.MixedControllers;
import ringout.check.signal.MotorOrder;
import ringout.check.signal.MotorTurnsWrongWay;
import ringout.check.signal.NoCommonReference;
import ringout.check.signal.NoDriver;
import ringout.check.signal.OpenDrainWithoutPullUp;
import ringout.check.signal.OutputTied;
import ringout.check.signal.PropellerHand;
import ringout.check.signal.ProtocolOrRate;
import ringout.check.signal.ReturnFarAway;
import ringout.check.signal.RoleSwap;
import ringout.check.signal.RotationPattern;
import ringout.check.signal.SerialNotCrossed;
import ringout.check.signal.SerialPolarity;
import ringout.check.signal.ServoAssignment;
import ringout.check.signal.ServoRailVoltage;
import ringout.check.signal.TriggerMismatch;
import ringout.check.signal.TwoDrivers;
import ringout.check.signal.WrongLevel;
import ringout.check.topology.BusBranches;
import ringout.check.topology.BusInPieces;
import ringout.check.topology.BusRing;
import ringout.check.topology.BusesBridged;
import ringout.check.topology.ChainThroughPower;
import ringout.check.topology.HalfPair;
import ringout.check.topology.ListedTwice;
import ringout.check.topology.LooseEndOfLead;
import ringout.check.topology.OrphanUnit;
import ringout.check.topology.PairNotTwisted;
import ringout.check.topology.PairSwapped;
import ringout.check.topology.PathMissing;
import ringout.check.topology.RequiredPlugOpen;
import ringout.check.topology.StubTooLong;
import ringout.check.topology.TerminatorCount;
import ringout.check.topology.TerminatorLeaves;
import ringout.check.topology.TerminatorNotAtEnd;
import ringout.check.topology.TooManyNodes;
import ringout.check.topology.TrunkTooLong;
import ringout.check.topology.UnitLooped;
import ringout.check.topology.WrongPort;

/** Every check, in the order of the families T, A, P, S, M, R, B, X and of its code. */
public final class Catalogue {
    private static final List<Check> TOPOLOGY = List.of(
            new OrphanUnit(), // T01
            new RequiredPlugOpen(), // T02
            new LooseEndOfLead(), // T03
            new BusInPieces(), // T04
            new WrongPort(), // T05
            new TerminatorCount(), // T06
            new TerminatorNotAtEnd(), // T07
            new StubTooLong(), // T08
            new BusRing(), // T09
            new BusBranches(), // T10
            new TrunkTooLong(), // T11
            new PairSwapped(), // T12
            new HalfPair(), // T13
            new PairNotTwisted(), // T14
            new BusesBridged(), // T15
            new ChainThroughPower(), // T16
            new TerminatorLeaves(), // T17
            new TooManyNodes(), // T18
            new ListedTwice(), // T19
            new UnitLooped(), // T20
            new PathMissing()); // T21

    private static final List<Check> ADDRESS = List.of(
            new DuplicateAddress(), // A01
            new AddressMissing(), // A02
            new AddressOutOfRange(), // A03
            new RateMismatch(), // A04
            new FrameMix(), // A05
            new BusLoad(), // A06
            new EscIndex(), // A07
            new I2cAddressClash(), // A08
            new PortFunction(), // A09
            new InstanceOrder(), // A10
            new AsReadDiffers(), // A11
            new SharedIdentity(), // A12
            new TimerConflict(), // A13
            new OutputUnassigned(), // A14
            new SenseScale()); // A15

    private static final List<Check> SIGNAL = List.of(
            new TwoDrivers(), // S01
            new NoDriver(), // S02
            new WrongLevel(), // S03
            new NoCommonReference(), // S04
            new ReturnFarAway(), // S05
            new OutputTied(), // S06
            new SerialNotCrossed(), // S07
            new SerialPolarity(), // S08
            new ProtocolOrRate(), // S09
            new MotorOrder(), // S10
            new RotationPattern(), // S11
            new MotorTurnsWrongWay(), // S12
            new PropellerHand(), // S13
            new MixedControllers(), // S15
            new ServoAssignment(), // S16
            new ServoRailVoltage(), // S17
            new I2cPullUps(), // S18
            new AnalogRun(), // S19
            new OpenDrainWithoutPullUp(), // S20
            new FloatingSafetyInput(), // S21
            new FailsafeChain(), // S22
            new TriggerMismatch(), // S23
            new HighSpeedPair(), // S24
            new RoleSwap()); // S25

    private static final List<Check> POWER = List.of(
            new PolarityReversed(), // P01
            new RailOnZero(), // P02
            new RailOnSignal(), // P03
            new OutsideSupplyRange(), // P04
            new NoSource(), // P05
            new TwoSources(), // P06
            new BackFeed(), // P07
            new PoweredThroughSignal(), // P08
            new ReturnMissing(), // P09
            new ReturnTooThin(), // P10
            new ReturnShare(), // P11
            new ZeroLoop(), // P12
            new ZeroShift(), // P13
            new LeadOverloaded(), // P14
            new ShortTimeHeating(), // P15
            new ContactOverloaded(), // P16
            new VoltageDrop(), // P17
            new VoltageAtModule(), // P18
            new RegulatorOverloaded(), // P19
            new RegulatorInputOutOfRange(), // P20
            new LinearRegulatorHot(), // P21
            new FuseAboveWire(), // P22
            new FuseBelowLoad(), // P23
            new FuseOrder(), // P24
            new UnprotectedBranch(), // P25
            new Inrush(), // P26
            new SeriesPacksUnlike(), // P27
            new PacksApart(), // P28
            new PackOverloaded(), // P29
            new ReserveTooShort(), // P30
            new EventOverload(), // P31
            new LongBatteryLead(), // P32
            new MonitorMissesLoad(), // P33
            new IsolatorBypassed(), // P34
            new ExternalWithInternal(), // P35
            new NoisyNeighbour(), // P36
            new BusPowerOverloaded(), // P37
            new TapOrder()); // P38

    private static final List<Check> INSTALLATION = List.of(
            new OrientationWrong(), // M01
            new LeadLength(), // M02
            new BendTooTight(), // M03
            new PlugDoesNotMate(), // M04
            new KeyOrCountDiffers(), // M05
            new LookAlikePlugs(), // M07
            new ShiftedPlug(), // M08
            new ColourMisleads(), // M09
            new LabelMissing(), // M10
            new UnusedContact(), // M11
            new ShieldGrounding(), // M12
            new CompassNearCurrent(), // M13
            new AntennaTooClose(), // M14
            new WireOutsideContact(), // M15
            new WrongClampCount(), // M16
            new MixedClampSizes(), // M17
            new Unsupported(), // M18
            new UnguardedCrossing(), // M19
            new UnsealedPlug(), // M20
            new InsulationTooHot(), // M21
            new UnwitnessedScrew(), // M22
            new ParallelRun(), // M23
            new PassageTooTight(), // M24
            new LeverArmWrong(), // M25
            new TestPlugHidden(), // M26
            new UnlikePlating(), // M27
            new BareOnConductiveFrame()); // M28

    private static final List<Check> REDUNDANCY = List.of(
            new SingleLossOfFunction(), // R01
            new RotorsStopTogether(), // R02
            new CommonSupply(), // R03
            new CommonBus(), // R04
            new CommonRun(), // R05
            new CommonReturn(), // R06
            new CommonFirmware(), // R07
            new FailsafeSharesFailure(), // R08
            new SilentLoss(), // R09
            new LatentRedundancy(), // R10
            new UntestedConductor()); // R11

    private static final List<Check> ALL = Stream.of(
                    TOPOLOGY,
                    ADDRESS,
                    POWER,
                    SIGNAL,
                    INSTALLATION,
                    REDUNDANCY,
                    RecordCatalogue.BUILD,
                    RecordCatalogue.RECORD)
            .flatMap(List::stream)
            .toList();

    private static final List<Check> LOOKING =
            ALL.stream().filter(check -> !(check instanceof Trying)).toList();

    private Catalogue() {}

    /** All checks. */
    public static List<Check> all() {
        return ALL;
    }

    /** The checks that look at a list as it is: all but those that try changes of it. */
    public static List<Check> looking() {
        return LOOKING;
    }
}
