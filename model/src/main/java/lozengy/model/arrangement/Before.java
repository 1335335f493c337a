package lozengy.model.arrangement;

import java.util.Optional;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;

/**
 * What stood in an arrangement before a mark.
 *
 * @param brief the brief, with what it noted of the pieces
 * @param sequences every piece's yarns
 * @param bound the bound
 * @param solved how the arrangement was found
 */
public record Before(
    Brief brief,
    Sequences sequences,
    Optional<Arrangement.Bound> bound,
    Optional<Arrangement.Solved> solved) {}
