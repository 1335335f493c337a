/**
 * A blanket frozen to ints for the search: slots, domains, pair costs, counts and stock. Indices
 * belong to one {@link lozengy.solver.problem.Problem}.
 */
package lozengy.solver.problem;
