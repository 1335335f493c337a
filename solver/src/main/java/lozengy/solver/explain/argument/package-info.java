/**
 * Cheap and exact arguments that nothing fits: what a round, a piece, a seam or a yarn alone rules
 * out.
 */
package lozengy.solver.explain.argument;
