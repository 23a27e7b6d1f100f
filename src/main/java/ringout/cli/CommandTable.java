package ringout.cli;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import picocli.CommandLine;

/**
 * The commands of the program by name, in the order the help shows them.
 *
 * <p>A command is made when the call names it and not before: describing one to the parser costs one to two
 * milliseconds, as much as a small check.
 */
final class CommandTable {
    private final Map<String, Supplier<Callable<Integer>>> makers = new LinkedHashMap<>();

    /**
     * Adds a command at the end of the table.
     *
     * @param name as the user writes it
     * @param maker makes the annotated command
     * @return this table
     */
    CommandTable with(String name, Supplier<Callable<Integer>> maker) {
        if (makers.putIfAbsent(name, maker) != null) {
            throw new IllegalArgumentException("two commands named " + name);
        }
        return this;
    }

    /**
     * A parser for one call: it knows the command the call names, or all of them when it names none, so that help is
     * complete and a misspelt name gets a hint.
     *
     * @param program the annotated program
     * @param args the words of the call
     */
    CommandLine parserFor(Object program, String... args) {
        CommandLine line = new CommandLine(program);
        Supplier<Callable<Integer>> called = args.length == 0 ? null : makers.get(args[0]);
        if (called != null) {
            line.addSubcommand(args[0], called.get());
        } else {
            makers.forEach((name, maker) -> line.addSubcommand(name, maker.get()));
        }
        return line;
    }
}
