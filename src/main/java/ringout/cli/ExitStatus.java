package ringout.cli;

/** How the process ends, for a script that calls it. */
public final class ExitStatus {
    /** Nothing was found at or above the chosen severity. */
    public static final int CLEAN = 0;

    /** There are findings at or above the chosen severity. */
    public static final int FINDINGS = 1;

    /** The input or the call is wrong; nothing was written. */
    public static final int WRONG_INPUT = 2;

    /** A defect of the tool itself (EX_SOFTWARE of BSD sysexits.h). */
    public static final int DEFECT = 70;

    private ExitStatus() {}
}
