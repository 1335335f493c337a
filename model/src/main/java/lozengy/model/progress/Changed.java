package lozengy.model.progress;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * What changes have come to.
 *
 * @param blanket what is asked for now, made ready
 * @param earlier the plan to stay close to: the plan so far, with yarns swapped as asked; open
 *     where the layout has grown
 * @param before the plan so far on the same layout, without the swaps
 */
public record Changed(Blanket blanket, Optional<Sequences> earlier, Optional<Sequences> before) {}
