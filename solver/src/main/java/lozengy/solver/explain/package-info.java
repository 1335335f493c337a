/**
 * Whether a brief can be done, and why not: direct arguments about yarn, locks, seams and copies in
 * words first, then the constraint model, and of what that refutes a small set of the brief's own
 * lines that cannot hold together.
 */
package lozengy.solver.explain;
