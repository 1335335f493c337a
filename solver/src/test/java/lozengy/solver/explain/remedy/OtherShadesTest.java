package lozengy.solver.explain.remedy;

import static lozengy.solver.constraint.BlanketBuilder.round;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Ball;
import lozengy.model.brief.Yarn;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.constraint.Limits;
import lozengy.solver.explain.conflict.ConsistencyOracle;
import lozengy.solver.explain.remedy.Remedy.Instead;
import org.junit.jupiter.api.Test;

/** Which shades stand in for what is bought, of rows of squares of one round. */
class OtherShadesTest {

  /** Settles nothing: all that does must be seen from what is known. */
  private static final ConsistencyOracle STOPPED =
      new ConsistencyOracle(1, new Limits(1, 1, () -> true));

  private static final ConsistencyOracle SOLVING =
      new ConsistencyOracle(1, Limits.of(10_000, 10_000));

  private static BlanketBuilder row(int pieces, long millimetres) {
    return BlanketBuilder.straight(pieces, 1).motif(PieceKind.SQUARE, round(millimetres));
  }

  /** The same in balls of other lengths, in metres; 0 for a yarn that is gone. */
  private static Blanket inBalls(BlanketBuilder builder, long... metres) {
    Blanket blanket = builder.build();
    List<Yarn> yarns = new ArrayList<>();
    for (Yarn yarn : blanket.brief().yarns()) {
      long length = metres[yarns.size()];
      yarns.add(
          yarn.withGone(length == 0)
              .withBall(Optional.of(new Ball(50, 1000 * Math.max(1, length)))));
    }
    return Blanket.ofUnjudged(blanket.brief().withYarns(yarns));
  }

  private static List<Instead> instead(
      Blanket blanket, ConsistencyOracle oracle, String witness, int... balls) {
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < witness.length(); piece++) {
      sequences.set(piece, 0, witness.charAt(piece) - 'A');
    }
    return OtherShades.of(blanket, oracle, new Balls.Bought(balls, true, sequences));
  }

  @Test
  void shadesOfTheSameToneThatAreNotBoughtAndCanBeHadStandIn() {
    // dark A, B, C which is gone, and E which is bought, too; light D
    Blanket blanket =
        inBalls(
            row(2, 50_000)
                .yarns(2, Tone.DARK, 0)
                .yarn(Tone.DARK, 60_000)
                .yarn(Tone.LIGHT, 0)
                .yarn(Tone.DARK, 0),
            100,
            100,
            0,
            100,
            100);
    assertEquals(
        List.of(new Instead(0, List.of(1), false), new Instead(4, List.of(1), false)),
        instead(blanket, STOPPED, "AD", 1, 0, 0, 1, 1));
  }

  @Test
  void bothYarnsAreExchanged() {
    Blanket blanket =
        inBalls(row(3, 100_000).yarn(Tone.DARK, 100_000).yarn(Tone.DARK, 110_000), 100, 90);
    assertEquals(
        List.of(new Instead(0, List.of(1), false)), instead(blanket, STOPPED, "ABA", 1, 0));
  }

  @Test
  void whatIsNotSeenIsSolvedUnlessThereIsNoTime() {
    Blanket blanket =
        inBalls(
            row(2, 100_000)
                .yarn(Tone.DARK, 0)
                .yarn(Tone.LIGHT, 100_000)
                .yarns(2, Tone.DARK, 0)
                .ban("r1c1", "C", "D"),
            100,
            100,
            100,
            99);
    // C lies at the second place; a ball of D is too short
    assertEquals(
        List.of(new Instead(0, List.of(2), false)), instead(blanket, SOLVING, "AB", 1, 0, 0, 0));
    assertEquals(List.of(), instead(blanket, STOPPED, "AB", 1, 0, 0, 0));
  }

  @Test
  void anyMixtureMustDo() {
    BlanketBuilder four = row(4, 100_000).yarns(2, Tone.DARK, 0).yarn(Tone.LIGHT, 200_000);
    Blanket each = inBalls(four, 100, 110, 100);
    assertEquals(
        List.of(new Instead(0, List.of(1), true)), instead(each, SOLVING, "ACAC", 2, 0, 0));
    assertEquals(
        List.of(new Instead(0, List.of(1), false)), instead(each, STOPPED, "ACAC", 2, 0, 0));
    Blanket whole = inBalls(row(1, 200_000).yarns(3, Tone.DARK, 0), 100, 110, 220);
    // a ball of the first and one of the second alone do not make the round
    assertEquals(
        List.of(new Instead(0, List.of(1, 2), false)), instead(whole, STOPPED, "A", 2, 0, 0));
    assertEquals(
        List.of(new Instead(2, List.of(0, 1), true)),
        instead(
            inBalls(row(1, 200_000).yarns(3, Tone.DARK, 0), 200, 200, 200), SOLVING, "C", 0, 0, 2));
    Blanket single = inBalls(row(1, 100_000).yarns(2, Tone.DARK, 0), 100, 100);
    assertEquals(List.of(new Instead(0, List.of(1), false)), instead(single, STOPPED, "A", 1, 0));
  }

  @Test
  void manyMixturesAreNotLookedAt() {
    Blanket two = inBalls(row(1, 50_000).yarns(2, Tone.DARK, 0), 100, 100);
    Blanket three = inBalls(row(1, 50_000).yarns(3, Tone.DARK, 0), 100, 100, 100);
    // 20 and 21 ways
    assertEquals(List.of(new Instead(0, List.of(1), true)), instead(two, STOPPED, "A", 19, 0));
    assertEquals(List.of(new Instead(0, List.of(1), false)), instead(two, STOPPED, "A", 20, 0));
    // 15, 21 and 210 ways
    List<Integer> others = List.of(1, 2);
    assertEquals(List.of(new Instead(0, others, true)), instead(three, SOLVING, "A", 4, 0, 0));
    assertEquals(List.of(new Instead(0, others, false)), instead(three, SOLVING, "A", 5, 0, 0));
    assertEquals(List.of(new Instead(0, others, false)), instead(three, SOLVING, "A", 19, 0, 0));
  }
}
