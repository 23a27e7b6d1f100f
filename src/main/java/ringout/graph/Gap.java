package ringout.graph;

/**
 * A datum that is missing, as a person would ask for it: {@code wire size} of {@code W33}.
 *
 * @param datum what is missing, in trade words
 * @param of the unit, lead or part it is missing of
 */
public record Gap(String datum, String of) {}
