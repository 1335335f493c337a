package lozengy.solver.explain.argument;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Proxy;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.brief.Look;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.check.Subject.SeamPart;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.explain.argument.CountReason.Lack;
import lozengy.solver.explain.argument.RoundReason.Bar;
import lozengy.solver.explain.argument.SeamReason.Clash;
import org.junit.jupiter.api.Test;

/** What each reason hands out of its data. */
class ReasonTest {

  private static final Where BORDERS = new Where(List.of("all"), List.of(Where.BORDER));
  private static final Look.Count COUNT = new Look.Count("A", BORDERS, 6, OptionalInt.of(7));
  private static final Set<Tone> DARK = Set.of(Tone.DARK);
  private static final Clash CLASH =
      new Clash(SeamPart.BORDERS, List.of(3, 1), List.of(1, 2), false, true);

  private static StockReason.YarnShort yarnShort(Optional<StockReason.YarnShort.Amounts> amounts) {
    Map<Integer, List<Integer>> squares = Map.of(1, List.of(4, 2), 0, List.of(2));
    Map<Integer, List<Integer>> corners = Map.of(2, List.of(9));
    return new StockReason.YarnShort(
        Map.of(PieceKind.SQUARE, squares, PieceKind.CORNER_TRIANGLE, corners),
        List.of(3, 1),
        List.of(2),
        true,
        amounts,
        120);
  }

  private static final Reason ALL_KEPT_BACK = new StockReason.AllKeptBack(100);
  private static final Reason NO_SUCH_TONE = new RoundReason.NoSuchTone(List.of(4, 5), 1, DARK);
  private static final Reason LOCK_BARRED =
      new RoundReason.LockBarred(3, 2, 1, Bar.TONE, DARK, OptionalInt.empty());
  private static final Reason NOTHING_LEFT =
      new RoundReason.NothingLeft(3, 2, DARK, List.of(7), Bar.BAN);
  private static final Reason ROUNDS_ALIKE =
      new RoundReason.RoundsAlike(
          List.of(1, 2, 3, 4), List.of(0, 2), WithinPiece.ALL_DIFFER, false, List.of(5));
  private static final Reason SEAM_STUCK = new SeamReason.SeamStuck(List.of(1, 2, 3), 4, CLASH);
  private static final Reason IMAGES_JOINED =
      new SeamReason.ImagesJoined(List.of(1, 2), Symmetry.BOTH, SeamPart.CENTRES);
  private static final Reason IMAGES_SHARE_NONE =
      new RoundReason.ImagesShareNone(List.of(1, 2), 3, Symmetry.BOTH);
  private static final Reason YARN_OVERDRAWN =
      new StockReason.YarnOverdrawn(2, 100, 3, 40, 10, 120, 20);
  private static final PileReason.PileOverdrawn PILE_OVERDRAWN =
      new PileReason.PileOverdrawn(2, 100, 10, 7, 30, 15, 120);
  private static final Reason ROUND_TOO_LONG =
      new StockReason.RoundTooLong(List.of(1, 2), 3, List.of(4, 5), 99);
  private static final Reason TOO_FEW_SEQUENCES =
      new CountReason.TooFewSequences(List.of(1, 2), 3, 4, true);
  private static final Reason COUNT_TOO_FEW =
      new CountReason.CountTooFew(COUNT, 2, Lack.SEAMS, 5, 77);
  private static final Reason COUNT_TOO_MANY = new CountReason.CountTooMany(COUNT, 2, 8, 1);
  private static final Reason COUNT_OF_IMAGES =
      new CountReason.CountOfImages(COUNT, 2, 6, 7, 4, OptionalInt.of(8));
  private static final CountReason.CountsTogether COUNTS_TOGETHER =
      new CountReason.CountsTogether(BORDERS, 9, List.of(0, 1), List.of(6, 5));
  private static final Reason PLACES_UNFILLED = new PileReason.PlacesUnfilled(List.of(1, 2));
  private static final Reason PILE_KEPT_OUT = new PileReason.PileKeptOut(List.of(1), List.of(2, 3));
  private static final PileReason.PileBordersMeet PILE_BORDERS_MEET =
      new PileReason.PileBordersMeet(
          Map.of(PieceKind.SQUARE, 5, PieceKind.SIDE_TRIANGLE, 2), List.of(1), 6, true);

  private static final List<Reason> ALL =
      List.of(
          ALL_KEPT_BACK,
          NO_SUCH_TONE,
          LOCK_BARRED,
          NOTHING_LEFT,
          ROUNDS_ALIKE,
          SEAM_STUCK,
          IMAGES_JOINED,
          IMAGES_SHARE_NONE,
          YARN_OVERDRAWN,
          PILE_OVERDRAWN,
          ROUND_TOO_LONG,
          TOO_FEW_SEQUENCES,
          COUNT_TOO_FEW,
          COUNT_TOO_MANY,
          COUNT_OF_IMAGES,
          COUNTS_TOGETHER,
          yarnShort(Optional.empty()),
          PLACES_UNFILLED,
          PILE_KEPT_OUT,
          PILE_BORDERS_MEET);

  /** A code is its class's name in words, and the case is called as the class. */
  @Test
  void eachHasACodeAndACaseOfItsOwn() {
    Reason.Cases<?> called =
        (Reason.Cases<?>)
            Proxy.newProxyInstance(
                Reason.Cases.class.getClassLoader(),
                new Class<?>[] {Reason.Cases.class},
                (proxy, method, arguments) -> List.of(method.getName(), arguments[0]));
    for (Reason reason : ALL) {
      String name = reason.getClass().getSimpleName();
      String words = name.replaceAll("(?<=.)([A-Z])", "-$1").toLowerCase(Locale.ROOT);
      assertEquals(words, reason.code());
      String method = name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
      assertEquals(List.of(method, reason), reason.in(called));
    }
    assertEquals(
        Stream.of(Reason.class.getPermittedSubclasses())
            .flatMap(family -> Stream.of(family.getPermittedSubclasses()))
            .collect(Collectors.toSet()),
        ALL.stream().map(Object::getClass).collect(Collectors.toSet()));
  }

  /** The pieces, rounds and yarns that it is about, and none where it is about none. */
  @Test
  void piecesRoundsAndYarns() {
    assertAbout(ALL_KEPT_BACK, List.of(), List.of(), List.of());
    assertAbout(NO_SUCH_TONE, List.of(4, 5), List.of(1), List.of());
    assertAbout(LOCK_BARRED, List.of(3), List.of(2), List.of(1));
    assertAbout(NOTHING_LEFT, List.of(3), List.of(2), List.of(7));
    assertAbout(ROUNDS_ALIKE, List.of(1, 2, 3, 4), List.of(0, 2), List.of(5));
    assertAbout(SEAM_STUCK, List.of(1, 2, 3), List.of(), List.of(3, 1, 2));
    assertAbout(IMAGES_JOINED, List.of(1, 2), List.of(), List.of());
    assertAbout(IMAGES_SHARE_NONE, List.of(1, 2), List.of(3), List.of());
    assertAbout(YARN_OVERDRAWN, List.of(), List.of(), List.of(2));
    assertAbout(PILE_OVERDRAWN, List.of(), List.of(), List.of(2));
    assertAbout(ROUND_TOO_LONG, List.of(1, 2), List.of(3), List.of(4, 5));
    assertAbout(TOO_FEW_SEQUENCES, List.of(1, 2), List.of(), List.of());
    assertAbout(COUNT_TOO_FEW, List.of(), List.of(), List.of(2));
    assertAbout(COUNT_TOO_MANY, List.of(), List.of(), List.of(2));
    assertAbout(COUNT_OF_IMAGES, List.of(), List.of(), List.of(2));
    assertAbout(COUNTS_TOGETHER, List.of(), List.of(), List.of(0, 1));
    assertAbout(yarnShort(Optional.empty()), List.of(2, 4, 9), List.of(0, 1, 2), List.of(1, 2, 3));
    assertAbout(PLACES_UNFILLED, List.of(1, 2), List.of(), List.of());
    assertAbout(PILE_KEPT_OUT, List.of(2, 3), List.of(), List.of());
    assertAbout(PILE_BORDERS_MEET, List.of(), List.of(), List.of(1));
  }

  private static void assertAbout(
      Reason reason, List<Integer> pieces, List<Integer> rounds, List<Integer> yarns) {
    assertEquals(pieces, reason.pieces(), reason.code());
    assertEquals(rounds, reason.rounds(), reason.code());
    assertEquals(yarns, reason.yarns(), reason.code());
  }

  @Test
  void lengthsInMillimetres() {
    assertEquals(
        Map.of("fixed", 100L, "rounds", 40L, "usable", 120L, "short", 20L),
        YARN_OVERDRAWN.lengths());
    // 100 on the pile, of which 10 lie beyond the places, 30 placed and 15 fixed, of 120
    assertEquals(22, PILE_OVERDRAWN.missing());
    assertEquals(
        Map.of(
            "pile", 100L, "seams", 7L, "placed", 30L, "fixed", 15L, "usable", 120L, "short", 22L),
        PILE_OVERDRAWN.lengths());
    assertEquals(Map.of("needed", 99L), ROUND_TOO_LONG.lengths());
    assertEquals(
        Map.of("left", 77L), new CountReason.CountTooFew(COUNT, 2, Lack.STOCK, 5, 77).lengths());
    assertEquals(Map.of(), yarnShort(Optional.empty()).lengths());
    assertEquals(
        Map.of("needed", 50L, "usable", 30L, "short", 20L),
        yarnShort(Optional.of(new StockReason.YarnShort.Amounts(50, 25, 5, 20))).lengths());
    Set<Reason> told = Set.of(YARN_OVERDRAWN, PILE_OVERDRAWN, ROUND_TOO_LONG);
    ALL.stream()
        .filter(reason -> !told.contains(reason))
        .forEach(reason -> assertEquals(Map.of(), reason.lengths(), reason.code()));
  }

  @Test
  void countsOfPiecesAndRounds() {
    assertEquals(Map.of("seams", 4), SEAM_STUCK.counts());
    assertEquals(Map.of("rounds", 3), YARN_OVERDRAWN.counts());
    assertEquals(Map.of("allowed", 3, "room", 4), TOO_FEW_SEQUENCES.counts());
    assertEquals(Map.of("asked", 6, "can", 5), COUNT_TOO_FEW.counts());
    assertEquals(Map.of("allowed", 7, "certain", 8, "pile", 1), COUNT_TOO_MANY.counts());
    assertEquals(Map.of("least", 6, "most", 7, "below", 4), COUNT_OF_IMAGES.counts());
    assertEquals(2, COUNTS_TOGETHER.tooMany());
    assertEquals(Map.of("pieces", 9, "too-many", 2), COUNTS_TOGETHER.counts());
    assertEquals(7, PILE_BORDERS_MEET.count());
    assertEquals(Map.of("pieces", 7, "places", 6), PILE_BORDERS_MEET.counts());
    assertEquals(Map.of(), ALL_KEPT_BACK.counts());
  }

  /** Findings of one matter differ in how much alone, as after a change that mends a part. */
  @Test
  void theMatterLeavesOutHowMuch() {
    ALL.forEach(reason -> assertNotEquals(null, reason.matter(), reason.code()));
    List<Object> matters = ALL.stream().map(Reason::matter).distinct().toList();
    assertEquals(ALL.size(), matters.size());
    assertSame(ALL_KEPT_BACK, new StockReason.AllKeptBack(99));
    assertSame(YARN_OVERDRAWN, new StockReason.YarnOverdrawn(2, 1, 1, 1, 1, 1, 1));
    assertOther(YARN_OVERDRAWN, new StockReason.YarnOverdrawn(3, 100, 3, 40, 10, 120, 20));
    assertSame(PILE_OVERDRAWN, new PileReason.PileOverdrawn(2, 1, 1, 1, 1, 1, 1));
    assertSame(ROUND_TOO_LONG, new StockReason.RoundTooLong(List.of(1, 2), 0, List.of(4, 5), 1));
    assertSame(COUNT_TOO_FEW, new CountReason.CountTooFew(COUNT, 2, Lack.SEAMS, 4, 7));
    assertOther(COUNT_TOO_FEW, new CountReason.CountTooFew(COUNT, 2, Lack.STOCK, 5, 77));
    assertSame(COUNT_TOO_MANY, new CountReason.CountTooMany(COUNT, 2, 9, 2));
    assertOther(COUNT_TOO_MANY, new CountReason.CountTooMany(COUNT, 2, 8, 0));
    assertSame(
        COUNT_OF_IMAGES, new CountReason.CountOfImages(COUNT, 2, 5, 5, 4, OptionalInt.empty()));
    assertSame(
        COUNTS_TOGETHER, new CountReason.CountsTogether(BORDERS, 8, List.of(0, 1), List.of(6, 4)));
    assertSame(
        yarnShort(Optional.empty()),
        yarnShort(Optional.of(new StockReason.YarnShort.Amounts(1, 1, 1, 1))));
    assertSame(
        PILE_BORDERS_MEET,
        new PileReason.PileBordersMeet(
            Map.of(PieceKind.SQUARE, 4, PieceKind.SIDE_TRIANGLE, 2), List.of(1), 5, false));
  }

  /** Up to three pieces are a matter of their own, more are one whichever they are. */
  @Test
  void ofManyPiecesItDoesNotMatterWhich() {
    for (int size : new int[] {3, 4}) {
      List<Integer> some = IntStream.range(0, size).boxed().toList();
      List<Integer> others = IntStream.range(1, size + 1).boxed().toList();
      List<List<Reason>> pairs =
          Stream.of(some, others)
              .map(
                  pieces ->
                      List.<Reason>of(
                          new RoundReason.NoSuchTone(pieces, 1, DARK),
                          new RoundReason.RoundsAlike(
                              pieces, List.of(0, 2), WithinPiece.FREE, true, List.of(5)),
                          new StockReason.RoundTooLong(pieces, 3, List.of(4, 5), 99),
                          new CountReason.TooFewSequences(pieces, 3, 4, true),
                          new PileReason.PileKeptOut(List.of(1), pieces)))
              .toList();
      for (int i = 0; i < pairs.get(0).size(); i++) {
        Object matter = pairs.get(0).get(i).matter();
        boolean same = matter.equals(pairs.get(1).get(i).matter());
        assertTrue(same == size > 3, size + " pieces: " + matter);
      }
    }
  }

  private static void assertSame(Reason one, Reason other) {
    assertEquals(one.matter(), other.matter());
  }

  private static void assertOther(Reason one, Reason other) {
    assertNotEquals(one.matter(), other.matter());
  }
}
