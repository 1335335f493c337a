package lozengy.model.score;

import java.util.List;
import java.util.function.Supplier;

/**
 * What one place costs a part of the score.
 *
 * @param points points of the part, 0 to 100
 * @param pieces indices of the pieces concerned; empty where it concerns the blanket
 * @param words what is weak there; asked for only if the loss is told, as there can be many
 */
record Loss(double points, List<Integer> pieces, Supplier<String> words) {}
