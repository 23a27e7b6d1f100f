package ringout.trace.session;

/**
 * A test that was made.
 *
 * @param test identity of the test card
 * @param outcome which of its outcomes it was
 * @param value as it was read and typed: 118, 1.2k, OL
 */
public record TestReading(String test, String outcome, String value) {}
