/**
 * Proves a total that no valid arrangement exceeds.
 *
 * <p><b>What is proved.</b> {@link lozengy.solver.bound.Bounds} gives a number B and names its
 * proof: every arrangement that keeps the brief's rules has a total of at most B. Rules that a
 * proof does not use (copies; that all rounds of a piece differ beyond those side by side) only
 * shrink the arrangements that it speaks of, so leaving them out keeps it true.
 *
 * <p><b>How.</b> The total is a weighted mean of parts. All parts are bounded together by one
 * program, linear but for some squares, over counts ({@link lozengy.solver.bound.ScoreProgram}):
 * how many pieces of each kind take which yarn in which round and beside which, how often each
 * layer shows each yarn, how many seams have which two borders, what each yarn's stock allows. Any
 * arrangement is a point of it. A linear program's value is never exceeded where any multipliers of
 * its rows say so ({@link lozengy.solver.bound.DualBound}); the search for multipliers ({@link
 * lozengy.solver.bound.PrimalDual}) can be as rough as it likes.
 *
 * <p>What counts cannot tell is where the pieces lie, so how often a yarn must come again close by.
 * The program takes that from floors under each layer's repeats ({@link
 * lozengy.solver.bound.RepeatFloor}). The blanket is covered by bands, each pair's weight shared
 * among the bands that hold it, and each band is solved exactly by a sweep along it: for one yarn
 * at a time, where prices of places see to it that the yarns together cover each place once ({@link
 * lozengy.solver.bound.RepeatPrices}), and for few yarns also for all yarns at once ({@link
 * lozengy.solver.bound.ColourShares}). Prices and shares are found by ascent ({@link
 * lozengy.solver.bound.Ascent}); whatever they are, the floor holds.
 *
 * <p>Leeway loses the square of how tight each yarn is, which stays in the program as it is ({@link
 * lozengy.solver.bound.StockRows}). Pieces are whole, so that a stock may force a layer out of
 * balance; by how much is settled exactly ({@link lozengy.solver.bound.WholeCounts}). Spread does
 * not fall below 0, which the program's linear loss does; so the bound is never set below what all
 * other parts can give with spread at 0.
 *
 * <p><b>Effort</b> is counted in stages and choices gone through, not in time, so the same effort
 * proves the same bound everywhere; rounding is covered by a margin that {@link
 * lozengy.solver.bound.DualBound} adds.
 */
package lozengy.solver.bound;
