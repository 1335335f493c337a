package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.PileEntry;

/** Random blankets with a pile, so small that brute force settles them. */
public final class TinyPiles {

  private static final long FIRST_SEED = 1_000_000;

  private TinyPiles() {}

  /**
   * The blanket of a seed: one of {@link TinyBlankets} with finished pieces, of any yarns whatever
   * the rules say, for some or all of its planned places.
   */
  public static Blanket of(long seed) {
    SplittableRandom random = new SplittableRandom(FIRST_SEED + seed);
    for (long tries = 0; ; tries++) {
      Blanket bare = TinyBlankets.of(FIRST_SEED + 1000 * seed + tries);
      Brief brief = bare.brief().withPile(pile(bare, random));
      if (!brief.pile().isEmpty() && BriefMistakes.of(brief).isEmpty()) {
        return Blanket.of(brief);
      }
    }
  }

  private static List<PileEntry> pile(Blanket blanket, SplittableRandom random) {
    List<PileEntry> pile = new ArrayList<>();
    boolean all = random.nextInt(4) == 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      boolean alike = !pile.isEmpty() && random.nextInt(3) == 0;
      if (!all && random.nextInt(2) == 0) {
        continue;
      }
      PileEntry last = alike ? pile.get(pile.size() - 1) : null;
      String[] codes = new String[blanket.roundCount(piece)];
      Arrays.setAll(codes, round -> blanket.yarn(random.nextInt(blanket.yarnCount())).code());
      pile.add(
          last != null && last.kind() == blanket.kind(piece)
              ? last
              : new PileEntry(blanket.kind(piece), List.of(codes), 1, Set.of()));
    }
    return pile;
  }
}
