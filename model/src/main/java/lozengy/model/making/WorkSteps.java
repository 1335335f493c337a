package lozengy.model.making;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PieceState;
import lozengy.model.layout.Pairs;
import lozengy.model.layout.Place;
import lozengy.model.layout.Strip;
import lozengy.model.layout.Strips;
import lozengy.model.yarn.YarnWork;

/**
 * What is left to do of a blanket, step by step: rounds to work, strips to join, the outline to
 * edge. Whoever tells of the order of the work takes it from here. Steps keep their numbers while
 * they are done, as those of the make list do; by ball they are the make list's.
 *
 * @param order by what it goes
 * @param left the steps of which something is left, in order; each with what is left of it
 * @param count how many steps there were when the blanket was planned
 */
public record WorkSteps(WorkOrder order, List<WorkStep> left, int count) {

  /**
   * Copies the steps.
   *
   * @param order by what it goes
   * @param left the steps of which something is left, in order; each with what is left of it
   * @param count how many steps there were when the blanket was planned
   */
  public WorkSteps {
    left = List.copyOf(left);
  }

  /**
   * Lists what is left to do.
   *
   * @param arrangement the arrangement
   * @param order by what it goes
   * @return the steps; O(rounds + seams), by ball what a {@link MakeList} takes
   */
  public static WorkSteps of(Arrangement arrangement, WorkOrder order) {
    return new Writing(arrangement).steps(order);
  }

  /** Puts the steps in order. */
  private static final class Writing {

    private final Arrangement arrangement;
    private final Blanket blanket;
    private final PilePlacement laid;
    private final List<Strip> strips;
    private final int[] stripOf;
    private final int[] workedWhenPlanned;

    /** By strip, from 1, seams within it and to those before it: all, and those still to join. */
    private final int[] seams;

    private final int[] openSeams;

    /** By strip, from 1, what its open seams take of the borders' yarns, in mm. */
    private final long[] inBorders;

    private final List<WorkStep> left = new ArrayList<>();
    private final List<Integer> withoutSeam = new ArrayList<>();
    private int count;

    Writing(Arrangement arrangement) {
      this.arrangement = arrangement;
      this.blanket = arrangement.blanket();
      this.laid = PilePlacement.of(blanket, arrangement.sequences());
      this.strips = Strips.of(blanket.layout());
      this.stripOf = new int[blanket.pieceCount()];
      for (Strip strip : strips) {
        strip.pieces().forEach(place -> stripOf[place.index()] = strip.number());
      }
      this.workedWhenPlanned =
          MakeList.done(blanket, arrangement.sequences(), arrangement.diary().workedWhenPlanned());
      this.seams = new int[strips.size() + 1];
      this.openSeams = new int[strips.size() + 1];
      this.inBorders = new long[strips.size() + 1];
      boolean borders = blanket.brief().joiningInBorders().isPresent();
      Pairs all = blanket.layout().seams();
      for (int seam = 0; seam < all.size(); seam++) {
        int first = all.first()[seam];
        int second = all.second()[seam];
        int strip = Math.max(stripOf[first], stripOf[second]);
        seams[strip]++;
        boolean open = !(joined(first) && joined(second));
        openSeams[strip] += open ? 1 : 0;
        if (open && borders) {
          long[] taken = new long[blanket.yarnCount()];
          YarnWork.addBorderSeam(blanket, arrangement.sequences(), seam, taken);
          inBorders[strip] += LongStream.of(taken).sum();
        }
      }
    }

    WorkSteps steps(WorkOrder order) {
      switch (order) {
        case BALL -> byBall();
        case STRIP -> byStrip();
        case ROUND -> byRound();
      }
      if (order != WorkOrder.STRIP) {
        strips.forEach(this::join);
      }
      long edging = blanket.fixedUse().edgingMillimetres();
      if (!blanket.brief().edging().isEmpty()) {
        count++;
        if (edging > 0) {
          left.add(new WorkStep.Edge(count, edging));
        }
      }
      return new WorkSteps(order, left, count);
    }

    private void byBall() {
      MakeList list = MakeList.of(arrangement);
      list.batches()
          .forEach(
              batch ->
                  left.add(new WorkStep.Work(batch.step(), OptionalInt.empty(), batch.tasks())));
      count = list.steps();
    }

    private void byStrip() {
      for (Strip strip : strips) {
        for (Place place : strip.pieces()) {
          List<MakeList.Task> tasks = new ArrayList<>();
          int rounds = blanket.roundCount(place.index());
          for (int round = workedWhenPlanned[place.index()]; round < rounds; round++) {
            tasks.add(new MakeList.Task(place.index(), round));
          }
          work(OptionalInt.of(strip.number()), tasks);
        }
        join(strip);
      }
    }

    /**
     * Of each round the yarn that is still in hand first, then the others as the brief has them.
     */
    private void byRound() {
      Sequences sequences = arrangement.sequences();
      int deepest = 0;
      for (int piece = 0; piece < blanket.pieceCount(); piece++) {
        deepest = Math.max(deepest, blanket.roundCount(piece));
      }
      int inHand = 0;
      for (int round = 0; round < deepest; round++) {
        List<List<MakeList.Task>> byYarn =
            Stream.<List<MakeList.Task>>generate(ArrayList::new)
                .limit(blanket.yarnCount())
                .toList();
        for (int piece = 0; piece < blanket.pieceCount(); piece++) {
          if (round >= workedWhenPlanned[piece] && round < blanket.roundCount(piece)) {
            byYarn.get(sequences.yarn(piece, round)).add(new MakeList.Task(piece, round));
          }
        }
        int first = inHand;
        for (int i = 0; i < byYarn.size(); i++) {
          int yarn = (first + i) % byYarn.size();
          if (work(OptionalInt.empty(), byYarn.get(yarn))) {
            inHand = yarn;
          }
        }
      }
    }

    /** Counts a step where it had anything to work; false if it had nothing. */
    private boolean work(OptionalInt strip, List<MakeList.Task> whole) {
      if (whole.isEmpty()) {
        return false;
      }
      count++;
      List<MakeList.Task> open =
          whole.stream().filter(task -> task.round() >= laid.roundsWorked(task.piece())).toList();
      if (!open.isEmpty()) {
        left.add(new WorkStep.Work(count, strip, open));
      }
      return true;
    }

    private void join(Strip strip) {
      withoutSeam.addAll(strip.pieces().stream().map(Place::index).toList());
      if (seams[strip.number()] == 0) {
        return;
      }
      count++;
      if (!withoutSeam.stream().allMatch(this::joined)) {
        left.add(
            new WorkStep.Join(
                count,
                strip.number(),
                withoutSeam,
                blanket.fixedUse().joiningMillimetres(openSeams[strip.number()])
                    + inBorders[strip.number()]));
      }
      withoutSeam.clear();
    }

    private boolean joined(int piece) {
      return blanket.state(piece) == PieceState.JOINED;
    }
  }
}
