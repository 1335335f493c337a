/**
 * The incremental local search: simulated annealing over ints, deterministic by seed and moves,
 * with no allocation in its loop.
 */
package lozengy.solver.search;
