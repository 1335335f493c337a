package lozengy.solver.substitute;

import lozengy.model.brief.Yarn;

/**
 * A shade of a list.
 *
 * @param place what messages call it
 * @param yarn the shade, with what there is of it; its share plays no part
 * @param toBuy whether the list does not say how much there is, so that as much can be had as is
 *     needed
 */
public record Listed(String place, Yarn yarn, boolean toBuy) {}
