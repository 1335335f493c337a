package lozengy.model.progress;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementArbitraries;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.YarnAmount;
import lozengy.model.making.MakeList;
import lozengy.model.yarn.YarnWork;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/**
 * Walks make lists step by step beside balls of yarn that only know what was taken off them, buys
 * and weighs now and then, and holds what is said to be at hand against the balls, to the
 * millimetre.
 */
class RecountTest {

  @Provide
  Arbitrary<Arrangement> arrangements() {
    return ArrangementArbitraries.arrangements();
  }

  @Property(tries = 80, seed = "13")
  void whatIsAtHandIsRightAtAnyPointOfTheMakeList(
      @ForAll("arrangements") Arrangement arrangement, @ForAll Random random) {
    Arrangement now = uncounted(arrangement);
    Blanket blanket = now.blanket();
    long[] balls = new long[blanket.yarnCount()];
    List<YarnWork> work = YarnWork.of(blanket, now.sequences());
    for (int yarn = 0; yarn < balls.length; yarn++) {
      balls[yarn] = work.get(yarn).atHandMillimetres();
    }
    MakeList list = MakeList.of(now);
    for (MakeList.Batch batch : list.batches()) {
      // some of the step's pieces, from the first on, then the others
      List<Integer> pieces = batch.tasks().stream().map(MakeList.Task::piece).distinct().toList();
      int first = random.nextInt(pieces.size() + 1);
      for (List<Integer> part :
          List.of(pieces.subList(0, first), pieces.subList(first, pieces.size()))) {
        if (part.isEmpty()) {
          continue;
        }
        for (MakeList.Task task : batch.tasks()) {
          if (part.contains(task.piece())) {
            balls[batch.yarn()] -=
                blanket
                    .motifs()
                    .needMillimetres(blanket.kind(task.piece()), task.round(), batch.yarn());
          }
        }
        int weighed = random.nextInt(2 * balls.length);
        List<Mark.Count> counts = new ArrayList<>();
        if (weighed < balls.length) {
          // the hand is looser, or not, than the plan takes it for
          balls[weighed] = Math.max(0, balls[weighed]) + random.nextInt(2000);
          counts.add(
              new Mark.Count(
                  "left", blanket.yarn(weighed).code(), new YarnAmount.Length(balls[weighed])));
        }
        List<Mark.OfYarn> bought = new ArrayList<>();
        int more = random.nextInt(2 * balls.length);
        if (more < balls.length && more != weighed) {
          long length = 1 + random.nextInt(50_000);
          balls[more] += length;
          bought.add(
              new Mark.Bought(
                  "bought",
                  blanket.yarn(more).code(),
                  0,
                  Optional.of(new YarnAmount.Length(length))));
        }
        List<String> at = part.stream().map(piece -> blanket.place(piece).name()).toList();
        now =
            MarkedArrangement.of(
                now,
                Mark.NONE
                    .withSteps(List.of(new Mark.Step("step", batch.step(), batch.step(), at)))
                    .withCounts(counts)
                    .withYarns(bought));
        List<YarnWork> after = YarnWork.of(now.blanket(), now.sequences());
        for (int yarn = 0; yarn < balls.length; yarn++) {
          assertEquals(balls[yarn], after.get(yarn).atHandMillimetres(), "step " + batch.step());
        }
      }
    }
    assertEquals(List.of(), MakeList.of(now).batches());
  }

  /** Random counts tell of pieces that were not worked; what is gone cannot be weighed. */
  private static Arrangement uncounted(Arrangement arrangement) {
    Brief brief = arrangement.blanket().brief();
    Blanket blanket =
        Blanket.ofUnjudged(
            brief.withYarns(
                brief.yarns().stream()
                    .map(yarn -> yarn.withCount(Optional.empty()).withGone(false))
                    .toList()));
    return new Arrangement(
        blanket,
        arrangement.sequences(),
        Optional.empty(),
        arrangement.score(),
        Optional.empty(),
        Optional.empty());
  }
}
