package lozengy.model.making;

import java.util.List;
import java.util.OptionalInt;

/** One step of the work: what is done before the next is thought of. */
public sealed interface WorkStep {

  /** {@return the step's number among all steps of its order, from 1} */
  int number();

  /**
   * Rounds are worked.
   *
   * @param number the step's number, from 1
   * @param strip number of the strip whose piece is worked, from 1; where the order goes by strips
   * @param tasks the rounds, at least one; of one piece from the centre out
   */
  record Work(int number, OptionalInt strip, List<MakeList.Task> tasks) implements WorkStep {

    /**
     * Copies the tasks.
     *
     * @param number the step's number, from 1
     * @param strip number of the strip whose piece is worked, from 1; where the order goes by
     *     strips
     * @param tasks the rounds, at least one; of one piece from the centre out
     */
    public Work {
      tasks = List.copyOf(tasks);
    }
  }

  /**
   * A strip's pieces are joined to each other, and the strip to those before it.
   *
   * @param number the step's number, from 1
   * @param strip the strip's number, from 1
   * @param pieces indices of the pieces that are joined once this is done: the strip's, from left
   *     to right, after those of earlier strips that had no seam of their own
   * @param millimetres yarn that the seams take that are still open; 0 where the brief names none
   */
  record Join(int number, int strip, List<Integer> pieces, long millimetres) implements WorkStep {

    /**
     * Copies the pieces.
     *
     * @param number the step's number, from 1
     * @param strip the strip's number, from 1
     * @param pieces indices of the pieces that are joined once this is done: the strip's, from left
     *     to right, after those of earlier strips that had no seam of their own
     * @param millimetres yarn that the seams take that are still open; 0 where the brief names none
     */
    public Join {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * The outline is edged.
   *
   * @param number the step's number, from 1
   * @param millimetres yarn that it still takes
   */
  record Edge(int number, long millimetres) implements WorkStep {}
}
