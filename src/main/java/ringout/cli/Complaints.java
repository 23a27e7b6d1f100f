package ringout.cli;

import java.io.PrintWriter;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** What the user reads when a call cannot be carried out: one plain line and a hint, or the trace of a defect. */
final class Complaints {
    private Complaints() {}

    /**
     * The call is wrong.
     *
     * @return {@link ExitStatus#WRONG_INPUT}
     */
    static int wrongCall(ParameterException wrong, String[] unused) {
        CommandLine line = wrong.getCommandLine();
        PrintWriter err = line.getErr();
        err.println("ringout: " + lowerFirst(String.valueOf(wrong.getMessage())));
        UnmatchedArgumentException.printSuggestions(wrong, err);
        err.println("see " + line.getCommandSpec().qualifiedName() + " --help");
        return ExitStatus.WRONG_INPUT;
    }

    /**
     * The tool itself failed: never the user's fault, and never a verdict on the aircraft.
     *
     * @return {@link ExitStatus#DEFECT}
     */
    static int defect(Exception failure, CommandLine line, ParseResult unused) {
        PrintWriter err = line.getErr();
        err.println("ringout: a defect of this tool stopped it; nothing is known about the aircraft from this run");
        failure.printStackTrace(err);
        return ExitStatus.DEFECT;
    }

    private static String lowerFirst(String text) {
        boolean word = text.length() > 1 && Character.isLowerCase(text.charAt(1));
        return word ? Character.toLowerCase(text.charAt(0)) + text.substring(1) : text;
    }
}
