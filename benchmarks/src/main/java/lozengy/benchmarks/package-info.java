/**
 * Measures the solver: the command line of the benchmarks. Runs of whole solves against
 * general-purpose solvers, cold starts of the command, growth with the number of pieces, kernels.
 */
package lozengy.benchmarks;
