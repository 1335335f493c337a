package lozengy.model.check;

import static lozengy.model.blanket.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.BitSet;
import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Where;
import lozengy.model.colour.Tone;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RoundYarnsTest {

  private static Blanket blanket(int yarns) {
    BlanketBuilder builder = BlanketBuilder.straight(3, 1).motif(PieceKind.SQUARE, 2);
    for (int yarn = 0; yarn < yarns; yarn++) {
      builder.yarn("Y" + yarn, "Yarn " + yarn, "#2c2a29");
    }
    return builder.build();
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 63, 64, 65, 130})
  void behavesLikeOneSetForEachRound(int yarns) {
    RoundYarns domains = RoundYarns.all(blanket(yarns));
    BitSet[] sets = new BitSet[6];
    for (int i = 0; i < sets.length; i++) {
      sets[i] = new BitSet();
      sets[i].set(0, yarns);
    }
    SplittableRandom random = new SplittableRandom(yarns);
    for (int step = 0; step < 20 * yarns; step++) {
      int slot = random.nextInt(6);
      int yarn = random.nextInt(yarns);
      domains.remove(slot / 2, slot % 2, yarn);
      sets[slot].clear(yarn);
      int other = random.nextInt(6);
      assertEquals(sets[other].cardinality(), domains.size(other / 2, other % 2));
      assertArrayEquals(sets[other].stream().toArray(), domains.yarnsOf(other / 2, other % 2));
      int only = sets[other].cardinality() == 1 ? sets[other].nextSetBit(0) : Sequences.OPEN;
      assertEquals(only, domains.only(other / 2, other % 2));
    }
  }

  @Test
  void keepingOneYarnOfARoundLeavesTheOthersAlone() {
    Blanket blanket = blanket(70);
    RoundYarns domains = RoundYarns.all(blanket);
    RoundYarns copy = domains.copy();
    domains.restrict(lock(blanket, 66));
    assertArrayEquals(new int[] {66}, domains.yarnsOf(1, 0));
    assertEquals(70, domains.size(0, 1));
    assertEquals(70, domains.size(1, 1));
    assertNotEquals(copy, domains);
    domains.restrict(lock(blanket, 3));
    assertEquals(0, domains.size(1, 0), "a yarn that was gone does not come back");
    assertEquals(70, copy.size(1, 0), "a copy changes on its own");
  }

  /** The centre of the second piece in one yarn. */
  private static BriefLine lock(Blanket blanket, int yarn) {
    BitSet only = new BitSet();
    only.set(yarn);
    Ground may = new Ground.May(new int[] {blanket.index().centre(1)}, only, true);
    return new BriefLine(
        RuleId.LOCKS,
        BriefPath.of("pieces").item(0),
        new Subject.Lock(1, PieceState.PLANNED, 0, List.of()),
        List.of(may));
  }

  @Test
  void directDomainsAreWhatLocksTonesAndBansLeave() {
    Blanket blanket =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, round(1, Tone.LIGHT), round(1, Tone.values()))
            .yarn("A", "A", "#000000")
            .yarn("B", "B", "#101010")
            .yarn("C", "C", "#f0f0f0")
            .yarn("D", "D", "#ffffff")
            .ban("r1c1", "A")
            .ban("r1c1", "C")
            .piece("r1c2", PieceState.MADE, "A", "B")
            .build();
    RoundYarns direct = RoundYarns.direct(blanket);
    assertArrayEquals(new int[] {3}, direct.yarnsOf(0, 0));
    assertArrayEquals(new int[] {1, 3}, direct.yarnsOf(0, 1));
    assertTrue(direct.allows(1, 0, 0), "what is made is a fact, whatever its tone");
    assertEquals(1, direct.size(1, 0));
    assertArrayEquals(new int[] {1}, direct.yarnsOf(1, 1));
  }

  @Test
  void linesOfPlacesAndOfWhatIsStillToBeWorkedAreToldApart() {
    Blanket blanket =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, round(1, Tone.LIGHT), round(1, Tone.values()))
            .yarn("A", "A", "#000000")
            .yarn("B", "B", "#ffffff")
            .yarn("C", "C", "#fefefe")
            .ban("r1c1", "C")
            .piece("r1c1", PieceState.PLANNED, null, "A")
            .build();
    List<BriefLine> lines = RuleBook.lines(blanket);
    RoundYarns places = RoundYarns.ofPlaces(blanket, lines);
    assertArrayEquals(new int[] {0, 1, 2}, places.yarnsOf(0, 0));
    assertArrayEquals(new int[] {0}, places.yarnsOf(0, 1));
    RoundYarns unlocked = RoundYarns.unlocked(blanket, lines);
    assertArrayEquals(new int[] {1}, unlocked.yarnsOf(0, 0));
    assertArrayEquals(new int[] {0, 1}, unlocked.yarnsOf(0, 1));
    assertArrayEquals(new int[] {0, 1, 2}, unlocked.yarnsOf(1, 1));
    RoundYarns both = RoundYarns.toWork(blanket, lines);
    assertEquals(1, both.only(0, 0));
    assertEquals(0, both.only(0, 1));
    assertEquals(Sequences.OPEN, both.only(1, 0), "two are light");
    assertEquals(2, both.pieces());
    assertEquals(2, both.rounds(1));
    assertEquals(3, both.yarns());
  }

  @Test
  void aCountOfNoneIsABanOnWhatIsStillToBeWorked() {
    Blanket plain =
        BlanketBuilder.straight(2, 1)
            .motif(PieceKind.SQUARE, 2)
            .yarn("A", "A", "#000000")
            .yarn("B", "B", "#ffffff")
            .begun("r1c1", 1, "A", null)
            .build();
    Look.Count none = new Look.Count("A", Where.EVERYWHERE, 0, OptionalInt.of(0));
    Look.Count one = new Look.Count("B", Where.EVERYWHERE, 0, OptionalInt.of(1));
    Blanket blanket =
        Blanket.ofUnjudged(plain.brief().withLook(Look.NONE.withCounts(List.of(none, one))));
    // a piece shows A as it is: that one more does is what is barred
    RoundYarns direct = RoundYarns.direct(blanket);
    assertArrayEquals(new int[] {0}, direct.yarnsOf(0, 0));
    assertArrayEquals(new int[] {0, 1}, direct.yarnsOf(1, 0));
    Ground nowhere = new Ground.Count(0, new int[][] {{0, 1}, {2, 3}}, 0, 0);
    direct.restrict(
        new BriefLine(
            RuleId.COUNTS, BriefPath.of("look"), new Subject.Count(none, false), List.of(nowhere)));
    assertArrayEquals(new int[] {0}, direct.yarnsOf(0, 0), "worked");
    assertArrayEquals(new int[] {1}, direct.yarnsOf(0, 1));
    assertArrayEquals(new int[] {1}, direct.yarnsOf(1, 0));
    assertArrayEquals(new int[] {1}, direct.yarnsOf(1, 1));
  }

  @Test
  void equalSetsOfOneBlanketAreEqual() {
    Blanket blanket = blanket(3);
    RoundYarns one = RoundYarns.all(blanket);
    RoundYarns other = RoundYarns.all(blanket);
    assertEquals(one, other);
    assertEquals(one.hashCode(), other.hashCode());
    other.remove(2, 1, 2);
    assertNotEquals(one, other);
    assertNotEquals(one.hashCode(), other.hashCode());
    assertNotEquals(one, RoundYarns.all(blanket(3)));
  }
}
