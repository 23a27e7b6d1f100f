package ringout.present.svg;

import java.util.List;
import ringout.draw.ink.StyledSheet;
import ringout.draw.verify.Flaw;
import ringout.draw.verify.Verdict;
import ringout.draw.verify.Verifier;

/** A sheet that may be written, or the reasons why it may not. */
public sealed interface SvgOutcome {
    /**
     * A sheet that the verifier passed.
     *
     * @param text the whole document
     * @param verdict its counts
     */
    record Verified(String text, Verdict verdict) implements SvgOutcome {
        /** Refuses a verdict with flaws. */
        public Verified {
            if (!verdict.passed()) {
                throw new IllegalArgumentException("a sheet with flaws is not written: " + verdict.flaws());
            }
        }
    }

    /**
     * A sheet that is not written.
     *
     * @param flaws why
     */
    record Refused(List<Flaw> flaws) implements SvgOutcome {
        /** Keeps an unmodifiable copy of the flaws. */
        public Refused {
            flaws = List.copyOf(flaws);
        }
    }

    /** {@return the sheet as SVG, if the verifier finds nothing wrong with it} */
    static SvgOutcome of(StyledSheet sheet) {
        SvgText svg = SvgWriter.write(sheet);
        Verdict verdict = Verifier.verify(svg.text(), svg.promised(), sheet.things());
        return verdict.passed() ? new Verified(svg.text(), verdict) : new Refused(verdict.flaws());
    }
}
