package lozengy.solver.explain.remedy;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Ball;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Check;
import lozengy.model.colour.Tone;
import lozengy.model.input.BriefPath;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.explain.Explanation;
import lozengy.solver.explain.conflict.ConsistencyOracle;
import lozengy.solver.explain.conflict.ExplainOptions;
import org.junit.jupiter.api.Test;

/** The changes that make small briefs fit, and which of them are told. */
class RemediesTest {

  private static final long PLENTY = 1_000_000;
  private static final ExplainOptions OPTIONS = ExplainOptions.of(1, () -> false);

  /** Squares of one light round of 1 m. */
  private static BlanketBuilder light(int across, int down) {
    return BlanketBuilder.straight(across, down).motif(PieceKind.SQUARE, round(1000, Tone.LIGHT));
  }

  private static Explanation.Impossible explained(Blanket blanket, ExplainOptions options) {
    return (Explanation.Impossible) Explanation.of(blanket, options);
  }

  /** Upset, changes and proofs of each remedy; each is held against all rules. */
  private static List<String> told(Explanation.Impossible impossible) {
    List<String> told = new ArrayList<>();
    for (Remedy remedy : impossible.remedies()) {
      Blanket changed = Blanket.ofUnjudged(remedy.brief());
      assertEquals(List.of(), Check.faults(changed, remedy.witness()));
      List<String> steps =
          remedy.steps().stream()
              .map(step -> step.path() + "=" + step.value().orElse("nothing"))
              .toList();
      Remedy.Proved proof = remedy.proof();
      told.add(
          remedy.upset()
              + " "
              + String.join(", ", steps)
              + (proof.fewestBalls() ? " fewest" : "")
              + (proof.mildest() ? " mildest" : "")
              + (proof.instead().isEmpty() ? "" : " " + proof.instead().get(0).yarns()));
    }
    return told;
  }

  private static List<String> told(Blanket blanket) {
    Explanation.Impossible impossible = explained(blanket, OPTIONS);
    assertTrue(impossible.remediesComplete());
    return told(impossible);
  }

  private static List<String> beside(Blanket blanket) {
    return explained(blanket, OPTIONS).beside().stream()
        .map(
            cause ->
                String.join(
                    ", ",
                    cause.conflict().lines().stream()
                        .map(BriefLine::path)
                        .map(BriefPath::toString)
                        .toList()))
        .toList();
  }

  private static Blanket inBalls(BlanketBuilder builder, long millimetres) {
    Blanket blanket = builder.build();
    List<Yarn> yarns = new ArrayList<>();
    blanket
        .brief()
        .yarns()
        .forEach(yarn -> yarns.add(yarn.withBall(Optional.of(new Ball(50, millimetres)))));
    return Blanket.ofUnjudged(blanket.brief().withYarns(yarns));
  }

  @Test
  void whereStockIsShortBallsAreBoughtRowsLeftOutOrTonesAllowed() {
    // of B there are enough for every other square, of A there is one too few
    BlanketBuilder builder =
        light(2, 4).yarn(Tone.LIGHT, 3000).yarn(Tone.LIGHT, 4000).yarn(Tone.DARK, PLENTY);
    assertEquals(
        List.of(
            "2 yarns[0].balls=1",
            "5 motifs.square.rounds[0].tone=[dark, light]",
            "12 layout.down=3"),
        told(inBalls(builder, 1000)));
    assertEquals(List.of(), beside(inBalls(builder, 1000)));
    // another shade would do
    assertEquals(
        List.of("4 yarns[1].balls=2 fewest [2]"),
        told(inBalls(light(2, 2).yarn(Tone.LIGHT, 2000).yarns(2, Tone.LIGHT, 0), 1000)));
  }

  @Test
  void theMildestRungOfALadderIsTaken() {
    assertEquals(
        List.of("4 rules.copies=2"),
        told(light(3, 1).yarns(2, Tone.LIGHT, PLENTY).copies(1).build()));
    assertEquals(
        List.of("7 rules.copies=5 mildest"),
        told(light(9, 1).yarns(2, Tone.LIGHT, PLENTY).copies(1).build()));
    assertEquals(
        List.of("9 rules.copies=8 mildest"),
        told(light(4, 4).yarns(2, Tone.LIGHT, PLENTY).copies(2).build()));
  }

  @Test
  void aLineThatAllCausesShareIsChangedAlone() {
    BlanketBuilder builder =
        light(3, 1)
            .yarns(2, Tone.LIGHT, PLENTY)
            .yarn(Tone.DARK, PLENTY)
            .ban("r1c1", "A", "B")
            .ban("r1c3", "A", "B");
    assertEquals(List.of("5 motifs.square.rounds[0].tone=[dark, light]"), told(builder.build()));
    assertEquals(List.of(), beside(builder.build()));
  }

  /** Two yarns leave a chessboard alone, of which these two squares are of both colours. */
  private static BlanketBuilder hemmed(BlanketBuilder builder) {
    return builder
        .yarns(2, Tone.LIGHT, PLENTY)
        .note("r1c1", PieceState.PLANNED, "A")
        .note("r3c2", PieceState.MADE, "A");
  }

  @Test
  void whatTheModelRefutesIsMendedByALineOfItsConflict() {
    assertEquals(
        List.of("2 pieces[0]=nothing", "8 pieces[1]=nothing"), told(hemmed(light(3, 3)).build()));
  }

  /** Two squares of one colour and two of the other: no single change mends it. */
  @Test
  void conflictsThatTheModelRefutesAreMendedOneAfterTheOther() {
    BlanketBuilder builder =
        light(5, 3)
            .yarns(2, Tone.LIGHT, PLENTY)
            .note("r1c1", PieceState.PLANNED, "A")
            .note("r3c4", PieceState.PLANNED, "A")
            .note("r1c5", PieceState.MADE, "A")
            .note("r3c2", PieceState.MADE, "A");
    assertEquals(List.of("10 pieces[2]=nothing, pieces[0]=nothing"), told(builder.build()));
    assertEquals(
        List.of("rules.neighbour-borders, pieces[0] r1c1, pieces[1] r3c4"),
        beside(builder.build()));
    // of one note: both are freed in one step
    PieceNote both =
        new PieceNote(
            List.of("r1c1", "r1c5"), List.of(Optional.of("A")), PieceState.PLANNED, Set.of());
    Blanket made =
        light(5, 3)
            .yarns(2, Tone.LIGHT, PLENTY)
            .note("r3c4", PieceState.MADE, "A")
            .note("r3c2", PieceState.MADE, "A")
            .build();
    List<PieceNote> notes = new ArrayList<>(made.brief().pieces());
    notes.add(0, both);
    assertEquals(
        List.of("4 pieces[0]=nothing"), told(Blanket.ofUnjudged(made.brief().withPieces(notes))));
  }

  @Test
  void whatIsLeftAfterAStepIsMendedNext() {
    BlanketBuilder banned = hemmed(light(3, 3)).ban("r2c3", "A", "B");
    assertEquals(
        List.of(
            "4 pieces[2].not=nothing, pieces[0]=nothing",
            "10 pieces[2].not=nothing, pieces[1]=nothing"),
        told(banned.build()));
    assertEquals(
        List.of("rules.neighbour-borders, pieces[0] r1c1, pieces[1] r3c2"), beside(banned.build()));
    // copies are raised twice, for one piece and for all, which is told as one change
    BlanketBuilder copies = hemmed(light(3, 3)).copies(1);
    assertEquals(
        List.of("9 rules.copies=5, pieces[0]=nothing", "15 rules.copies=5, pieces[1]=nothing"),
        told(copies.build()));
    assertEquals(
        List.of("rules.neighbour-borders, pieces[0] r1c1, pieces[1] r3c2"), beside(copies.build()));
    // stock is one thing, a ban another
    BlanketBuilder poor =
        light(2, 4).yarn(Tone.LIGHT, 3000).yarn(Tone.LIGHT, 4000).ban("r2c2", "A", "B");
    assertEquals(
        List.of(
            "4 pieces[0].not=nothing, yarns[0].balls=1", "14 pieces[0].not=nothing, layout.down=3"),
        told(inBalls(poor, 1000)));
    assertEquals(List.of("yarns[0], yarns[1]"), beside(inBalls(poor, 1000)));
    // more is joined in A than there is
    BlanketBuilder joined =
        light(2, 2)
            .yarn(Tone.DARK, 100)
            .yarns(2, Tone.LIGHT, 2000)
            .joining("A", 1)
            .ban("r2c2", "B", "C");
    assertEquals(List.of("4 pieces[0].not=nothing, yarns[0].balls=1"), told(inBalls(joined, 1000)));
    assertEquals(List.of(), beside(inBalls(joined, 1000)));
  }

  @Test
  void whatIsNotSettledOrTriedIsSaidToBeIncomplete() {
    Blanket banned = hemmed(light(3, 3)).ban("r2c3", "A", "B").build();
    Explanation.Impossible scant = explained(banned, new ExplainOptions(1, 1, 1, () -> false));
    assertEquals(List.of(), scant.remedies());
    assertFalse(scant.remediesComplete());
    assertEquals(List.of(), scant.beside());
    List<Cause> causes = explained(banned, OPTIONS).causes();
    ConsistencyOracle oracle = new ConsistencyOracle(1, OPTIONS.each(banned));
    Remedies.Outcome stopped =
        Remedies.of(banned, causes, oracle, ExplainOptions.of(1, () -> true));
    assertEquals(new Remedies.Outcome(List.of(), false, List.of()), stopped);
  }
}
