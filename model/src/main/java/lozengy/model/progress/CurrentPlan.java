package lozengy.model.progress;

import java.util.Optional;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;

/**
 * How things stand: what is asked for, and the plan so far where there is one.
 *
 * @param brief what is asked for
 * @param sequences the plan so far, of the brief's layout; rounds without a yarn are open
 */
public record CurrentPlan(Brief brief, Optional<Sequences> sequences) {}
