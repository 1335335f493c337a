package lozengy.solver.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Part;
import lozengy.model.brief.PieceState;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import lozengy.solver.constraint.BlanketBuilder;
import lozengy.solver.problem.Domains;
import lozengy.solver.problem.Problem;
import lozengy.solver.problem.ProblemCompiler;
import org.junit.jupiter.api.Test;

/** Plans of borders keep every seam, whatever is dealt within them, and leave the rest as it is. */
class BorderPlansTest {

  @Test
  void plansLeaveEveryBorderSomethingAndKeepEverySeam() {
    int kept = 0;
    int seams = 0;
    for (long seed = 1; seed <= 16; seed++) {
      Problem problem =
          ProblemCompiler.compile(Blanket.of(FewBorderBriefs.of(seed, 30)), Optional.empty());
      BorderGraph graph = BorderGraph.of(problem);
      List<Domains> plans = new BorderPlans(problem).all();
      assertTrue(plans.size() >= 1 && plans.size() <= 8, plans.size() + " plans");
      for (Domains plan : plans) {
        for (int slot = 0; slot < problem.slots().count(); slot++) {
          int[] whole = problem.domains().yarns(slot);
          int[] yarns = plan.yarns(slot);
          assertTrue(whole.length == 0 || yarns.length > 0, "seed " + seed);
          for (int yarn : yarns) {
            assertTrue(Arrays.stream(whole).anyMatch(y -> y == yarn), "seed " + seed);
            assertTrue(plan.allows(slot, yarn));
          }
          for (int yarn = 0; yarn < problem.yarns(); yarn++) {
            int each = yarn;
            assertEquals(Arrays.stream(yarns).anyMatch(y -> y == each), plan.allows(slot, yarn));
          }
          if (problem.slots().layer()[slot] > 0) {
            assertEquals(whole.length, yarns.length);
          }
        }
      }
      Domains first = plans.get(0);
      for (int piece = 0; piece < graph.size(); piece++) {
        for (int other : graph.beside(piece)) {
          seams++;
          kept += mayClash(graph, first, piece, other) ? 0 : 1;
        }
      }
    }
    assertEquals(seams, kept);
    assertTrue(seams > 500, seams + " seams");
  }

  private static boolean mayClash(BorderGraph graph, Domains plan, int piece, int other) {
    for (int a : plan.yarns(graph.slot(piece))) {
      for (int b : plan.yarns(graph.slot(other))) {
        if (graph.clash(a, b)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Squares of a border and another round; of the border's yarns each meets all others. */
  private static BlanketBuilder board(int across, int down, int darks) {
    return BlanketBuilder.straight(across, down)
        .motif(
            PieceKind.SQUARE,
            BlanketBuilder.round(1000, Tone.LIGHT),
            BlanketBuilder.round(1000, Tone.DARK))
        .yarns(darks, Tone.DARK, 900_000)
        .yarns(3, Tone.LIGHT, 900_000);
  }

  private static BorderPlans plans(BlanketBuilder builder) {
    return new BorderPlans(ProblemCompiler.compile(builder.build(), Optional.empty()));
  }

  @Test
  void bordersAreFewBelowFourYarnsThatMeetOrFiveOnALargerBoard() {
    assertTrue(plans(board(4, 4, 2)).few());
    assertTrue(plans(board(4, 4, 3)).few());
    assertTrue(!plans(board(4, 4, 4)).few());
    // 100 pieces of two rounds are the last that count as small
    assertTrue(!plans(board(10, 10, 4)).few());
    assertTrue(plans(board(10, 11, 4)).few());
    assertTrue(!plans(board(10, 11, 5)).few());
    assertTrue(
        !plans(board(1, 1, 2).note("r1c1", PieceState.MADE, "C", "A")).few(), "nothing is open");
  }

  @Test
  void yarnsThatMayNotMeetDoNotCountApart() {
    BlanketBuilder builder =
        BlanketBuilder.straight(3, 3).motif(PieceKind.SQUARE, BlanketBuilder.round(1000));
    for (int i = 0; i < 6; i++) {
      // three shades of each of two colours
      int[] base = i % 2 == 0 ? new int[] {20, 20, 90} : new int[] {120, 10, 10};
      builder.yarn(Tone.DARK, new Srgb(base[0] + i, base[1], base[2]), 900_000);
    }
    assertTrue(!plans(builder).few());
    assertTrue(plans(builder.minContrast(8)).few());
    Problem problem = ProblemCompiler.compile(builder.build(), Optional.empty());
    for (Domains plan : new BorderPlans(problem).all()) {
      for (int slot = 0; slot < 9; slot++) {
        int[] yarns = plan.yarns(slot);
        assertEquals(3, yarns.length);
        assertTrue(Arrays.stream(yarns).allMatch(y -> y % 2 == yarns[0] % 2));
        assertEquals(plan.yarns(slot % 2)[0] % 2, yarns[0] % 2);
      }
    }
    assertEquals(2, new BorderPlans(problem).all().size());
  }

  @Test
  void plansAreMadeOnceAndTheBestByStockComesFirst() {
    // the yarn of the fewer borders suffices for them alone
    BlanketBuilder builder =
        BlanketBuilder.straight(3, 3)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000))
            .yarn(Tone.DARK, 4000)
            .yarn(Tone.DARK, 5000)
            .prefer(Map.of(Part.BALANCE, 0.0, Part.LEEWAY, 0.0, Part.SPREAD, 1.0));
    BorderPlans plans = plans(builder);
    assertSame(plans.all(), plans.all());
    assertEquals(2, plans.all().size());
    for (int slot = 0; slot < 9; slot++) {
      assertEquals(1 - slot % 2, plans.all().get(0).yarns(slot)[0]);
      assertEquals(slot % 2, plans.all().get(1).yarns(slot)[0]);
    }
  }

  /** A lock on the wrong side: from there on a colouring goes round it. */
  @Test
  void aLockThatSpeaksAgainstTheSidesIsGoneRound() {
    BlanketBuilder builder =
        BlanketBuilder.straight(4, 3)
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1000))
            .yarns(3, Tone.DARK, 900_000)
            .note("r1c1", PieceState.PLANNED, "A")
            .note("r1c4", PieceState.PLANNED, "A");
    Problem problem = ProblemCompiler.compile(builder.build(), Optional.empty());
    BorderGraph graph = BorderGraph.of(problem);
    Domains first = new BorderPlans(problem).all().get(0);
    for (int piece = 0; piece < graph.size(); piece++) {
      for (int other : graph.beside(piece)) {
        assertTrue(!mayClash(graph, first, piece, other), piece + " beside " + other);
      }
    }
    boolean[][] wanted = new boolean[12][3];
    for (long seed = 1; seed <= 10; seed++) {
      int[] colours = new BorderColouring(problem, graph, new Draws(seed), wanted).find();
      assertNotNull(colours);
      assertEquals(0, colours[0]);
      assertEquals(0, colours[3]);
      for (int piece = 0; piece < graph.size(); piece++) {
        for (int other : graph.beside(piece)) {
          assertTrue(colours[piece] != colours[other]);
        }
      }
    }
  }

  /** A colouring takes what is wanted wherever it can. */
  @Test
  void aColouringTakesWhatIsWanted() {
    Problem problem =
        ProblemCompiler.compile(
            BlanketBuilder.straight(5, 4)
                .motif(PieceKind.SQUARE, BlanketBuilder.round(1000))
                .yarns(4, Tone.DARK, 900_000)
                .ban("r1c1", "B")
                .build(),
            Optional.empty());
    boolean[][] wanted = new boolean[20][4];
    for (int piece = 0; piece < 20; piece++) {
      // a chessboard of the second and third yarn
      wanted[piece][1 + (piece / 5 + piece % 5) % 2] = true;
    }
    int[] colours =
        new BorderColouring(problem, BorderGraph.of(problem), new Draws(1), wanted).find();
    for (int piece = 1; piece < 20; piece++) {
      assertTrue(wanted[piece][colours[piece]], "piece " + piece);
    }
    assertTrue(colours[0] != 1 && colours[0] != 2);
  }

  /** Where centres may not be the same, they are planned beside the borders. */
  @Test
  void centresThatDifferAreFewToo() {
    for (int lights : new int[] {2, 5}) {
      Brief brief =
          BlanketBuilder.straight(4, 3)
              .motif(
                  PieceKind.SQUARE,
                  BlanketBuilder.round(1000, Tone.LIGHT),
                  BlanketBuilder.round(1000, Tone.DARK))
              .yarns(6, Tone.DARK, 900_000)
              .yarns(lights, Tone.LIGHT, 900_000)
              .build()
              .brief();
      Blanket blanket = Blanket.of(brief.withRules(brief.rules().withCentresDiffer(true)));
      Problem problem = ProblemCompiler.compile(blanket, Optional.empty());
      BorderPlans plans = new BorderPlans(problem);
      assertEquals(lights == 2, plans.few());
      BorderGraph centres = BorderGraph.ofCentres(problem);
      for (Domains plan : plans.all()) {
        for (int piece = 0; piece < 12 && lights == 2; piece++) {
          assertEquals(1, plan.yarns(centres.slot(piece)).length);
          for (int other : centres.beside(piece)) {
            assertTrue(!mayClash(centres, plan, piece, other));
          }
        }
      }
    }
  }
}
