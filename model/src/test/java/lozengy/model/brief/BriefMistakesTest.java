package lozengy.model.brief;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefJudge;
import org.junit.jupiter.api.Test;

/** Briefs that are built in code are judged like those from a file. */
class BriefMistakesTest {

  private static final LayoutSize LAYOUT = new LayoutSize(Setting.STRAIGHT, 2, 2, false, false);
  private static final Round ROUND =
      new Round(EnumSet.allOf(Tone.class), new YarnAmount.Length(1000));
  private static final Map<PieceKind, Motif> MOTIFS =
      Map.of(PieceKind.SQUARE, new Motif(OptionalDouble.of(10), List.of(ROUND, ROUND)));
  private static final List<Yarn> YARNS = List.of(yarn("A", 0), yarn("B", 128), yarn("C", 255));

  private static Yarn yarn(String code, int grey) {
    return Yarn.of(code, new Srgb(grey, grey, grey))
        .withLeft(Optional.of(new YarnAmount.Length(100_000)));
  }

  private static Brief brief(
      LayoutSize layout,
      Map<PieceKind, Motif> motifs,
      List<Yarn> yarns,
      Rules rules,
      PieceNote... notes) {
    return Brief.of("Test", layout, motifs, yarns).withRules(rules).withPieces(List.of(notes));
  }

  private static Brief noted(Rules rules, PieceNote... notes) {
    return brief(LAYOUT, MOTIFS, YARNS, rules, notes);
  }

  private static PieceNote note(PieceState state, String at, String... codes) {
    return new PieceNote(
        List.of(at), Arrays.stream(codes).map(Optional::ofNullable).toList(), state, Set.of());
  }

  private static List<String> paths(Brief brief) {
    return BriefJudge.mistakes(brief).stream().map(each -> each.path().toString()).toList();
  }

  @Test
  void soundBriefsHaveNone() {
    assertEquals(List.of(), paths(noted(Rules.DEFAULT)));
    assertEquals(List.of(), paths(noted(Rules.DEFAULT, note(PieceState.MADE, "r1c1", "A", "B"))));
  }

  @Test
  void partsThatAreMissingAreTold() {
    LayoutSize filled = new LayoutSize(Setting.ON_POINT, 2, 2, true, true);
    assertEquals(
        List.of("motifs.square", "motifs.triangle", "motifs.corner", "yarns"),
        paths(brief(filled, Map.of(), List.of(), Rules.DEFAULT)));
    Map<PieceKind, Motif> sideless =
        Map.of(PieceKind.SQUARE, new Motif(OptionalDouble.empty(), List.of(ROUND)));
    assertEquals(
        List.of("motifs.square.side"), paths(brief(LAYOUT, sideless, YARNS, Rules.DEFAULT)));
  }

  @Test
  void layoutsWithoutTrianglesNeedNoMotifForThem() {
    LayoutSize single = new LayoutSize(Setting.ON_POINT, 1, 1, true, false);
    assertEquals(List.of(), paths(brief(single, MOTIFS, YARNS, Rules.DEFAULT)));
  }

  @Test
  void theLargestLayoutIsTakenAndALargerIsNot() {
    LayoutSize largest = new LayoutSize(Setting.STRAIGHT, 500, 500, false, false);
    assertEquals(List.of(), paths(brief(largest, MOTIFS, YARNS, Rules.DEFAULT)));
    LayoutSize larger = new LayoutSize(Setting.STRAIGHT, 501, 500, false, false);
    assertEquals(List.of("layout"), paths(brief(larger, MOTIFS, YARNS, Rules.DEFAULT)));
    LayoutSize huge = new LayoutSize(Setting.ON_POINT, 1_000_000_000, 1_000_000_000, true, true);
    assertEquals(List.of("layout"), paths(brief(huge, MOTIFS, YARNS, Rules.DEFAULT)).subList(0, 1));
  }

  @Test
  void roundsInAllAreBounded() {
    LayoutSize largest = new LayoutSize(Setting.STRAIGHT, 500, 500, false, false);
    Map<PieceKind, Motif> six =
        Map.of(PieceKind.SQUARE, new Motif(OptionalDouble.of(10), Collections.nCopies(6, ROUND)));
    assertEquals(List.of(), paths(brief(largest, six, YARNS, Rules.DEFAULT)));
    Map<PieceKind, Motif> seven =
        Map.of(PieceKind.SQUARE, new Motif(OptionalDouble.of(10), Collections.nCopies(7, ROUND)));
    List<Mistake> told = BriefJudge.mistakes(brief(largest, seven, YARNS, Rules.DEFAULT));
    assertEquals(
        "layout: 500 across and 500 down make 250,000 pieces with 1,750,000 rounds; they would need"
            + " at least 0.3 GB of memory. At most 250,000 pieces with 1,500,000 rounds are"
            + " planned; plan in parts, or give smaller numbers",
        told.get(0).words());
  }

  @Test
  void locksThatBreakARuleAreTold() {
    Rules all = Rules.DEFAULT.withWithinPiece(WithinPiece.ALL_DIFFER).withCopies(OptionalInt.of(1));
    assertEquals(
        List.of("pieces[1].rounds"),
        paths(
            noted(
                all,
                note(PieceState.PLANNED, "r1c1", null, "A"),
                note(PieceState.PLANNED, "r1c2", null, "A"))));
    assertEquals(
        List.of("pieces[0].rounds"), paths(noted(all, note(PieceState.PLANNED, "r1c1", "A", "A"))));
    assertEquals(
        List.of("pieces[1].rounds"),
        paths(
            noted(
                all,
                note(PieceState.PLANNED, "r1c1", "A", "B"),
                note(PieceState.PLANNED, "r2c2", "A", "B"))));
  }

  @Test
  void whatWasWorkedIsAFact() {
    Rules all = Rules.DEFAULT.withWithinPiece(WithinPiece.ALL_DIFFER).withCopies(OptionalInt.of(1));
    assertEquals(
        List.of(),
        paths(
            noted(
                all,
                note(PieceState.JOINED, "r1c1", "A", "A"),
                note(PieceState.JOINED, "r1c2", "A", "A"))));
  }

  @Test
  void whetherLocksOverdrawAYarnIsNotJudged() {
    List<Yarn> scarce = List.of(yarn("A", 0), yarn("B", 128));
    Round long1 = new Round(EnumSet.allOf(Tone.class), new YarnAmount.Length(90_000));
    Map<PieceKind, Motif> motifs =
        Map.of(PieceKind.SQUARE, new Motif(OptionalDouble.of(10), List.of(long1)));
    assertEquals(
        List.of(),
        paths(
            brief(
                LAYOUT,
                motifs,
                scarce,
                Rules.DEFAULT,
                note(PieceState.PLANNED, "r1c1", "A"),
                note(PieceState.PLANNED, "r2c2", "A"))));
  }

  @Test
  void putUpsThatNoYarnHasAreTold() {
    Ball usual = new Ball(50, 120_000);
    assertEquals(List.of(), paths(putUps(usual, new Ball(1000, 10_000), new Ball(25, 2_500_000))));
    List<Mistake> told =
        BriefJudge.mistakes(putUps(new Ball(7, 1_857_000), usual, new Ball(1000, 9_990)));
    assertEquals(
        List.of(
            "yarns[0].ball: A ball of 7 g with 1857 m has 265 m to the gram. Yarn has 0.01 to 100 m"
                + " to the gram; look at the band for grams and metres of a full ball",
            "yarns[2].ball: A ball of 1000 g with 9.99 m has 0.00999 m to the gram. Yarn has 0.01"
                + " to 100 m to the gram; look at the band for grams and metres of a full ball"),
        told.stream().map(Mistake::words).toList());
  }

  private static Brief putUps(Ball... balls) {
    List<Yarn> yarns = new ArrayList<>();
    for (int i = 0; i < balls.length; i++) {
      Yarn plain = YARNS.get(i);
      yarns.add(
          plain
              .withBall(Optional.of(balls[i]))
              .withLeft(Optional.empty())
              .withBalls(1)
              .withShare(1)
              .withTone(Optional.empty()));
    }
    return brief(LAYOUT, MOTIFS, yarns, Rules.DEFAULT);
  }

  @Test
  void notesTogetherMakeAPieceWhole() {
    assertEquals(
        List.of(),
        paths(
            noted(
                Rules.DEFAULT,
                note(PieceState.PLANNED, "r1c1", "A", null),
                note(PieceState.MADE, "r1c1", null, "B"))));
    assertEquals(
        List.of("pieces[1].rounds"),
        paths(
            noted(
                Rules.DEFAULT,
                note(PieceState.PLANNED, "r1c1", "A", null),
                note(PieceState.MADE, "r1c1"))));
  }

  @Test
  void aBlanketTellsThem() {
    InputException thrown =
        assertThrows(
            InputException.class, () -> Blanket.of(brief(LAYOUT, Map.of(), YARNS, Rules.DEFAULT)));
    assertEquals("motifs.square", thrown.mistakes().get(0).path().toString());
  }
}
