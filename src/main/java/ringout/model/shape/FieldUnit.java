package ringout.model.shape;

import java.util.Map;
import java.util.Optional;

/**
 * The unit a numeric field is held in, told by the end of its name, and the units a user may write instead.
 *
 * @param symbol unit the value is held in
 * @param factors other units accepted, and what one of them is in the held unit
 */
public record FieldUnit(String symbol, Map<String, Double> factors) {
    private static final Map<String, Double> LENGTH =
            Map.of("mm", 1.0, "cm", 10.0, "m", 1000.0, "in", 25.4, "\"", 25.4, "inch", 25.4, "ft", 304.8);
    private static final FieldUnit MM = new FieldUnit("mm", LENGTH);
    private static final FieldUnit NONE = new FieldUnit("", Map.of());
    private static final Map<String, FieldUnit> BY_SUFFIX = Map.ofEntries(
            Map.entry("Mm", MM),
            Map.entry("Mm2", new FieldUnit("mm2", Map.of("mm2", 1.0, "mm²", 1.0, "qmm", 1.0))),
            Map.entry("A", new FieldUnit("A", Map.of("a", 1.0, "ma", 0.001, "amp", 1.0, "amps", 1.0))),
            Map.entry("Ah", new FieldUnit("Ah", Map.of("ah", 1.0, "mah", 0.001))),
            Map.entry("V", new FieldUnit("V", Map.of("v", 1.0, "mv", 0.001, "vdc", 1.0))),
            Map.entry("W", new FieldUnit("W", Map.of("w", 1.0, "mw", 0.001, "kw", 1000.0))),
            Map.entry("S", new FieldUnit("s", Map.of("s", 1.0, "ms", 0.001, "min", 60.0))),
            Map.entry("Ms", new FieldUnit("ms", Map.of("ms", 1.0, "s", 1000.0))),
            Map.entry("Min", new FieldUnit("min", Map.of("min", 1.0, "h", 60.0))),
            Map.entry("Ohm", new FieldUnit("ohm", Map.of("ohm", 1.0, "ω", 1.0, "kohm", 1000.0, "k", 1000.0))),
            Map.entry("Milliohm", new FieldUnit("mohm", Map.of("mohm", 1.0, "mω", 1.0, "ohm", 1000.0, "ω", 1000.0))),
            Map.entry(
                    "Kbit",
                    new FieldUnit(
                            "kbit/s",
                            Map.of(
                                    "k", 1.0, "kbit", 1.0, "kbit/s", 1.0, "m", 1000.0, "mbit", 1000.0, "mbit/s",
                                    1000.0))),
            Map.entry("Hz", new FieldUnit("Hz", Map.of("hz", 1.0, "khz", 1000.0))),
            Map.entry("Mhz", new FieldUnit("MHz", Map.of("mhz", 1.0, "ghz", 1000.0))),
            Map.entry("Kg", new FieldUnit("kg", Map.of("kg", 1.0, "g", 0.001))),
            Map.entry("G", new FieldUnit("g", Map.of("g", 1.0, "kg", 1000.0))),
            Map.entry("Kgf", new FieldUnit("kgf", Map.of("kgf", 1.0, "gf", 0.001))),
            Map.entry("C", new FieldUnit("degC", Map.of("c", 1.0, "°c", 1.0, "degc", 1.0))),
            Map.entry("Deg", new FieldUnit("deg", Map.of("deg", 1.0, "°", 1.0))),
            Map.entry("Ut", new FieldUnit("uT", Map.of("ut", 1.0, "µt", 1.0, "μt", 1.0))),
            Map.entry("Nm", new FieldUnit("Nm", Map.of("nm", 1.0, "ncm", 0.01))),
            Map.entry("Percent", new FieldUnit("%", Map.of("%", 1.0))),
            Map.entry("Picofarad", new FieldUnit("pF", Map.of("pf", 1.0, "nf", 1000.0))),
            Map.entry("Microfarad", new FieldUnit("uF", Map.of("uf", 1.0, "µf", 1.0, "μf", 1.0, "mf", 1000.0))));

    /** The unit of a field, told by its name: {@code lengthMm} is in mm. */
    public static FieldUnit of(String field) {
        int start = field.length() - 1;
        while (start > 0 && !Character.isUpperCase(field.charAt(start))) {
            start--;
        }
        return start <= 0 ? NONE : BY_SUFFIX.getOrDefault(field.substring(start), NONE);
    }

    /** What one of the given unit is in the held unit. */
    public Optional<Double> factor(String unit) {
        return Optional.ofNullable(factors.get(unit));
    }
}
