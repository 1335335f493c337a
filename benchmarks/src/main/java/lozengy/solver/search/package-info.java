/** Opens the package-private parts of the search to the benchmarks. */
package lozengy.solver.search;
