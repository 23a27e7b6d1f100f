package ringout.check.form;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import ringout.finding.Severity;

/** What identifies a check. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface CheckInfo {
    /** Code, such as T07. */
    String code();

    /** Name for the bad thing, words joined by dashes. */
    String name();

    /** Usual severity. */
    Severity severity();

    /** Version it came with. */
    String since();

    /** Data without which it cannot tell, in trade words. */
    String[] needs() default {};

    /** It asks and never finds: its outcome is a pass or a question. */
    boolean asksOnly() default false;

    /** It solves for currents, which takes much longer than to look at the graph. */
    boolean solves() default false;
}
