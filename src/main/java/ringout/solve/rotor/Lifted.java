package ringout.solve.rotor;

/**
 * What the rotors carry.
 *
 * @param kg mass, so that its weight is this many kgf
 * @param forwardM centre of gravity forward of the hub in m
 * @param rightM centre of gravity right of the hub in m
 */
public record Lifted(double kg, double forwardM, double rightM) {}
