/**
 * The typed graph of an aircraft: pins, points inside units and wire ends as vertices; conductors, mated contacts, joins
 * inside units and two-terminal parts as edges. {@link ringout.graph.Wiring} is built once per aircraft;
 * {@link ringout.graph.Circuit} is the same graph with the plugs and switches of one declared state, and answers questions
 * about nets, buses, supplies and returns, each computed once.
 */
@NullMarked
package ringout.graph;

import org.jspecify.annotations.NullMarked;
