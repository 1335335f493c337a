package lozengy.solver.problem;

/**
 * What single steps cost, in units of cost.
 *
 * @param unitsPerPoint units that make a point of the total
 * @param step cost of the lightest repeat: the scale of a small step
 * @param hard penalty of a broken rule
 * @param copy cost of each piece whose sequence an earlier piece has
 * @param keep cost of a round that has another yarn than in the earlier sequences; 0 where there
 *     are none. It is part of {@link RoundCosts#unary}
 */
public record Prices(double unitsPerPoint, int step, int hard, long copy, int keep) {}
