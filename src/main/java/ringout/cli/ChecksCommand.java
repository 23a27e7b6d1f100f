package ringout.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import ringout.present.json.CatalogueJson;
import ringout.present.text.CatalogueText;

/** {@code checks}: the catalogue. */
@Command(name = "checks", description = "Lists every check.", mixinStandardHelpOptions = true)
final class ChecksCommand implements Callable<Integer> {
    /** Forms the catalogue can be written in. */
    enum Format {
        /** One line a check. */
        TEXT,
        /** For other programs. */
        JSON
    }

    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Option(names = "--format", paramLabel = "F", description = "text or json (default: text).")
    private Format format = Format.TEXT;

    @Override
    public Integer call() {
        String written = format == Format.JSON ? CatalogueJson.of() : CatalogueText.of();
        spec.commandLine().getOut().print(written);
        return ExitStatus.CLEAN;
    }
}
