package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Yarn;
import org.junit.jupiter.api.Test;

class ClashGraphTest extends RuleTest {

  private static Blanket clashing(WithinPiece within, Look.Pair... apart) {
    Brief brief = fiveSquares(3).rules(2.5, within, OptionalInt.empty(), 0).build().brief();
    List<Yarn> yarns =
        brief.yarns().stream()
            .map(yarn -> yarn.code().equals("BAR") ? yarn.withLotOf(Optional.of("SND")) : yarn)
            .toList();
    return Blanket.ofUnjudged(
        brief
            .withYarns(yarns)
            .withLook(brief.look().withApart(List.of(apart)))
            .withRules(brief.rules().withCentresDiffer(true).withLotsApart(true)));
  }

  private static Blanket clashing() {
    return clashing(
        WithinPiece.ALL_DIFFER,
        new Look.Pair("MUD", "REE", Look.Meeting.BOTH),
        new Look.Pair("HEA", "SAM", Look.Meeting.SEAMS));
  }

  /** Against the lines' own pairs, looked through one by one. */
  @Test
  void barsWhatAnyLineBars() {
    // four seams, both ways, by borders and by centres; in each of five pieces three pairs of
    // rounds, or the two of neighbours
    barsWhatAnyLineBars(clashing(), 2 * 4 * 2 + 2 * 3 * 5);
    Look.Pair both = new Look.Pair("MUD", "REE", Look.Meeting.BOTH);
    barsWhatAnyLineBars(clashing(WithinPiece.ALL_DIFFER, both), 2 * 4 * 2 + 2 * 3 * 5);
    Look.Pair lots = new Look.Pair("BAR", "SND", Look.Meeting.BOTH);
    barsWhatAnyLineBars(clashing(WithinPiece.FREE, lots), 2 * 4 * 2 + 2 * 2 * 5);
  }

  private static void barsWhatAnyLineBars(Blanket blanket, int pairs) {
    List<BriefLine> lines = RuleBook.lines(blanket);
    List<Ground.Clash> clashes =
        lines.stream().flatMap(line -> line.grounds(Ground.Clash.class)).toList();
    ClashGraph graph = ClashGraph.of(blanket, lines);
    int clashing = 0;
    for (int number = 0; number < blanket.index().count(); number++) {
      for (int other = 0; other < blanket.index().count(); other++) {
        boolean any = false;
        for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
          for (int otherYarn = 0; otherYarn < blanket.yarnCount(); otherYarn++) {
            boolean barred = bars(clashes, number, yarn, other, otherYarn);
            any |= barred;
            assertEquals(barred, graph.bars(number, yarn, other, otherYarn));
          }
        }
        clashing += any ? 1 : 0;
      }
    }
    assertEquals(pairs, clashing);
    assertEquals(clashing, graph.to(blanket.index().count() - 1));
  }

  private static boolean bars(
      List<Ground.Clash> clashes, int number, int yarn, int other, int otherYarn) {
    for (Ground.Clash clash : clashes) {
      for (int i = 0; i < clash.pairs().size(); i++) {
        int first = clash.pairs().first()[i];
        int second = clash.pairs().second()[i];
        boolean these = first == number && second == other || first == other && second == number;
        if (these && clash.barred().bars(yarn, otherYarn)) {
          return true;
        }
      }
    }
    return false;
  }

  @Test
  void listsEachRoundOnceAndInOrder() {
    Blanket blanket = clashing();
    ClashGraph graph = ClashGraph.of(blanket, RuleBook.lines(blanket));
    assertEquals(0, graph.from(0));
    for (int number = 0; number < blanket.index().count(); number++) {
      assertEquals(number == 0 ? 0 : graph.to(number - 1), graph.from(number));
      for (int entry = graph.from(number); entry < graph.to(number); entry++) {
        assertTrue(entry == graph.from(number) || graph.other(entry - 1) < graph.other(entry));
        assertEquals(graph.relations().get(graph.relation(entry)), graph.barred(entry));
      }
    }
    assertEquals(new HashSet<>(graph.relations()).size(), graph.relations().size());
    YarnPairs onSeams = graph.barred(graph.to(blanket.index().border(0)) - 1);
    assertEquals(
        9, bits(onSeams), "six alike, MUD and REE, HEA and SAM, and SND and BAR, 1.8 apart");
  }

  private static int bits(YarnPairs pairs) {
    int bits = 0;
    for (int yarn = 0; yarn < pairs.yarns(); yarn++) {
      for (int other = 0; other <= yarn; other++) {
        bits += pairs.bars(yarn, other) ? 1 : 0;
      }
    }
    return bits;
  }

  @Test
  void pairsOfYarnsAreBarredBothWaysRound() {
    YarnPairs pairs = YarnPairs.of(3, (yarn, other) -> yarn == 2 && other == 0);
    assertTrue(pairs.bars(0, 2));
    assertTrue(pairs.bars(2, 0));
    assertFalse(pairs.bars(0, 0));
    assertEquals(List.of(0), IntStream.of(pairs.against(2)).boxed().toList());
    assertFalse(pairs.isSame());
    YarnPairs same = YarnPairs.same(3);
    assertTrue(same.isSame());
    assertFalse(same.and(pairs).isSame());
    assertTrue(same.and(pairs).bars(1, 1) && same.and(pairs).bars(0, 2));
    assertEquals(same, YarnPairs.of(3, (yarn, other) -> yarn == other));
    assertEquals(same.hashCode(), YarnPairs.same(3).hashCode());
    assertNotEquals(same, pairs);
    assertNotEquals(same.hashCode(), pairs.hashCode());
  }
}
