/**
 * Small sets of lines of the brief that cannot hold together, by arguments or by the constraint
 * model.
 */
package lozengy.solver.explain.conflict;
