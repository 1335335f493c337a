package lozengy.model.making;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.YarnRate;
import lozengy.model.brief.YarnUse;
import lozengy.model.input.SourceText;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefReader;
import org.junit.jupiter.api.Test;

class WorkTimeTest {

  /** Three squares of two rounds in a row, of which the first has its first round worked. */
  private static Blanket blanket(String first, String second) {
    return Blanket.of(
        BriefReader.read(
            SourceText.of(
                "brief.yaml",
                """
                format: lozengy-brief/1
                title: Three squares
                layout: { setting: straight, across: 3, down: 1 }
                stitches: { yarn-weight: light, hook: 4 mm, per-minute: 16 }
                motifs: { square: { side: 10 cm, rounds: [ { FIRST }, { SECOND } ] } }
                rules: { within-piece: free }
                yarns:
                  - { code: MUD, colour: "#2c2a29", left: 100 m }
                  - { code: FOA, colour: "#f1eee3", left: 100 m }
                pieces: [ { at: r1c1, rounds: [MUD, ~], rounds-worked: 1 } ]
                """
                    .replace("FIRST", first)
                    .replace("SECOND", second))));
  }

  private static WorkTime time(Blanket blanket) {
    Sequences sequences = blanket.open();
    int[][] yarns = {{0, 1}, {0, 0}, {1, 0}};
    for (int piece = 0; piece < yarns.length; piece++) {
      sequences.set(piece, 0, yarns[piece][0]);
      sequences.set(piece, 1, yarns[piece][1]);
    }
    return WorkTime.of(blanket, sequences);
  }

  @Test
  void stitchesAndMinutesMakeHours() {
    WorkTime time = time(blanket("stitches: { sc: 24 }", "metres: 3, minutes: 5"));

    // 24 stitches at 16 a minute take 1.5 minutes; two first and three second rounds are left
    assertAll(
        () -> assertEquals(Map.of(PieceKind.SQUARE, new BigDecimal("6.5")), time.perPieceMinutes()),
        () -> assertEquals(Optional.of(new BigDecimal("18.0")), time.roundsMinutes()));
  }

  /** Two for each length: one for r1c1, one for r1c2, which goes on in its yarn, two for r1c3. */
  @Test
  void roundsInOneYarnHaveNoEndsBetweenThem() {
    assertEquals(8, time(blanket("metres: 2", "metres: 3")).ends());
  }

  /** Two seams of 10 cm at 30 minutes a metre; outline 80 cm, two rounds, 15 minutes a metre. */
  @Test
  void joiningAndEdgingTakeTheirTime() {
    Blanket bare = blanket("stitches: { sc: 24 }", "metres: 3, minutes: 5");
    YarnUse joining = use("MUD", 1, "30");
    YarnUse edging = use("FOA", 2, "15");
    WorkTime time =
        time(
            Blanket.of(bare.brief().withJoining(Optional.of(joining)).withEdging(List.of(edging))));

    assertAll(
        () -> assertEquals(6, time.joiningMinutes().orElseThrow().doubleValue(), 1e-9),
        () -> assertEquals(24, time.edgingMinutes().orElseThrow().doubleValue(), 1e-9),
        () -> assertEquals(18 + 6 + 24, time.allMinutes().orElseThrow().doubleValue(), 1e-9));
  }

  private static YarnUse use(String yarn, int rounds, String minutes) {
    return new YarnUse(
        yarn, new YarnRate.PerMetre(3), rounds, Optional.of(new BigDecimal(minutes)));
  }

  @Test
  void aRoundThatTellsNoTimeLeavesTheTimeUntold() {
    WorkTime time = time(blanket("stitches: { sc: 24 }", "metres: 3"));

    assertAll(
        () -> assertEquals(Map.of(), time.perPieceMinutes()),
        () -> assertEquals(Optional.empty(), time.roundsMinutes()));
  }
}
