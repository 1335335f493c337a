package lozengy.model.yarn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.layout.LayoutSize;
import lozengy.model.unit.Ratio;

/**
 * A brief in another size: its motifs, its palette, its rules and its look. What is known of single
 * pieces, the pile and what is at hand belong to the one blanket, and are left out.
 *
 * @param name what the size is called
 * @param brief the brief in that size, of which nothing is at hand
 */
public record Sized(String name, Brief brief) {

  /**
   * A brief in another size.
   *
   * @param name what the size is called
   * @param like the brief
   * @param size the size
   * @return the brief in that size; whether it can be is not judged
   */
  public static Sized of(String name, Brief like, LayoutSize size) {
    return new Sized(
        name,
        ShadeTaken.atNothing(like).withLayout(size).withPieces(List.of()).withPile(List.of()));
  }

  /**
   * {@return the brief with as much of every shade at hand as its share takes, in whole balls where
   * a put-up is stated, what is kept back included}
   *
   * @param needs what it takes of every shade, less than all of which is kept back
   */
  public Brief stocked(List<ShadeNeed> needs) {
    Blanket blanket = Blanket.ofUnjudged(brief);
    List<Yarn> yarns = new ArrayList<>();
    for (ShadeNeed need : needs) {
      Yarn yarn = blanket.yarn(need.yarn());
      OptionalLong balls = need.balls(blanket);
      Ratio length = Purchase.withKeptBack(need.millimetres(), brief.rules().keepBackPercent());
      yarns.add(
          balls.isPresent()
              ? yarn.withBalls(balls.getAsLong())
              : yarn.withLeft(Optional.of(new YarnAmount.Length(length.up()))));
    }
    return brief.withYarns(yarns);
  }
}
