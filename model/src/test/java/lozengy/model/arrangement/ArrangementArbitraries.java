package lozengy.model.arrangement;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefArbitraries;
import lozengy.model.brief.Part;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.YarnAmount;
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
    Sequences sequences = sequences(blanket, random);
    return new Arrangement(
        blanket,
        sequences,
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
                        "none")
                    .withWalkers(1 + random.nextInt(3)))
            : Optional.empty(),
        diary(blanket, sequences, random));
  }

  private static Diary diary(Blanket blanket, Sequences sequences, Random random) {
    Diary diary = random.nextBoolean() ? Diary.EMPTY : Diary.begun(blanket, sequences);
    LocalDate day = LocalDate.of(2026, 1, 31);
    for (int i = random.nextInt(3); i > 0; i--) {
      day = day.plusDays(random.nextInt(3));
      Before before =
          new Before(
              blanket
                  .brief()
                  .withPieces(some(blanket.brief().pieces(), random))
                  .withStitching(
                      blanket
                          .brief()
                          .stitching()
                          .withHand(BigDecimal.valueOf(100 + random.nextInt(2)))),
              sequences(blanket, random),
              random.nextBoolean()
                  ? Optional.of(bound(random, random.nextBoolean()))
                  : Optional.empty(),
              Optional.empty());
      diary =
          diary.with(
              new Diary.Entry(
                  random.nextBoolean() ? Optional.of(day) : Optional.empty(),
                  names(random),
                  random.nextBoolean()
                      ? List.of()
                      : List.of(new PartWorked(1 + random.nextInt(3), names(random))),
                  names(random),
                  names(random),
                  names(random),
                  random.nextBoolean()
                      ? List.of()
                      : List.of(
                          new Diary.YarnEvent(
                              Diary.YarnEvent.What.COUNTED,
                              "MUD",
                              Optional.of(new YarnAmount.Weight(random.nextInt(100_000))),
                              random.nextBoolean()
                                  ? Optional.empty()
                                  : Optional.of(
                                      new Diary.YarnEvent.Weighed(
                                          random.nextInt(90_000) - 40_000,
                                          1 + random.nextInt(90_000))))),
                  random.nextInt(9) - 4,
                  random.nextInt(99) - 49,
                  random.nextBoolean()
                      ? Optional.empty()
                      : Optional.of(BigDecimal.valueOf(random.nextInt(5000) - 500, 1)),
                  random.nextBoolean()
                      ? Optional.empty()
                      : Optional.of(
                          BigDecimal.valueOf(500 + random.nextInt(1500), 1).stripTrailingZeros()),
                  random.nextBoolean()
                      ? Optional.empty()
                      : Optional.of(Reversal.of(blanket, sequences, before))));
    }
    return diary;
  }

  private static List<String> names(Random random) {
    return some(List.of("row1", "r2c1..r2c3", "top-left"), random);
  }

  private static <T> List<T> some(List<T> all, Random random) {
    return all.stream().filter(each -> random.nextInt(3) == 0).toList();
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
