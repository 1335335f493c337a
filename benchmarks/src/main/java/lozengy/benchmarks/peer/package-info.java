/**
 * The solvers that are measured: Lozengy and, stated over the same rules and the same score,
 * general-purpose solvers. They hand out sequences, which the model's check and score judge.
 */
package lozengy.benchmarks.peer;
