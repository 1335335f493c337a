package lozengy.benchmarks.peer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.Literal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.model.arrangement.WorkedPieces;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Stages;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Look;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Rules;
import lozengy.model.check.Check;
import lozengy.model.check.Fault;
import lozengy.model.check.RuleId;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.Setting;
import lozengy.model.score.Scorer;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.bound.BoundLimits;
import lozengy.solver.bound.Bounds;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds the peers' models against the model's own check and score. */
class PeerModelsTest {

  private static final double CLOSE = 0.001;

  /** Choco's leeway counts in steps of half a thousandth of a point for each yarn. */
  private static final double CLOSE_FOR_CHOCO = 0.012;

  private static final BriefSpec SMALL =
      new BriefSpec(
          "small",
          new LayoutSize(Setting.STRAIGHT, 3, 2, false, false),
          "LD",
          new BriefSpec.YarnCounts(3, 0, 3),
          10,
          BriefSpec.Stock.EVEN,
          BriefSpec.Known.NOTHING,
          Rules.DEFAULT.withCopies(OptionalInt.of(1)),
          false);

  @BeforeAll
  static void load() {
    Loader.loadNativeLibraries();
  }

  private static CpSolver cpSat(CpSatModel stated) {
    CpSolver solver = new CpSolver();
    solver.getParameters().setNumWorkers(1);
    return solver;
  }

  private static OptionalDouble cpSatTotal(Blanket blanket, Sequences fixed) {
    return cpSatTotal(blanket, Optional.empty(), fixed);
  }

  /** Solves with every round fixed; the total that the objective means, or none if infeasible. */
  private static OptionalDouble cpSatTotal(
      Blanket blanket, Optional<Sequences> earlier, Sequences fixed) {
    CpSatModel stated = new CpSatModel(blanket, earlier);
    for (int piece = 0; piece < fixed.pieces(); piece++) {
      for (int round = 0; round < fixed.rounds(piece); round++) {
        Literal shown = stated.shows(piece, round)[fixed.yarn(piece, round)];
        if (shown == null) {
          return OptionalDouble.empty();
        }
        stated.model().addEquality(shown, 1);
      }
    }
    CpSolver solver = cpSat(stated);
    return solver.solve(stated.model()) == CpSolverStatus.OPTIMAL
        ? OptionalDouble.of(stated.losses().total(solver.objectiveValue()))
        : OptionalDouble.empty();
  }

  /** The same by Choco. */
  private static OptionalDouble chocoTotal(Blanket blanket, Sequences fixed) {
    ChocoModel stated = new ChocoModel(blanket);
    IntVar[] all = stated.all();
    int next = 0;
    for (int piece = 0; piece < fixed.pieces(); piece++) {
      for (int round = 0; round < fixed.rounds(piece); round++) {
        stated.model().arithm(all[next++], "=", fixed.yarn(piece, round)).post();
      }
    }
    OptionalDouble total = OptionalDouble.empty();
    IntVar loss = (IntVar) stated.model().getObjective();
    while (stated.model().getSolver().solve()) {
      total = OptionalDouble.of(stated.losses().total(loss.getValue()));
    }
    return total;
  }

  private static double total(Blanket blanket, Sequences sequences) {
    return Scorer.score(blanket, sequences, Optional.empty()).total();
  }

  /** Planning again, with pieces worked and a plan that some rounds keep and others not. */
  @ParameterizedTest
  @ValueSource(strings = {"cushion", "baby", "reference-0.05"})
  void theObjectiveOfPlanningAgainIsTheScores(String name) {
    PlantedBrief made = PlantedBrief.of(BriefSet.named(name));
    Blanket whole = made.blanket();
    Stages stages = Stages.of(whole);
    for (int piece = 0; piece < whole.pieceCount(); piece++) {
      stages.set(
          piece, piece < 4 ? PieceState.JOINED : piece < 8 ? PieceState.MADE : PieceState.PLANNED);
    }
    Blanket begun = Blanket.of(WorkedPieces.noted(whole, stages, made.planted()));
    Sequences earlier = made.planted().copy();
    for (int piece = 8; piece < whole.pieceCount(); piece += 3) {
      earlier.set(piece, 0, (earlier.yarn(piece, 0) + 1) % whole.yarnCount());
      earlier.set(piece, 1, piece % 2 == 0 ? Sequences.OPEN : earlier.yarn(piece, 1));
    }
    double objective = Scorer.score(begun, made.planted(), Optional.of(earlier)).objective();
    assertEquals(
        objective, cpSatTotal(begun, Optional.of(earlier), made.planted()).orElseThrow(), CLOSE);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cushion",
        "cushion-tight",
        "lap-all-differ",
        "baby",
        "throw-locks",
        "reference-0.05",
        "throw-contrast",
        "stash-straight"
      })
  void objectivesAreTheScore(String name) {
    PlantedBrief made = PlantedBrief.of(BriefSet.named(name));
    double score = total(made.blanket(), made.planted());
    assertEquals(score, cpSatTotal(made.blanket(), made.planted()).orElseThrow(), CLOSE);
    assertEquals(score, chocoTotal(made.blanket(), made.planted()).orElseThrow(), CLOSE_FOR_CHOCO);
  }

  @Test
  void whatRoundsSideBySideLoseIsTheScores() {
    PlantedBrief made = PlantedBrief.of(BriefSet.named("cushion"));
    Brief brief =
        made.blanket()
            .brief()
            .withLook(Look.NONE.withContrast(Look.CALM, 80))
            .withPrefer(
                new Preferences(
                    Map.of(
                        Part.CONTRAST, 1.0,
                        Part.CONTRAST_BETWEEN, 3.0,
                        Part.CONTRAST_WITHIN, 2.0,
                        Part.COLOUR_VISION, 1.0)));
    Blanket asked = Blanket.of(brief);
    double score = total(asked, made.planted());
    assertEquals(score, cpSatTotal(asked, made.planted()).orElseThrow(), CLOSE);
    assertEquals(score, chocoTotal(asked, made.planted()).orElseThrow(), CLOSE_FOR_CHOCO);
  }

  private static void assertRefused(Blanket blanket, Sequences wrong, RuleId rule) {
    Set<RuleId> broken =
        Check.faults(blanket, wrong).stream().map(Fault::rule).collect(Collectors.toSet());
    assertEquals(Set.of(rule), broken);
    assertTrue(cpSatTotal(blanket, wrong).isEmpty(), "CP-SAT");
    assertTrue(chocoTotal(blanket, wrong).isEmpty(), "Choco");
  }

  @Test
  void refuseCopies() {
    PlantedBrief made = PlantedBrief.of(SMALL);
    Sequences wrong = made.planted().copy();
    // two squares of a kind that touch only at a corner, in the other's yarns
    exchangeToCopy(made.blanket(), wrong);
    assertRefused(made.blanket(), wrong, RuleId.COPIES);
  }

  /** Makes two pieces alike by an exchange that breaks nothing else, whichever does. */
  private static void exchangeToCopy(Blanket blanket, Sequences sequences) {
    for (int to = 0; to < sequences.pieces(); to++) {
      for (int round = 0; round < sequences.rounds(to); round++) {
        for (int from = 0; from < sequences.pieces(); from++) {
          int yarn = sequences.yarn(to, round);
          int other = sequences.yarn(from, round);
          sequences.set(to, round, other);
          sequences.set(from, round, yarn);
          List<Fault> faults = Check.faults(blanket, sequences);
          if (!faults.isEmpty() && faults.stream().allMatch(f -> f.rule() == RuleId.COPIES)) {
            return;
          }
          sequences.set(to, round, yarn);
          sequences.set(from, round, other);
        }
      }
    }
    throw new IllegalStateException("no exchange makes a copy");
  }

  @Test
  void refuseRepeatsOnASeam() {
    PlantedBrief made = PlantedBrief.of(BriefSet.named("stash-straight"));
    Sequences wrong = made.planted().copy();
    int border = wrong.rounds(0) - 1;
    exchangeInto(made.blanket(), wrong, 1, border, wrong.border(0));
    assertRefused(made.blanket(), wrong, RuleId.NEIGHBOUR_BORDERS);
  }

  @Test
  void refuseRepeatsWithinAPiece() {
    PlantedBrief made = PlantedBrief.of(BriefSet.named("stash-straight"));
    Sequences wrong = made.planted().copy();
    exchangeInto(made.blanket(), wrong, 0, 0, wrong.yarn(0, 1));
    assertRefused(made.blanket(), wrong, RuleId.WITHIN_PIECE);
  }

  /** Gives a round a yarn by an exchange with a piece that it breaks no rule in. */
  private static void exchangeInto(
      Blanket blanket, Sequences sequences, int piece, int round, int yarn) {
    int before = sequences.yarn(piece, round);
    for (int other = 0; other < sequences.pieces(); other++) {
      if (other != piece && sequences.yarn(other, round) == yarn) {
        sequences.set(piece, round, yarn);
        sequences.set(other, round, before);
        Set<RuleId> broken =
            Check.faults(blanket, sequences).stream().map(Fault::rule).collect(Collectors.toSet());
        if (broken.size() == 1) {
          return;
        }
        sequences.set(piece, round, before);
        sequences.set(other, round, yarn);
      }
    }
    throw new IllegalStateException("no exchange breaks one rule alone");
  }

  @Test
  void refuseAnOverdrawnYarn() {
    PlantedBrief made = PlantedBrief.of(BriefSet.named("reference-0.05"));
    Blanket blanket = made.blanket();
    Sequences wrong = made.planted().copy();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      int before = wrong.yarn(0, 0);
      wrong.set(0, 0, yarn);
      List<Fault> faults = Check.faults(blanket, wrong);
      if (!faults.isEmpty() && faults.stream().allMatch(f -> f.rule() == RuleId.YARN_TOTALS)) {
        assertRefused(blanket, wrong, RuleId.YARN_TOTALS);
        return;
      }
      wrong.set(0, 0, before);
    }
    throw new IllegalStateException("no yarn can be overdrawn alone");
  }

  @Test
  void theSearchNeverPassesTheOptimumThatCpSatProves() {
    Blanket blanket = PlantedBrief.of(SMALL).blanket();
    CpSatModel stated = new CpSatModel(blanket, Optional.empty());
    CpSolver solver = cpSat(stated);
    assertEquals(CpSolverStatus.OPTIMAL, solver.solve(stated.model()));
    double optimum = stated.losses().total(solver.objectiveValue());
    Sequences best = stated.sequences(solver::booleanValue);
    assertEquals(List.of(), Check.faults(blanket, best));
    assertEquals(optimum, total(blanket, best), CLOSE);

    SolveOptions options = SolveOptions.defaults().withMoves(200_000).withThreads(1);
    SolveResult result = Solver.solve(blanket, Optional.empty(), options);
    double ours = ((SolveResult.Found) result).arrangement().score().total();
    assertTrue(ours <= optimum + CLOSE, ours + " above " + optimum);
    assertTrue(ours > optimum - 1, ours + " far below " + optimum);
  }

  /** By the bound alone, without the exact search that settles a brief as small as this. */
  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4, 5, 6, 7})
  void theBoundIsNeverBelowTheOptimumThatCpSatProves(int number) {
    BriefSpec spec =
        new BriefSpec(
            "small",
            new LayoutSize(
                number % 2 == 0 ? Setting.STRAIGHT : Setting.ON_POINT,
                2,
                2 + number / 4,
                false,
                false),
            "LD",
            new BriefSpec.YarnCounts(3, 0, 3),
            new double[] {10, 2, 0.5, 25}[number % 4],
            number % 3 == 0 ? BriefSpec.Stock.EVEN : BriefSpec.Stock.ODD,
            BriefSpec.Known.NOTHING,
            Rules.DEFAULT.withCopies(OptionalInt.of(1 + number / 6)),
            number % 2 == 1);
    Blanket blanket = PlantedBrief.of(spec).blanket();
    CpSatModel stated = new CpSatModel(blanket, Optional.empty());
    CpSolver solver = cpSat(stated);
    assertEquals(CpSolverStatus.OPTIMAL, solver.solve(stated.model()));
    double optimum = stated.losses().total(solver.objectiveValue());
    for (int stages : new int[] {0, 2}) {
      double bound = Bounds.of(blanket, new BoundLimits(stages), () -> false).total();
      assertTrue(bound >= optimum - CLOSE, bound + " below " + optimum + ", stages " + stages);
    }
  }

  @Test
  void contendersHandOutValidArrangements() {
    Blanket blanket = PlantedBrief.of(SMALL).blanket();
    for (Contender contender :
        List.of(
            new LozengyContender(1, false),
            new LozengyContender(1, true),
            new CpSatContender(1),
            new ChocoContender(2))) {
      Contender.Run run = contender.run(blanket, 1, 3);
      assertFalse(run.found().isEmpty(), contender.name());
      for (Contender.Incumbent found : run.found()) {
        assertEquals(List.of(), Check.faults(blanket, found.sequences()), contender.name());
      }
    }
  }
}
