package lozengy.solver.problem;

/**
 * What balance costs.
 *
 * @param targets wanted count by layer x yarns + yarn
 * @param cost cost of one too many or too few, by layer
 */
public record Balance(int[] targets, long[] cost) {}
