package lozengy.solver.bound;

/**
 * Part of a region: the places between two lines along the sweep, with a share of the weight of
 * each pair of them. Over all bands of a cover the shares of a pair sum to its weight, so the
 * repeats of a layer are the sum of the bands' repeats.
 *
 * @param places how many places, in sweeping order
 * @param copies how many bands of the cover are just like this one
 * @param place index in the region of each place
 * @param kind ordinal of the kind of piece at each place
 * @param pair index in the region of each pair
 * @param first earlier place of each pair
 * @param second later place of each pair
 * @param weight share of the pair's weight
 * @param apart whether the rules keep the two places from showing the same yarn
 * @param share part of each place's count that is told here; over the bands of a cover the parts of
 *     a place sum to 1
 */
record Band(
    int places,
    int copies,
    int[] place,
    int[] kind,
    int[] pair,
    int[] first,
    int[] second,
    double[] weight,
    boolean[] apart,
    double[] share) {

  /** The weight of all pairs at a place. */
  double[] weightAt() {
    double[] at = new double[places];
    for (int pair = 0; pair < first.length; pair++) {
      at[first[pair]] += weight[pair];
      at[second[pair]] += weight[pair];
    }
    return at;
  }
}
