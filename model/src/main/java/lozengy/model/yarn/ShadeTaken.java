package lozengy.model.yarn;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;

/**
 * What an arrangement takes of a shade from its first round on, for whoever begins with nothing:
 * what its maker has at hand or has worked plays no part.
 *
 * @param yarn its index, from 0
 * @param millimetres length in mm, joining and edging included, as it is reckoned
 * @param balls whole balls that hold it, with what is kept back and for hands as loose as the brief
 *     allows them to be; empty where no put-up is stated
 */
public record ShadeTaken(int yarn, long millimetres, OptionalLong balls) {

  /**
   * What is taken of all shades; O(rounds).
   *
   * @param blanket the blanket, of which less than all is kept back
   * @param sequences the yarns of its pieces' rounds
   * @return one for each yarn, in the brief's order
   */
  public static List<ShadeTaken> of(Blanket blanket, Sequences sequences) {
    long[] used = Blanket.ofUnjudged(atNothing(blanket.brief())).usedMillimetres(sequences);
    List<ShadeTaken> taken = new ArrayList<>();
    for (int yarn = 0; yarn < used.length; yarn++) {
      long millimetres = used[yarn];
      OptionalLong balls =
          blanket.yarn(yarn).ball().stream()
              .mapToLong(ball -> WholeBalls.of(blanket.brief(), ball).fewest(millimetres))
              .findFirst();
      taken.add(new ShadeTaken(yarn, millimetres, balls));
    }
    return taken;
  }

  /**
   * {@return a brief of which nothing is at hand, and nothing was counted}
   *
   * @param brief the brief
   */
  public static Brief atNothing(Brief brief) {
    return brief.withYarns(
        brief.yarns().stream()
            .map(yarn -> yarn.withBalls(0).withLeft(Optional.empty()).withCount(Optional.empty()))
            .toList());
  }

  /**
   * {@return what its length weighs in g; empty where no put-up is stated}
   *
   * @param blanket the blanket
   */
  public Optional<BigDecimal> grams(Blanket blanket) {
    return blanket.yarn(yarn).ball().map(ball -> ball.gramsOf(millimetres));
  }

  /**
   * {@return what its balls weigh in g; empty where no put-up is stated}
   *
   * @param blanket the blanket
   */
  public Optional<BigDecimal> ballGrams(Blanket blanket) {
    return blanket
        .yarn(yarn)
        .ball()
        .map(ball -> ball.grams().multiply(BigDecimal.valueOf(balls.orElseThrow())));
  }
}
