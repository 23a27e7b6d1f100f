package ringout.check.form;

/**
 * A limit that things are held against.
 *
 * @param name name a project may set it by
 * @param value its value
 * @param unit unit of the value
 * @param source standard and clause, or "common practice", or "judgement"
 */
public record Threshold(String name, double value, String unit, String source) {}
