package lozengy.model.card;

import lozengy.model.colour.Deficiency;

/**
 * Seams that a person with a deficiency of colour vision can hardly tell apart.
 *
 * @param deficiency the deficiency
 * @param seams how many seams
 * @param closest the one whose borders are closest as seen with it; its difference is as seen
 */
public record AlikeSeams(Deficiency deficiency, int seams, ClosestSeam closest) {}
