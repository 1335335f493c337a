package lozengy.solver.bound;

/**
 * Yarns of a layer that are treated alike: they may lie at the same kinds of pieces and are wanted
 * about as often.
 *
 * @param yarns their indices
 * @param kinds by ordinal of the kind of piece, whether they may lie there
 * @param wanted how often each of them is expected to show
 */
record YarnClass(int[] yarns, boolean[] kinds, double wanted) {}
