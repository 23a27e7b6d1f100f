package ringout.cli;

/** The version of the program. */
final class Version {
    /** As in the build file. */
    static final String NUMBER = "0.1.0";

    private Version() {}
}
