package ringout.check.form;

import java.util.List;

/** The limits of installation with their sources: lengths, bends, supports, clearances, temperatures. */
public final class InstallationThresholds {
    /** What a lead must be longer than its way; holds two new terminations. */
    public static final Threshold LEAD_SLACK = new Threshold(
            "lead.slack", 5, "%", "slack for two new terminations, FAA AC 43.13-1B, chapter 11; 5 % is judgement");

    /** Length kept for a new termination at each end, on top of the slack. */
    public static final Threshold LEAD_TERMINATION =
            new Threshold("lead.termination", 0, "mm", "judgement: the slack holds it");

    /** How much longer than its way a lead may be, as part of the way. */
    public static final Threshold LEAD_EXCESS_SHARE = new Threshold("lead.excess-share", 40, "%", "judgement");

    /** How much longer than its way a lead may be, whatever the part. */
    public static final Threshold LEAD_EXCESS = new Threshold("lead.excess", 150, "mm", "judgement");

    /** How far an arrow may be off its setting. */
    public static final Threshold ORIENTATION = new Threshold("orientation", 5, "degrees", "judgement");

    /** Least clearance of a lead to the rim of a hole without grommet. */
    public static final Threshold HOLE_CLEARANCE =
            new Threshold("hole.clearance", 9.5, "mm", "3/8 in, FAA AC 43.13-1B, chapter 11");

    /** What insulation must stand above the highest temperature of its zone. */
    public static final Threshold INSULATION_MARGIN =
            new Threshold("insulation.margin", 20, "K", "common practice, no source");

    /** Current from which a screw joint needs a record. */
    public static final Threshold SCREW_CURRENT = new Threshold("screw.current", 10, "A", "common practice, no source");

    /** Least radius of a bend, in outer diameters of the lead. */
    public static final Threshold BEND_BUNDLE =
            new Threshold("bend.bundle", 10, "diameters", "FAA AC 43.13-1B, chapter 11");

    /** Least radius of a bend where the lead is held at a break-out, in outer diameters. */
    public static final Threshold BEND_BREAKOUT =
            new Threshold("bend.break-out", 3, "diameters", "FAA AC 43.13-1B, chapter 11");

    /** Least radius of a bend of a coaxial lead, in outer diameters. */
    public static final Threshold BEND_COAX = new Threshold("bend.coaxial", 10, "diameters", "SAE AS50881");

    /** Longest piece of a lead without support. */
    public static final Threshold UNSUPPORTED =
            new Threshold("lead.unsupported", 150, "mm", "common practice on a multirotor, no source");

    /** Thickest wire at a unit on a damper. */
    public static final Threshold DAMPED_WIRE = new Threshold("damper.wire", 26, "AWG", "common practice, no source");

    /** Shortest free loop at a unit on a damper. */
    public static final Threshold DAMPED_LOOP = new Threshold("damper.loop", 30, "mm", "common practice, no source");

    /** Distance within which a signal lead lies beside a power lead. */
    public static final Threshold PARALLEL_GAP = new Threshold("parallel.gap", 20, "mm", "common practice, no source");

    /** How long a signal lead may lie beside a power lead. */
    public static final Threshold PARALLEL_LENGTH =
            new Threshold("parallel.length", 150, "mm", "common practice, no source");

    /** Current from which a power lead disturbs a signal lead beside it. */
    public static final Threshold PARALLEL_CURRENT =
            new Threshold("parallel.current", 20, "A", "common practice, no source");

    /** Part of a hole that leads may fill. */
    public static final Threshold HOLE_FILL = new Threshold("hole.fill", 60, "%", "common practice, no source");

    /** How far a configured offset may be from the place of its unit. */
    public static final Threshold LEVER_ARM = new Threshold("lever-arm", 20, "mm", "judgement");

    /** Minutes it may take to get at a plug that a test in the field uses. */
    public static final Threshold FIELD_ACCESS = new Threshold("field.access", 10, "min", "judgement");

    private InstallationThresholds() {}

    /** All of them. */
    static List<Threshold> all() {
        return List.of(
                LEAD_SLACK,
                LEAD_TERMINATION,
                LEAD_EXCESS_SHARE,
                LEAD_EXCESS,
                ORIENTATION,
                HOLE_CLEARANCE,
                INSULATION_MARGIN,
                SCREW_CURRENT,
                BEND_BUNDLE,
                BEND_BREAKOUT,
                BEND_COAX,
                UNSUPPORTED,
                DAMPED_WIRE,
                DAMPED_LOOP,
                PARALLEL_GAP,
                PARALLEL_LENGTH,
                PARALLEL_CURRENT,
                HOLE_FILL,
                LEVER_ARM,
                FIELD_ACCESS);
    }
}
