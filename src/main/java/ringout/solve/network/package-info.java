/**
 * Resistive networks on plain indices: nodes are the integers {@code 0 .. n-1}, elements the integers {@code 0 .. m-1}.
 *
 * <p>Nothing here knows an aircraft. A network is built once ({@link ringout.solve.network.ResistiveNetwork}), its pattern
 * is ordered and analysed once ({@link ringout.solve.network.NetworkStructure}), and then any number of sets of values is
 * factorised and solved on it ({@link ringout.solve.network.FactorisedNetwork}). On one factorisation stand the ohms
 * between any two nodes, the answer to "what if this one element were open", and the sensitivities.
 *
 * <p>Units are volts, amperes, ohms and watts throughout. A current of an element is positive when it flows from the
 * element's first node to its second. Potentials are defined only inside an island, that is a set of nodes joined by
 * conducting elements; nothing is ever added to the network to make an undefined potential look like a number.
 */
@NullMarked
package ringout.solve.network;

import org.jspecify.annotations.NullMarked;
