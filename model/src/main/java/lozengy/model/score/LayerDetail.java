package lozengy.model.score;

/**
 * What balance and spread find in one layer, for a score card.
 *
 * @param layer the layer, 0 for the border
 * @param weight its weight in both parts
 * @param pieces pieces that have it
 * @param repeats weight of the pairs of pieces that show the same yarn in it (E of this layer,
 *     before the layer's weight)
 * @param expectedRepeats what that would be on average if the target counts were shuffled (E0 of
 *     this layer, before the layer's weight)
 * @param deviation standard deviation of that weight over all shuffles
 * @param counts pieces that show each yarn
 * @param targets pieces that should
 */
public record LayerDetail(
    int layer,
    int weight,
    int pieces,
    long repeats,
    double expectedRepeats,
    double deviation,
    int[] counts,
    int[] targets) {}
