package lozengy.solver.explain.miss;

import lozengy.model.blanket.Sequences;

/**
 * An arrangement that breaks no rule and leaves as few rounds open as could be found.
 *
 * @param sequences the yarns; some rounds are open
 * @param rounds how many rounds are open
 * @param pieces how many pieces have one
 * @param millimetres the least that the open rounds take together, in mm
 * @param fewest whether it is proved that no fewer rounds can be open
 */
public record NearestMiss(
    Sequences sequences, int rounds, int pieces, long millimetres, boolean fewest) {}
