package lozengy.model.yarn;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.HandRange;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

/** What the hand may take: without cuts, looser, and by what the samples differ. */
class HandTest {

  /** Two squares of two rounds in 20 singles each, 1 m a round with its tails, and no joining. */
  private static Blanket blanket(String stitches, String stock) {
    return Blanket.of(
        BriefReader.read(
            SourceText.of(
                "brief.yaml",
                """
                format: lozengy-brief/1
                title: Two squares
                layout: { setting: straight, across: 2, down: 1 }
                stitches: { STITCHES }
                motifs:
                  square:
                    side: 10 cm
                    rounds: [ { stitches: { sc: 20 } }, { stitches: { sc: 20 } } ]
                rules: { within-piece: free, keep-back: 10 % }
                yarns:
                  - { code: MUD, colour: "#2c2a29", left: STOCK m }
                  - { code: FOA, colour: "#f1eee3", left: 100 m }
                """
                    .replace("STITCHES", stitches)
                    .replace("STOCK", stock))));
  }

  private static Sequences sequences(Blanket blanket, int... yarns) {
    Sequences sequences = blanket.open();
    for (int i = 0; i < yarns.length; i++) {
      sequences.set(i / 2, i % 2, yarns[i]);
    }
    return sequences;
  }

  @Test
  void aRoundThatGoesOnInItsYarnSparesTwoTailsAndAJoin() {
    Blanket blanket = blanket("samples: [ { of: square, takes: 2 m } ]", "20");
    Sequences sequences = sequences(blanket, 0, 0, 0, 1);

    // 70 cm of stitches a round, 20 x 1.8 loops and one that joins: 700 / 37 mm a loop
    assertAll(
        () ->
            assertArrayEquals(
                new long[] {318, 0}, UncutRounds.savedMillimetres(blanket, sequences)),
        // totals stay on the safe side
        () -> assertArrayEquals(new long[] {3000, 1000}, blanket.usedMillimetres(sequences)));
  }

  @Test
  void theTightestYarnTellsHowMuchLooserTheHandMayBe() {
    Blanket blanket = blanket("samples: [ { of: square, takes: 2 m } ]", "4");
    Sequences sequences = sequences(blanket, 0, 1, 0, 1);

    // 4 m less 10 % are 3.6 m for 2 m
    Looseness tightest = Looseness.tightest(blanket, YarnNeed.of(blanket, sequences)).orElseThrow();

    assertAll(
        () -> assertEquals(0, tightest.yarn()), () -> assertEquals(80, tightest.percent(), 1e-9));
  }

  @Test
  void aYarnThatDoesNotLastLeavesLessThanNothing() {
    Blanket blanket = blanket("samples: [ { of: square, takes: 2 m } ]", "2");
    Sequences sequences = sequences(blanket, 0, 1, 0, 1);

    assertEquals(
        -10,
        Looseness.tightest(blanket, YarnNeed.of(blanket, sequences)).orElseThrow().percent(),
        1e-9);
  }

  @Test
  void samplesTellTheRangeUnlessItIsStated() {
    String samples = "samples: [ { of: square, takes: [2 m, 2.2 m, 2.4 m] } ]";
    HandRange bySamples = HandRange.of(blanket(samples, "9").brief()).orElseThrow();

    assertAll(
        () -> assertEquals(100 * (2 / 2.2 - 1), bySamples.lowPercent(), 1e-9),
        () -> assertEquals(100 * (2.4 / 2.2 - 1), bySamples.highPercent(), 1e-9),
        () ->
            assertEquals(
                Optional.of(new HandRange(-6, 6, true)),
                HandRange.of(blanket(samples + ", varies: 6 %", "9").brief())),
        () ->
            assertEquals(
                Optional.empty(),
                HandRange.of(blanket("samples: [ { of: square, takes: 2 m } ]", "9").brief())));
  }

  /** A stock lasts through 6 % more where 6 / 106 = 5.6604 % of it stay, rounded up. */
  @Test
  void asMuchIsKeptBackAsTheHandMayTakeMore() {
    String brief =
        """
        format: lozengy-brief/1
        title: Two squares
        layout: { setting: straight, across: 2, down: 1 }
        stitches: { STITCHES }
        motifs: { square: { side: 10 cm, rounds: [ { metres: 100 } ] } }
        rules: { keep-back: hand }
        yarns:
          - { code: MUD, colour: "#2c2a29", left: 106.01 m }
          - { code: FOA, colour: "#f1eee3", left: 105.99 m }
        """;
    Blanket blanket =
        Blanket.of(
            BriefReader.read(
                SourceText.of("brief.yaml", brief.replace("STITCHES", "varies: 6 %"))));
    InputException untold =
        assertThrows(
            InputException.class,
            () ->
                BriefReader.read(
                    SourceText.of("brief.yaml", brief.replace("STITCHES", "terms: US"))));

    assertEquals(5.67, blanket.brief().rules().keepBackPercent());
    assertTrue(blanket.yarns().usableMillimetres(0) >= 99_990, "to a hundredth of a per cent");
    assertTrue(blanket.yarns().usableMillimetres(1) < 100_000);
    assertEquals("rules.keep-back", untold.mistakes().get(0).path().toString());
  }

  /** Each sample is just what is reckoned for its rounds: that is no proof of an even hand. */
  @Test
  void samplesOfDifferentRoundsDoNotCompare() {
    String first = "{ of: square, rounds: 1, takes: 2 m }";
    Blanket apart = blanket("samples: [ " + first + ", { of: square, takes: 5 m } ]", "100");
    Blanket twice = blanket("samples: [ " + first + ", { of: square, takes: [5 m, 6 m] } ]", "100");

    HandRange range = HandRange.of(twice.brief()).orElseThrow();
    assertEquals(Optional.empty(), HandRange.of(apart.brief()));
    assertEquals(100 * (5 / 5.5 - 1), range.lowPercent(), 1e-9);
    assertEquals(100 * (6 / 5.5 - 1), range.highPercent(), 1e-9);
  }
}
