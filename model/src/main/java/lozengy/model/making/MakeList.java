package lozengy.model.making;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;

/**
 * The rounds that are still to be worked, grouped so that yarns are picked up seldom: take up one
 * yarn, work every round that is ready for it, put it down, take up the next. A round is ready when
 * the rounds within it are done. Only planned pieces are on the list.
 *
 * <p>The fewest groups would be the shortest common supersequence of all the pieces' sequences,
 * which is hard in general; the list comes from {@link PickUps}, whose count may lie above it.
 *
 * @param batches what to work in which yarn, in order
 */
public record MakeList(List<Batch> batches) {

  /**
   * Copies the batches.
   *
   * @param batches what to work in which yarn, in order
   */
  public MakeList {
    batches = List.copyOf(batches);
  }

  /**
   * One round of one piece.
   *
   * @param piece index of the piece
   * @param round its round, from 0 at the centre
   */
  public record Task(int piece, int round) {}

  /**
   * What is worked while one yarn is in hand.
   *
   * @param yarn index of the yarn
   * @param tasks the rounds, at least one, by kind of piece, then round, then piece; two rounds of
   *     one piece only where they follow each other in the same yarn
   */
  public record Batch(int yarn, List<Task> tasks) {

    /**
     * Copies the tasks.
     *
     * @param yarn index of the yarn
     * @param tasks the rounds, at least one, by kind of piece, then round, then piece; two rounds
     *     of one piece only where they follow each other in the same yarn
     */
    public Batch {
      tasks = List.copyOf(tasks);
    }

    /**
     * {@return millimetres of yarn that the batch takes}
     *
     * @param blanket the blanket of the list
     */
    public long millimetres(Blanket blanket) {
      return tasks.stream()
          .mapToLong(
              task -> blanket.needMillimetres(blanket.kind(task.piece()), task.round(), yarn))
          .sum();
    }
  }

  /**
   * Lists what is left to work.
   *
   * @param blanket the blanket
   * @param sequences its pieces' yarns
   * @return the list
   * @throws IllegalArgumentException if a round is open, or sequences have not the blanket's shape
   */
  public static MakeList of(Blanket blanket, Sequences sequences) {
    Shape.requireComplete(blanket, sequences);
    List<Integer> pieces = new ArrayList<>();
    List<int[]> yarns = new ArrayList<>();
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      if (!laid.worked(piece)) {
        pieces.add(piece);
        yarns.add(sequences.of(piece));
      }
    }
    int[] done = new int[pieces.size()];
    List<Batch> batches = new ArrayList<>();
    for (int yarn : PickUps.order(yarns, blanket.yarnCount())) {
      List<Task> tasks = new ArrayList<>();
      for (int i = 0; i < done.length; i++) {
        int[] own = yarns.get(i);
        while (done[i] < own.length && own[done[i]] == yarn) {
          tasks.add(new Task(pieces.get(i), done[i]++));
        }
      }
      tasks.sort(
          Comparator.<Task>comparingInt(task -> blanket.kind(task.piece()).ordinal())
              .thenComparingInt(Task::round)
              .thenComparingInt(Task::piece));
      batches.add(new Batch(yarn, tasks));
    }
    return new MakeList(batches);
  }
}
