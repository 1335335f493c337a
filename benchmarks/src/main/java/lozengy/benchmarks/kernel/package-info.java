/** Kernels: moves, and what goes around them, timed by JMH with forks. */
package lozengy.benchmarks.kernel;
