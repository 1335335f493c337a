package lozengy.solver.problem;

/**
 * What two slots of different pieces cost together, in cost units. A light pair costs its weight
 * when both slots show the same yarn; a seam of two borders costs an entry of {@link #seamCost()}.
 * Two borders that share several seams are listed as often.
 *
 * @param lightStart start of each slot's light pairs in {@code lightSlot}, and the end
 * @param lightSlot the other slot of a light pair
 * @param lightCost its cost for the same yarn
 * @param seamStart start of each slot's seams in {@code seamSlot}, and the end; borders only
 * @param seamSlot the other border
 * @param seamCost cost of two borders on a seam by their yarns, symmetric, yarn x yarns + yarn
 */
public record PairCosts(
    int[] lightStart,
    int[] lightSlot,
    int[] lightCost,
    int[] seamStart,
    int[] seamSlot,
    int[] seamCost) {}
