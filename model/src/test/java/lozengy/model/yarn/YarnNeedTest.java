package lozengy.model.yarn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Rules;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.check.Fault;
import lozengy.model.check.YarnTotalsRule;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

/** What an arrangement is told to lack is bought, and then no yarn runs out. */
class YarnNeedTest {

  private static final double[] KEPT_BACK = {0, 5, 12.5, 33.3, 90};

  private static List<Brief> examples() {
    try (Stream<Path> files = Files.walk(Path.of("../examples"), 2)) {
      return files
          .filter(file -> file.toString().endsWith(".yaml") && !file.toString().contains("target"))
          .sorted()
          .map(BriefReader::read)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void whatIsBoughtLasts() {
    SplittableRandom random = new SplittableRandom(1);
    int bought = 0;
    int worked = 0;
    for (Brief example : examples()) {
      for (double percent : KEPT_BACK) {
        Rules rules = example.rules();
        // filled at random, the pile would not be laid
        Brief free = example.withPile(List.of());
        Brief brief = poor(free, random).withRules(rules.withKeepBack(percent));
        Blanket blanket = Blanket.ofUnjudged(brief);
        Sequences sequences = filled(blanket, random);
        List<YarnNeed> needs = YarnNeed.of(blanket, sequences);
        for (boolean inBalls : new boolean[] {true, false}) {
          List<Yarn> yarns = new ArrayList<>();
          for (YarnNeed need : needs) {
            Yarn yarn = brief.yarns().get(need.yarn());
            yarns.add(need.purchase().map(buy -> richer(yarn, buy, inBalls)).orElse(yarn));
            bought += need.purchase().isPresent() ? 1 : 0;
          }
          assertLasts(brief.withYarns(yarns), sequences);
        }
        List<Yarn> alone = new ArrayList<>();
        for (YarnNeed need : needs) {
          Yarn yarn = brief.yarns().get(need.yarn());
          long balls = need.ballsNeeded().orElse(0);
          // what is worked already was there, and is not at hand
          long gone = need.neededMillimetres() - need.work().toWorkMillimetres();
          worked += gone > 0 ? 1 : 0;
          Optional<YarnAmount> before = Optional.of(new YarnAmount.Length(gone));
          alone.add(yarn.ball().isEmpty() ? yarn : stocked(yarn, balls, before));
          if (balls > 0) {
            List<Yarn> fewer = new ArrayList<>(brief.yarns());
            fewer.set(need.yarn(), stocked(yarn, balls - 1, before));
            assertTrue(faults(brief.withYarns(fewer), sequences).contains(need.yarn()));
          }
        }
        List<Integer> lacking = faults(brief.withYarns(alone), sequences);
        assertTrue(lacking.stream().allMatch(yarn -> brief.yarns().get(yarn).ball().isEmpty()));
      }
    }
    assertTrue(bought > 100 && worked > 10, "bought " + bought + ", worked " + worked);
  }

  private static void assertLasts(Brief brief, Sequences sequences) {
    assertEquals(List.of(), faults(brief, sequences));
  }

  /** The yarns that run out. */
  private static List<Integer> faults(Brief brief, Sequences sequences) {
    Blanket blanket = Blanket.ofUnjudged(brief);
    return new YarnTotalsRule()
        .faults(blanket, sequences).stream().map(Fault::yarns).flatMap(List::stream).toList();
  }

  private static Yarn richer(Yarn yarn, Purchase buy, boolean inBalls) {
    if (inBalls && buy.balls().isPresent()) {
      return stocked(yarn, yarn.balls() + buy.balls().getAsLong(), yarn.left());
    }
    // as people are told it, or to the millimetre as JSON has it
    long more = inBalls ? buy.toldMillimetres() : buy.missingMillimetres();
    long before = yarn.left().map(left -> left.millimetresIn(null).up()).orElse(0L);
    return stocked(yarn, yarn.balls(), Optional.of(new YarnAmount.Length(before + more)));
  }

  private static Yarn stocked(Yarn yarn, double balls, Optional<YarnAmount> left) {
    return yarn.withLeft(left).withBalls(balls);
  }

  /** Parts of balls, and of yarns without a put-up some loose metres. */
  private static Brief poor(Brief brief, SplittableRandom random) {
    return brief.withYarns(
        brief.yarns().stream()
            .map(
                yarn ->
                    yarn.ball().isPresent()
                        ? stocked(yarn, random.nextInt(200) / 100.0, Optional.empty())
                        : stocked(
                            yarn, 0, Optional.of(new YarnAmount.Length(random.nextInt(90_000)))))
            .toList());
  }

  /** Any yarns, whatever the other rules say. */
  private static Sequences filled(Blanket blanket, SplittableRandom random) {
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
}
