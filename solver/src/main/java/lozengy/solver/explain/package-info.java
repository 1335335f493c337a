/**
 * Whether a brief can be done, and why not: direct arguments first, then the constraint model; of
 * what these refute a small set of the brief's own lines that cannot hold together, what would
 * help, and how near one can come without. The packages below build on one another in this order.
 */
package lozengy.solver.explain;
