package ringout.present.json;

import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.PrettyPrinter;
import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;

/** The layout of every JSON file written: two blanks a level, lines ending in \n on every system. */
public final class Layout extends ObjectWriteContext.Base {
    private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

    @Override
    public PrettyPrinter getPrettyPrinter() {
        return new DefaultPrettyPrinter().withObjectIndenter(INDENT).withArrayIndenter(INDENT);
    }

    @Override
    public boolean hasPrettyPrinter() {
        return true;
    }
}
