package lozengy.solver.bound;

/**
 * Yarns of a layer that are treated alike: they may lie at the same places and are wanted about as
 * often.
 *
 * @param yarns their indices
 * @param may by place of the region, whether they may lie there
 * @param must by place of the region, whether they lie there whatever else; one yarn alone then
 * @param wanted by ordinal of the kind of piece, how often each of them is expected to show
 */
record YarnClass(int[] yarns, boolean[] may, boolean[] must, double[] wanted) {}
