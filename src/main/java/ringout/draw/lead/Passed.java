package ringout.draw.lead;

import java.util.OptionalDouble;

/**
 * Something a lead meets on its way, such as a hole or a break-out.
 *
 * @param words what it is
 * @param atMm distance from the datum along the way, mm; nothing when it is not known
 */
public record Passed(String words, OptionalDouble atMm) {}
