package ringout.present.words;

import java.util.List;

/** The usual cautions before a meter is put on, as all sheets tell them. */
public final class Cautions {
    /** Before ohms are measured. */
    public static final List<String> OHMS = ringout.sheet.Cautions.OHMS;

    /** Before volts are measured. */
    public static final List<String> VOLTS = ringout.sheet.Cautions.VOLTS;

    private Cautions() {}
}
