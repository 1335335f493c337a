package lozengy.model.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import lozengy.model.brief.Ball;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

class PurchaseTest {

  /** After buying, what may be used suffices; a millimetre less would not do. */
  @Property
  void purchaseIsTheLeastThatLasts(
      @ForAll @IntRange(min = 1, max = 1_000_000) int shortMillimetres,
      @ForAll @IntRange(max = 99) int keepBackPercent) {
    Purchase purchase =
        Purchase.of(shortMillimetres, keepBackPercent, Optional.of(new Ball(50, 1000)));
    long bought = purchase.missingMillimetres();
    assertEquals(true, bought * (100 - keepBackPercent) >= shortMillimetres * 100L);
    assertEquals(false, (bought - 1) * (100 - keepBackPercent) >= shortMillimetres * 100L);
    assertEquals((bought + 999) / 1000, purchase.balls().getAsLong());
  }
}
