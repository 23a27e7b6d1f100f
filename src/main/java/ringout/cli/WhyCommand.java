package ringout.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import ringout.check.Catalogue;
import ringout.check.Pages;
import ringout.check.form.CheckInfo;
import ringout.text.Nearest;

/** {@code why}: the page of a check. */
@Command(name = "why", description = "What a check looks for, and why it matters.", mixinStandardHelpOptions = true)
final class WhyCommand implements Callable<Integer> {
    @Spec
    private CommandSpec spec = CommandSpec.create();

    @Parameters(paramLabel = "CODE", description = "Code of a check, such as T07.")
    private String code = "";

    @Override
    public Integer call() {
        List<String> codes = Catalogue.all().stream()
                .map(check -> check.getClass().getAnnotation(CheckInfo.class).code())
                .toList();
        String page = codes.stream()
                .filter(known -> known.equalsIgnoreCase(code))
                .findFirst()
                .map(Pages::of)
                .orElseThrow(() -> new ParameterException(
                        spec.commandLine(),
                        "no check '" + code + "' "
                                + Nearest.to(code, codes)
                                        .map(near -> "(did you mean " + near + "?)")
                                        .orElse("")));
        spec.commandLine().getOut().print(page);
        return ExitStatus.CLEAN;
    }
}
