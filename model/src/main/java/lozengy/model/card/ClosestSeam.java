package lozengy.model.card;

/**
 * The seam whose two borders are closest in colour.
 *
 * @param first index of a piece
 * @param second index of the piece on the other side
 * @param difference CIEDE2000 between their borders
 */
public record ClosestSeam(int first, int second, double difference) {}
