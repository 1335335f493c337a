package lozengy.solver;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PileEntry;
import lozengy.model.check.Check;
import lozengy.model.input.SourceText;
import lozengy.model.layout.PieceKind;
import lozengy.model.reading.BriefJudge;
import lozengy.model.reading.BriefReader;
import lozengy.model.score.Scorer;
import lozengy.solver.constraint.BruteForce;
import lozengy.solver.constraint.TinyPiles;
import lozengy.solver.explain.argument.PileReason;
import lozengy.solver.surplus.Surplus;
import org.junit.jupiter.api.Test;

/** More finished pieces than places: what stays out is chosen. */
class SurplusTest {

  private static final int SEEDS = 40;

  private static final SolveOptions OPTIONS =
      SolveOptions.defaults().withMoves(60_000).withThreads(1);

  /** Every choice and every laying by brute force: an arrangement is found iff one fits. */
  @Test
  void tinyPilesAgreeWithBruteForce() {
    agrees(TinyPiles::of);
  }

  @Test
  void tinyPilesInZonesAgreeWithBruteForce() {
    agrees(TinyPiles::looked);
  }

  private static void agrees(LongFunction<Blanket> blankets) {
    int fitting = 0;
    int best = 0;
    int refuted = 0;
    for (long seed = 0; seed < SEEDS; seed++) {
      Brief brief = crowded(blankets.apply(seed), new SplittableRandom(seed));
      if (!BriefJudge.mistakes(brief).isEmpty()) {
        continue;
      }
      Blanket blanket = Blanket.of(brief);
      double[] most = {-1};
      for (List<PileEntry> pile : choices(blanket)) {
        Blanket chosen = Blanket.of(brief.withPile(pile));
        BruteForce.count(
            chosen,
            20_000,
            sequences ->
                most[0] =
                    Math.max(most[0], Scorer.score(chosen, sequences, Optional.empty()).total()));
      }
      SolveResult result = Solver.solve(blanket, Optional.empty(), OPTIONS);
      String told = "seed " + seed + ": " + result;
      if (most[0] < 0) {
        assertTrue(!(result instanceof SolveResult.Found), told);
        refuted += result instanceof SolveResult.Impossible ? 1 : 0;
        continue;
      }
      fitting++;
      Arrangement found = assertInstanceOf(SolveResult.Found.class, result, told).arrangement();
      judge(brief, found);
      double total = found.score().total();
      assertTrue(total <= most[0] + 1e-6, told);
      best += total > most[0] - 1e-6 ? 1 : 0;
    }
    assertTrue(fitting > 6 && refuted > 6, fitting + " " + refuted);
    assertTrue(best * 10 > fitting * 9, best + " of " + fitting);
  }

  /** No rule broken, every place of a kind that had too many filled, and no piece lost. */
  private static void judge(Brief brief, Arrangement found) {
    Blanket blanket = found.blanket();
    assertEquals(List.of(), Check.faults(blanket, found.sequences()));
    assertEquals(
        brief.pile().stream().map(entry -> entry.withOut(0)).toList(),
        blanket.brief().pile().stream().map(entry -> entry.withOut(0)).toList());
    PilePlacement laid = PilePlacement.of(blanket, found.sequences());
    for (PieceKind kind : PieceKind.values()) {
      int[] places =
          IntStream.range(0, blanket.pieceCount())
              .filter(p -> blanket.kind(p) == kind && blanket.roundsWorked(p) == 0)
              .toArray();
      int pieces =
          brief.pile().stream().filter(e -> e.kind() == kind).mapToInt(PileEntry::count).sum();
      assertEquals(
          Math.min(pieces, places.length), IntStream.of(places).filter(laid::holds).count());
    }
  }

  /** The same with more finished pieces of a kind than places. */
  private static Brief crowded(Blanket blanket, SplittableRandom random) {
    List<PileEntry> pile = new ArrayList<>(blanket.brief().pile());
    PieceKind kind = pile.get(0).kind();
    int places =
        (int)
            IntStream.range(0, blanket.pieceCount())
                .filter(p -> blanket.kind(p) == kind && blanket.roundsWorked(p) == 0)
                .count();
    int missing = places + 1 + random.nextInt(2) - blanket.pile().count(kind);
    for (int i = 0; i < missing; i++) {
      String[] codes = new String[pile.get(0).rounds().size()];
      Arrays.setAll(codes, r -> blanket.yarn(random.nextInt(blanket.yarnCount())).code());
      pile.add(new PileEntry(kind, List.of(codes), 1, Set.of()));
    }
    return blanket.brief().withPile(pile);
  }

  /** By subsets of single pieces, apart from how the solver counts them. */
  private static Set<List<PileEntry>> choices(Blanket blanket) {
    List<PileEntry> pile = blanket.brief().pile();
    Set<List<PileEntry>> choices = new LinkedHashSet<>(Set.of(pile));
    for (PieceKind kind : PieceKind.values()) {
      int places =
          (int)
              IntStream.range(0, blanket.pieceCount())
                  .filter(p -> blanket.kind(p) == kind && blanket.roundsWorked(p) == 0)
                  .count();
      for (int many = blanket.pile().count(kind) - places; many > 0; many--) {
        Set<List<PileEntry>> next = new LinkedHashSet<>();
        for (List<PileEntry> choice : choices) {
          for (int i = 0; i < choice.size(); i++) {
            PileEntry entry = choice.get(i);
            if (entry.kind() == kind && entry.laid() > 0) {
              List<PileEntry> fewer = new ArrayList<>(choice);
              fewer.set(i, entry.withOut(entry.out() + 1));
              next.add(fewer);
            }
          }
        }
        choices = next;
      }
    }
    return choices;
  }

  private static final String[] LIGHTS = {"FOA", "SND", "MIS", "SHE", "LIN"};
  private static final String[] DARKS = {"MUD", "PEA", "SLO", "SED", "MUS"};

  private static String brief(int across, int down, String rest) {
    StringBuilder yarns = new StringBuilder();
    for (int i = 0; i < LIGHTS.length; i++) {
      yarns.append(yarn(LIGHTS[i], 200 + 10 * i)).append(yarn(DARKS[i], 20 + 22 * i));
    }
    return """
    format: lozengy-brief/1
    title: Crowded
    layout: { setting: straight, across: %d, down: %d }
    motifs:
      square: { side: 10 cm, rounds: [ { metres: 1 }, { metres: 2 } ] }
    yarns:
    %s%s
    """
        .formatted(across, down, yarns, rest);
  }

  private static String yarn(String code, int grey) {
    return "  - { code: %s, colour: \"#%02x%02x%02x\", left: 900 m }%n"
        .formatted(code, grey, grey, grey);
  }

  private static String pile(int pieces) {
    StringBuilder pile = new StringBuilder("pile:\n");
    for (int i = 0; i < pieces; i++) {
      pile.append(
          "  - { kind: square, rounds: [%s, %s] }%n"
              .formatted(LIGHTS[i * 7 % 5], DARKS[(i * 3 + i / 10) % 5]));
    }
    return pile.toString();
  }

  private static Blanket read(String brief) {
    return Blanket.of(BriefReader.read(SourceText.of("b.yaml", brief)));
  }

  private static Arrangement found(Blanket blanket, SolveOptions options) {
    SolveResult result = Solver.solve(blanket, Optional.empty(), options);
    return assertInstanceOf(SolveResult.Found.class, result, result.toString()).arrangement();
  }

  @Test
  void aFifthTooManyIsLaidTheSameWithAnyThreadsAndPlannedAgainNoWorse() {
    Blanket blanket = read(brief(11, 9, pile(124)));
    SolveOptions options = OPTIONS.withMoves(300_000);
    Arrangement once = found(blanket, options);
    judge(blanket.brief(), once);
    assertEquals(25, once.blanket().pile().out().stream().mapToInt(s -> s.count()).sum());
    Arrangement twice = found(blanket, options.withThreads(2));
    assertEquals(once.blanket().brief(), twice.blanket().brief());
    assertEquals(once.sequences(), twice.sequences());
    Surplus surplus = Surplus.of(blanket).orElseThrow();
    Arrangement first =
        ((SolveResult.Found)
                Solver.solveChoice(
                    surplus.with(surplus.start(Optional.empty())),
                    Optional.empty(),
                    Optional.empty(),
                    options,
                    ProofEffort.of(blanket, options)))
            .arrangement();
    assertTrue(
        once.score().total() > first.score().total(),
        "the first choice with all moves: " + first.score() + ", bettered: " + once.score());
    SolveResult again =
        Solver.solve(once.blanket(), Optional.of(once.sequences()), options.withSeed(2));
    Arrangement replanned = assertInstanceOf(SolveResult.Found.class, again).arrangement();
    judge(blanket.brief(), replanned);
    double kept =
        Scorer.score(once.blanket(), once.sequences(), Optional.of(once.sequences())).objective();
    assertTrue(replanned.score().objective() >= kept - 1e-6, replanned.score() + " " + kept);
  }

  @Test
  void whatStayedOutComesBackWhereTheLayoutGrows() {
    Arrangement crowded = found(read(brief(3, 3, pile(11))), OPTIONS);
    Brief grown = read(brief(4, 3, pile(11))).brief().withPile(crowded.blanket().brief().pile());
    Arrangement all = found(Blanket.of(grown), OPTIONS);
    assertEquals(List.of(), all.blanket().pile().out());
    assertEquals(11, PilePlacement.of(all.blanket(), all.sequences()).pieces().size());
  }

  @Test
  void oneTooManyGoesRoundLocksAndZones() {
    // only the one piece in SHE, MUS may lie in the middle, so that another one stays out
    String rest =
        """
        pieces:
          - { at: r2c2, rounds: [SHE, MUS] }
        look:
          zones:
            - { at: r1c1, only: [FOA, MUD] }
        pile:
          - { kind: square, rounds: [FOA, MUD], count: 4 }
          - { kind: square, rounds: [SND, PEA], count: 5 }
          - { kind: square, rounds: [SHE, MUS] }
        """;
    Blanket blanket = read(brief(3, 3, rest));
    Arrangement found = found(blanket, OPTIONS);
    judge(blanket.brief(), found);
    assertEquals(0, found.blanket().brief().pile().get(2).out());
    assertArrayEquals(
        new int[] {blanket.yarnIndex("SHE"), blanket.yarnIndex("MUS")}, found.sequences().of(4));
  }

  /** Twelve of one border for nine places: at least nine of them meet, whatever stays out. */
  @Test
  void oneBorderForAllIsRefutedForEveryChoice() {
    StringBuilder pile = new StringBuilder("pile:\n");
    for (int i = 0; i < 120; i++) {
      pile.append("  - { kind: square, rounds: [%s, MUD] }%n".formatted(LIGHTS[i % 5]));
    }
    Blanket blanket = read(brief(11, 9, pile.toString()));
    assertTrue(Surplus.of(blanket).orElseThrow().all(64).isEmpty(), "too many to try them all");
    SolveResult.Impossible impossible =
        assertInstanceOf(
            SolveResult.Impossible.class, Solver.solve(blanket, Optional.empty(), OPTIONS));
    Blanket judged = impossible.choice().orElseThrow();
    assertEquals(99, judged.pile().count());
    PileReason.PileBordersMeet reason =
        assertInstanceOf(
            PileReason.PileBordersMeet.class, impossible.refutations().get(0).reason());
    assertEquals(50, reason.places());
  }

  /** The piece that may not stay out is found though the first choice leaves it out. */
  @Test
  void borderThatIsTooOftenStaysOut() {
    Blanket blanket =
        read(
            brief(
                3,
                3,
                """
                pile:
                  - { kind: square, rounds: [FOA, MUD], count: 7 }
                  - { kind: square, rounds: [SND, PEA], count: 4 }
                """));
    Arrangement found = found(blanket, OPTIONS);
    judge(blanket.brief(), found);
    assertEquals(
        List.of(2, 0), found.blanket().brief().pile().stream().map(PileEntry::out).toList());
  }
}
