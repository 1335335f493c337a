package lozengy.solver.bound;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Symmetry;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.model.progress.Upset;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.BruteForce;
import lozengy.solver.constraint.TinyBlankets;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** The floor under changes, reckoned by hand and against trying all. */
class ChangeFloorTest {

  private static final long PLENTY = 1_000_000;

  /**
   * The floor for pieces that had the yarns of a word each, centre first; a dash is an open one.
   */
  private static int floor(Blanket blanket, String... words) {
    Sequences before = blanket.open();
    for (int piece = 0; piece < words.length; piece++) {
      for (int round = 0; round < words[piece].length(); round++) {
        char code = words[piece].charAt(round);
        before.set(piece, round, code == '-' ? Sequences.OPEN : code - 'A');
      }
    }
    return ChangeFloor.of(ProblemCompiler.compile(blanket, Optional.of(before)), () -> false);
  }

  private static BlanketBuilder row(int pieces, long ofA) {
    return BlanketBuilder.straight(1, pieces)
        .motif(PieceKind.SQUARE, round(1000))
        .yarn(Tone.MID, ofA)
        .yarns(3, Tone.MID, PLENTY);
  }

  private static BlanketBuilder rowOfTwo(int pieces, long ofA) {
    return BlanketBuilder.straight(1, pieces)
        .motif(PieceKind.SQUARE, round(1000), round(500))
        .yarn(Tone.MID, ofA)
        .yarns(3, Tone.MID, PLENTY);
  }

  @Test
  void ofTwoBordersThatClashOneChanges() {
    Blanket blanket = row(3, PLENTY).build();
    assertEquals(0, floor(blanket, "A", "B", "A"));
    assertEquals(1, floor(blanket, "A", "A", "B"));
    assertEquals(1, floor(blanket, "A", "A", "A"));
    assertEquals(0, floor(blanket, "A", "-", "A"));
    assertEquals(0, floor(blanket, "-", "-", "-"));
    assertEquals(2, floor(row(4, PLENTY).build(), "B", "B", "C", "C"));
  }

  @Test
  void whatIsFixedBesideKeepsAYarnOut() {
    Blanket blanket = row(4, PLENTY).note("r2c1", PieceState.MADE, "A").build();
    assertEquals(2, floor(blanket, "A", "B", "A", "B"));
    assertEquals(1, floor(blanket, "A", "A", "B", "A"));
    assertEquals(1, floor(blanket, "B", "A", "C", "C"));
  }

  @Test
  void tonesAndBansKeepYarnsOut() {
    Blanket blanket =
        BlanketBuilder.straight(1, 3)
            .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT), round(1000))
            .yarns(2, Tone.LIGHT, PLENTY)
            .yarns(2, Tone.DARK, PLENTY)
            .ban("r3c1", "D")
            .build();
    assertEquals(0, floor(blanket, "AC", "AD", "AC"));
    assertEquals(2, floor(blanket, "CB", "AD", "CB"));
    assertEquals(1, floor(blanket, "AD", "AC", "AD"));
    // the centre's yarn must change, so the border may stay beside it
    assertEquals(1, floor(blanket, "AD", "CC", "AB"));
    // a centre and a border of one yarn clash
    assertEquals(1, floor(blanket, "AA", "AC", "AD".substring(0, 1)));
  }

  /** For 2,500 mm two rounds of A can stay; one of them is taken where a piece is made with it. */
  @Test
  void theStockLeavesSomeRoundsTheirYarn() {
    assertEquals(0, floor(rowOfTwo(4, 4000).build(), "AB", "AC", "AB", "AC"));
    assertEquals(2, floor(rowOfTwo(4, 2500).build(), "AB", "AC", "AB", "AC"));
    BlanketBuilder made = rowOfTwo(4, 2500).note("r1c1", PieceState.MADE, "A", "B");
    assertEquals(2, floor(made.build(), "AB", "AC", "AB", "AC"));
    assertEquals(1, floor(made.build(), "DB", "AC", "AB", "DC"));
    // two metres of each metre of a seam: 30 cm of seams take 600 mm
    assertEquals(2, floor(rowOfTwo(4, 3100).joining("A", 2).build(), "AB", "AC", "AB", "AC"));
    assertEquals(3, floor(rowOfTwo(4, 2500).joining("A", 2).build(), "AB", "AC", "AB", "AC"));
    // where nothing fits, all must change and no more
    BlanketBuilder none =
        BlanketBuilder.straight(1, 2).motif(PieceKind.SQUARE, round(1000)).yarns(2, Tone.MID, 0);
    assertEquals(2, floor(none.build(), "A", "B"));
  }

  /** Two places that are each other's image: what only one of them had is gained by the other. */
  @Test
  void imagesChangeTogether() {
    Blanket mirrored = mirrored(PLENTY, "D");
    assertEquals(0, floor(mirrored, "A", "B", "A"));
    assertEquals(1, floor(mirrored, "A", "B", "C"));
    assertEquals(0, floor(mirrored, "A", "B", "-"));
    assertEquals(0, floor(mirrored, "-", "B", "C"));
    assertEquals(1, floor(mirrored, "D", "B", "C"));
    assertEquals(2, floor(mirrored, "D", "B", "D"));
    assertEquals(1, floor(mirrored, "D", "B", "-"));
    // A is not enough for both, and less than half of it for neither; more is taken for a part
    assertEquals(2, floor(mirrored(900, "D"), "A", "B", "A"));
    assertEquals(1, floor(mirrored(1500, "D"), "A", "B", "A"));
    assertEquals(0, floor(mirrored(2000, "D"), "A", "B", "A"));
    assertEquals(1, floor(mirrored(1500, "C"), "A", "B", "-"));
    // the middle's neighbours are both images
    assertEquals(1, floor(mirrored, "B", "B", "B"));
  }

  /** So do images of a later piece, and both of their rounds. */
  @Test
  void imagesOfLaterPiecesChangeTogether() {
    BlanketBuilder builder = rowOfTwo(5, PLENTY);
    Blanket turned =
        Blanket.ofUnjudged(
            builder.build().brief().withLook(Look.NONE.withSymmetry(Symmetry.TOP_BOTTOM)));
    assertEquals(0, floor(turned, "AB", "BA", "AB", "BA", "AB"));
    assertEquals(1, floor(turned, "AB", "BA", "AB", "BC", "AB"));
    assertEquals(2, floor(turned, "AB", "BA", "AB", "DC", "AB"));
  }

  private static Blanket mirrored(long ofA, String banned) {
    BlanketBuilder builder =
        BlanketBuilder.straight(3, 1)
            .motif(PieceKind.SQUARE, round(1000))
            .yarn(Tone.MID, ofA)
            .yarns(3, Tone.MID, PLENTY)
            .ban("r1c1", banned)
            .ban("r1c3", banned);
    return Blanket.ofUnjudged(
        builder.build().brief().withLook(Look.NONE.withSymmetry(Symmetry.LEFT_RIGHT)));
  }

  /** With a pile, what neither may be worked nor lies on the pile. */
  @Test
  void aPileMayShowWhatTonesKeepOut() {
    Blanket bare =
        BlanketBuilder.straight(1, 4)
            .motif(PieceKind.SQUARE, round(1000, Tone.LIGHT))
            .yarns(2, Tone.LIGHT, PLENTY)
            .yarns(2, Tone.DARK, PLENTY)
            .note("r4c1", PieceState.MADE, "D")
            .build();
    PileEntry entry = new PileEntry(PieceKind.SQUARE, List.of("C"), 1, Set.of());
    Blanket blanket = Blanket.ofUnjudged(bare.brief().withPile(List.of(entry)));
    assertEquals(0, floor(blanket, "C", "A", "B", "D"));
    assertEquals(1, floor(blanket, "D", "A", "-", "D"));
    assertEquals(3, floor(blanket, "D", "D", "D", "A"));
  }

  @Test
  void stoppedAtOnceTheFloorIsNought() {
    Blanket blanket = row(3, PLENTY).build();
    Sequences before = blanket.open();
    for (int piece = 0; piece < 3; piece++) {
      before.set(piece, 0, 0);
    }
    var problem = ProblemCompiler.compile(blanket, Optional.of(before));
    assertEquals(0, ChangeFloor.of(problem, () -> true));
  }

  @Test
  void noArrangementChangesFewerThanTheFloor() {
    int proved = 0;
    int least = 0;
    for (long seed = 1; seed <= 160; seed++) {
      Blanket blanket = TinyBlankets.of(seed);
      if (Exhaustive.ways(blanket) > 40) {
        continue;
      }
      SplittableRandom random = new SplittableRandom(seed);
      Sequences before = blanket.open();
      for (int piece = 0; piece < before.pieces(); piece++) {
        for (int round = 0; round < before.rounds(piece); round++) {
          before.set(piece, round, random.nextInt(blanket.yarnCount()));
        }
      }
      int[] fewest = {Integer.MAX_VALUE};
      BruteForce.count(
          blanket,
          1000,
          each -> fewest[0] = Math.min(fewest[0], Upset.of(blanket, before, each).changedRounds()));
      if (fewest[0] < Integer.MAX_VALUE) {
        int floor =
            ChangeFloor.of(ProblemCompiler.compile(blanket, Optional.of(before)), () -> false);
        assertTrue(floor <= fewest[0], "seed " + seed + ": " + floor + " above " + fewest[0]);
        proved += floor;
        least += fewest[0];
      }
    }
    assertEquals("23 of 26", proved + " of " + least);
  }
}
