package lozengy.solver.explain.remedy;

import java.util.function.UnaryOperator;
import lozengy.model.brief.Brief;

/**
 * A change of one line of a brief. Moves on different lines can be made in any order, and leave the
 * places of notes in the brief as they are.
 *
 * @param step what to tell of it
 * @param upset how much it upsets, in points: see the developers' page
 * @param change the change
 */
record Move(Remedy.Step step, int upset, UnaryOperator<Brief> change) {}
