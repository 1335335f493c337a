/**
 * The briefs that are measured: generated, the same on every machine, and each known to be
 * possible, for its stock is what an arrangement planted beforehand takes.
 */
package lozengy.benchmarks.brief;
