package lozengy.model.arrangement;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefArbitraries;
import lozengy.model.brief.Part;
import lozengy.model.score.Score;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Random arrangements, complete but not valid, for what reads and writes them. */
public final class ArrangementArbitraries {

  private ArrangementArbitraries() {}

  /** Arrangements with any yarn in every round that is not locked. */
  public static Arbitrary<Arrangement> arrangements() {
    return Combinators.combine(BriefArbitraries.briefs(), Arbitraries.randoms())
        .as(ArrangementArbitraries::arrangement)
        .withoutEdgeCases();
  }

  /** Any yarns, locks kept. */
  public static Sequences sequences(Blanket blanket, Random random) {
    Sequences sequences = blanket.locks();
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 0; round < sequences.rounds(piece); round++) {
        if (sequences.yarn(piece, round) == Sequences.OPEN) {
          sequences.set(piece, round, random.nextInt(blanket.yarnCount()));
        }
      }
    }
    return sequences;
  }

  private static Arrangement arrangement(Brief brief, Random random) {
    Blanket blanket = Blanket.of(brief);
    Optional<Sequences> earlier =
        random.nextBoolean() ? Optional.of(sequences(blanket, random)) : Optional.empty();
    Map<Part, Double> parts = new EnumMap<>(Part.class);
    for (Part part : Part.values()) {
      if (part != Part.KEEP || earlier.isPresent()) {
        parts.put(part, figure(random));
      }
    }
    return new Arrangement(
        blanket,
        sequences(blanket, random),
        earlier,
        new Score(figure(random), figure(random), parts),
        random.nextBoolean() ? Optional.of(bound(random, earlier.isPresent())) : Optional.empty(),
        random.nextBoolean()
            ? Optional.of(
                new Arrangement.Solved(
                    random.nextLong(),
                    random.nextInt(Integer.MAX_VALUE),
                    random.nextBoolean() ? Optional.of(random.nextDouble()) : Optional.empty(),
                    "0.1.0",
                    "none"))
            : Optional.empty(),
        random.nextInt(3) == 0 ? Optional.of(lastMark(blanket, random)) : Optional.empty());
  }

  private static LastMark lastMark(Blanket blanket, Random random) {
    return new LastMark(
        blanket.brief(),
        sequences(blanket, random),
        random.nextBoolean() ? Optional.of(bound(random, random.nextBoolean())) : Optional.empty(),
        Optional.empty());
  }

  private static Arrangement.Bound bound(Random random, boolean again) {
    return new Arrangement.Bound(
        figure(random), "windows of 4 x 4", again ? Optional.of(figure(random)) : Optional.empty());
  }

  /** With at most the decimals that files keep. */
  private static double figure(Random random) {
    return random.nextInt(100_000_001) / 1e6;
  }
}
