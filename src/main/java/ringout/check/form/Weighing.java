package ringout.check.form;

/**
 * A check that weighs solved currents and voltages. Any resistance, current or voltage that nobody gave has a share in them, so
 * what it says is held against both ends of what each missing datum usually is: a verdict that is not the same at both
 * is none, and the datum is asked for instead.
 */
public interface Weighing extends Sound {}
