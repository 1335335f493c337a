package lozengy.model.check;

import java.util.BitSet;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;

/** Sets of yarns by their indices. */
final class Yarns {

  private Yarns() {}

  /** One yarn. */
  static BitSet only(int yarn) {
    BitSet yarns = new BitSet();
    yarns.set(yarn);
    return yarns;
  }

  /** Those of a blanket that a test lets through. */
  static BitSet of(Blanket blanket, IntPredicate test) {
    BitSet yarns = new BitSet();
    IntStream.range(0, blanket.yarnCount()).filter(test).forEach(yarns::set);
    return yarns;
  }
}
