package lozengy.model.making;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Shape;
import lozengy.model.brief.PartWorked;
import lozengy.model.layout.Place;

/**
 * Rounds to be worked, grouped so that yarns are picked up seldom: take up one yarn, work every
 * round that is ready for it, put it down, take up the next. A round is ready when the rounds
 * within it are done.
 *
 * <p>A list is made of what was still to be worked when the blanket was planned. Its steps keep
 * their numbers while they are worked; what is worked is no longer on the list, and a step of which
 * nothing is left is none of its batches. It is made anew where the plan is, and where yarns turn
 * out otherwise than planned.
 *
 * <p>The fewest groups would be the shortest common supersequence of all the pieces' sequences,
 * which is hard in general; the list comes from {@link PickUps}, whose count may lie above it.
 *
 * @param batches what to work in which yarn, in order
 * @param steps how many steps the list had when it was new
 */
public record MakeList(List<Batch> batches, int steps) {

  /**
   * Copies the batches.
   *
   * @param batches what to work in which yarn, in order
   * @param steps how many steps the list had when it was new
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
   * @param step the step's number, from 1
   * @param yarn index of the yarn
   * @param tasks the rounds, at least one, by kind of piece, then round, then piece; two rounds of
   *     one piece only where they follow each other in the same yarn
   */
  public record Batch(int step, int yarn, List<Task> tasks) {

    /**
     * Copies the tasks.
     *
     * @param step the step's number, from 1
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
              task ->
                  blanket.motifs().needMillimetres(blanket.kind(task.piece()), task.round(), yarn))
          .sum();
    }
  }

  /**
   * Lists what is left to work of an arrangement.
   *
   * @param arrangement the arrangement
   * @return the list, whose steps are numbered since it was planned
   */
  public static MakeList of(Arrangement arrangement) {
    return of(
        arrangement.blanket(), arrangement.sequences(), arrangement.diary().workedWhenPlanned());
  }

  /**
   * Lists what is left to work.
   *
   * @param blanket the blanket
   * @param sequences its pieces' yarns
   * @param workedWhenPlanned pieces of which rounds were worked already when the list was new
   * @return the list
   * @throws IllegalArgumentException if a round is open, or sequences have not the blanket's shape
   */
  public static MakeList of(
      Blanket blanket, Sequences sequences, List<PartWorked> workedWhenPlanned) {
    return whole(blanket, sequences, workedWhenPlanned).left(PilePlacement.of(blanket, sequences));
  }

  /**
   * Lists all that was still to be worked when the list was new, whatever is worked of it now.
   *
   * @param blanket the blanket
   * @param sequences its pieces' yarns
   * @param workedWhenPlanned pieces of which rounds were worked already when the list was new
   * @return the list
   * @throws IllegalArgumentException if a round is open, or sequences have not the blanket's shape
   */
  public static MakeList whole(
      Blanket blanket, Sequences sequences, List<PartWorked> workedWhenPlanned) {
    Shape.requireComplete(blanket, sequences);
    int[] done = done(blanket, sequences, workedWhenPlanned);
    List<Integer> pieces = new ArrayList<>();
    List<int[]> yarns = new ArrayList<>();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      if (done[piece] < blanket.roundCount(piece)) {
        pieces.add(piece);
        int[] all = sequences.of(piece);
        yarns.add(Arrays.copyOfRange(all, done[piece], all.length));
      }
    }
    List<Batch> batches = new ArrayList<>();
    for (int yarn : PickUps.order(yarns, blanket.yarnCount())) {
      List<Task> tasks = new ArrayList<>();
      for (int piece : pieces) {
        int[] own = sequences.of(piece);
        while (done[piece] < own.length && own[done[piece]] == yarn) {
          tasks.add(new Task(piece, done[piece]++));
        }
      }
      tasks.sort(
          Comparator.<Task>comparingInt(task -> blanket.kind(task.piece()).ordinal())
              .thenComparingInt(Task::round)
              .thenComparingInt(Task::piece));
      batches.add(new Batch(batches.size() + 1, yarn, tasks));
    }
    return new MakeList(batches, batches.size());
  }

  /** By piece, how many rounds the list leaves out: worked when it was new, and still. */
  static int[] done(Blanket blanket, Sequences sequences, List<PartWorked> workedWhenPlanned) {
    int[] done = new int[blanket.pieceCount()];
    for (PartWorked part : workedWhenPlanned) {
      for (Place place : blanket.layout().select(part.at())) {
        done[place.index()] = Math.max(done[place.index()], part.rounds());
      }
    }
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    for (int piece = 0; piece < done.length; piece++) {
      // what lies there from the pile was on no list
      done[piece] =
          laid.holds(piece)
              ? blanket.roundCount(piece)
              : Math.min(done[piece], blanket.roundsWorked(piece));
    }
    return done;
  }

  private MakeList left(PilePlacement laid) {
    List<Batch> left = new ArrayList<>();
    for (Batch batch : batches) {
      List<Task> tasks =
          batch.tasks().stream()
              .filter(task -> task.round() >= laid.roundsWorked(task.piece()))
              .toList();
      if (!tasks.isEmpty()) {
        left.add(new Batch(batch.step(), batch.yarn(), tasks));
      }
    }
    return new MakeList(left, steps);
  }
}
