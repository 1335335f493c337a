package lozengy.solver.explain.argument;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import lozengy.model.check.Subject.SeamPart;
import lozengy.solver.explain.argument.SeamReason.Clash;
import lozengy.solver.explain.argument.SeamReason.SeamStuck;
import org.junit.jupiter.api.Test;

/** Up to three that say the same are told one by one, and up to five of one argument. */
class RefutationTest {

  private static SeamStuck stuck(int seam, int yarn) {
    Clash clash = new Clash(SeamPart.BORDERS, List.of(yarn), List.of(yarn), false, false);
    return new SeamStuck(List.of(2 * seam, 2 * seam + 1), 1, clash);
  }

  private static List<Reason> reasons(int count, int yarn) {
    return IntStream.range(0, count).<Reason>mapToObj(seam -> stuck(seam, yarn)).toList();
  }

  @Test
  void manyThatSayTheSameAreOne() {
    StuckSeams argument = new StuckSeams();
    List<Reason> three = reasons(3, 0);
    assertEquals(
        three.stream().map(reason -> new Refutation(reason, reason, 0, 0)).toList(),
        Refutation.of(argument, three));
    List<Reason> both = new ArrayList<>(reasons(4, 0));
    both.addAll(reasons(2, 1));
    SeamStuck first = stuck(0, 0);
    SeamStuck all = new SeamStuck(List.of(0, 1, 2, 3, 4, 5, 6, 7), 4, first.clash());
    assertEquals(
        List.of(
            new Refutation(all, first, 3, 0),
            new Refutation(stuck(0, 1), stuck(0, 1), 0, 0),
            new Refutation(stuck(1, 1), stuck(1, 1), 0, 0)),
        Refutation.of(argument, both));
    // of an argument that has no word for many, the first stands for all
    Reason same = new StockReason.AllKeptBack(100);
    assertEquals(
        List.of(new Refutation(same, same, 3, 0)),
        Refutation.of(new KeptBack(), List.of(same, same, same, same)));
  }

  @Test
  void theLastOfFewSaysHowManyAreLeft() {
    List<Refutation> seven =
        IntStream.range(0, 7)
            .mapToObj(i -> new Refutation(stuck(i, i), stuck(i, i), i, 0))
            .toList();
    assertEquals(seven.subList(0, 5), Refutation.few(seven.subList(0, 5)));
    List<Refutation> few = new ArrayList<>(seven.subList(0, 4));
    few.add(new Refutation(stuck(4, 4), stuck(4, 4), 4, 2));
    assertEquals(few, Refutation.few(seven));
  }
}
