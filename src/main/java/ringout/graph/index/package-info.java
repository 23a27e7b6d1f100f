/**
 * Graph algorithms over plain indices: vertices are the integers {@code 0 .. n-1}, edges the integers {@code 0 .. m-1}.
 *
 * <p>Nothing here knows an aircraft. The typed graph numbers its points and connections once and asks its questions
 * here; the answers come back as the same numbers. Parallel edges and self-loops are ordinary citizens: two wires between
 * the same two pins are two edges, and a wire that returns to its own pin is a cycle of one edge.
 *
 * <p>Three promises hold for every class: no recursion (a path of a million vertices is as safe as a star), the same
 * input gives the same output in the same order, and running time is linear in vertices plus edges unless the class
 * says otherwise.
 */
@NullMarked
package ringout.graph.index;

import org.jspecify.annotations.NullMarked;
