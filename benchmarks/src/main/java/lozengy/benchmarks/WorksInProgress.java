package lozengy.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.WorkedPieces;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Stages;
import lozengy.model.brief.Brief;
import lozengy.model.brief.PieceNote;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.progress.Change;
import lozengy.model.progress.Changed;
import lozengy.model.progress.Changes;
import lozengy.model.progress.CurrentPlan;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;

/**
 * Works in progress that are planned again: generated briefs, planned, some of them begun, and then
 * something is changed. What is left over is 0.3 % to 8 % of what is needed; where a shade is gone,
 * so much is left over of the other yarns of its tone once they take its rounds.
 */
final class WorksInProgress {

  private static final long MOVES_OF_FIRST_PLAN = 5_000_000;
  private static final List<String> ALL = List.of("all");

  private final long seed;
  private final List<Work> works = new ArrayList<>();

  /**
   * A work in progress.
   *
   * @param name what was planned and what is changed
   * @param blanket what is asked for now
   * @param before the plan
   */
  record Work(String name, Blanket blanket, Sequences before) {}

  private WorksInProgress(long seed) {
    this.seed = seed;
  }

  /** All works of a seed, the same on every machine for one version. */
  static List<Work> all(long seed) {
    WorksInProgress all = new WorksInProgress(seed);
    all.reference();
    all.others();
    return all.works;
  }

  private void reference() {
    Arrangement plan = plan("reference", 0.3);
    String light = last(plan);
    add("reference 0.3 % as it is", plan, brief(plan));
    add("reference 0.3 % row banned", plan, brief(plan), ban("row5", light));
    gone("reference light gone 0.3 %", plan, brief(plan), light, 0.3);
    gone("reference light gone 2 %", plan, brief(plan), light, 2);
    gone("reference dark gone 5 %", plan, brief(plan), "D2", 5);
    add("reference begun 0.3 % triangles banned", plan, begun(plan), ban("triangles", light));
    gone("reference begun light gone 1 %", plan, begun(plan), light, 1);
  }

  private void others() {
    Arrangement baby = plan("baby-odd", 2);
    gone("baby-odd light gone 1 %", baby, brief(baby), last(baby), 1);
    gone("baby-odd dark gone 8 %", baby, brief(baby), "D2", 8);
    gone("baby-odd begun light gone 3 %", baby, begun(baby), last(baby), 3);
    Arrangement lap = plan("lap-all-differ", 8);
    gone("lap-all-differ light gone 0.3 %", lap, brief(lap), last(lap), 0.3);
    gone("lap-all-differ dark gone 5 %", lap, brief(lap), "D2", 5);
    Arrangement contrast = plan("throw-contrast", 5);
    gone("throw-contrast dark gone 8 %", contrast, brief(contrast), "D2", 8);
    gone("throw-contrast begun light gone 1 %", contrast, begun(contrast), last(contrast), 1);
    Arrangement locks = plan("throw-locks", 3);
    add("throw-locks 3 % freed", locks, brief(locks), new Change.Free("free", ALL));
    Arrangement bed = plan("single-bed", 1);
    gone("single-bed light gone 2 %", bed, brief(bed), last(bed), 2);
  }

  private Arrangement plan(String name, double slackPercent) {
    BriefSpec of = BriefSet.named(name);
    BriefSpec spec =
        new BriefSpec(
            name,
            of.layout(),
            of.rounds(),
            of.yarns(),
            slackPercent,
            of.stock(),
            of.known(),
            of.rules(),
            of.finished());
    SolveOptions options =
        SolveOptions.defaults().withSeed(seed).withMoves(MOVES_OF_FIRST_PLAN).withThreads(2);
    Blanket blanket = PlantedBrief.of(spec).blanket();
    return ((SolveResult.Found) Solver.solve(blanket, Optional.empty(), options)).arrangement();
  }

  private static Brief brief(Arrangement plan) {
    return plan.blanket().brief();
  }

  /** The brief with the first quarter of the pieces joined, and a third made, drawn by the seed. */
  private Brief begun(Arrangement plan) {
    int pieces = plan.blanket().pieceCount();
    return begun(plan, pieces / 4, pieces / 3, seed);
  }

  /** The brief with the first pieces joined, and others made, drawn by a seed. */
  static Brief begun(Arrangement plan, int joined, int made, long seed) {
    Stages stages = Stages.of(plan.blanket());
    for (int piece = 0; piece < stages.pieces(); piece++) {
      stages.set(piece, piece < joined ? PieceState.JOINED : PieceState.PLANNED);
    }
    SplittableRandom random = new SplittableRandom(seed);
    for (int left = made; left > 0; ) {
      int piece = random.nextInt(stages.pieces());
      if (stages.state(piece) == PieceState.PLANNED) {
        stages.set(piece, PieceState.MADE);
        left--;
      }
    }
    return WorkedPieces.noted(plan.blanket(), stages, plan.sequences());
  }

  private static String last(Arrangement plan) {
    return plan.blanket().yarn(plan.blanket().yarnCount() - 1).code();
  }

  private static Change ban(String at, String code) {
    return new Change.Hold(
        "ban", new PieceNote(List.of(at), List.of(), PieceState.PLANNED, Set.of(code)));
  }

  private void add(String name, Arrangement plan, Brief brief, Change... changes) {
    CurrentPlan current = new CurrentPlan(brief, Optional.of(plan.sequences()));
    Changed changed = Changes.apply(current, List.of(changes));
    works.add(new Work(name, changed.blanket(), plan.sequences()));
  }

  private void gone(String name, Arrangement plan, Brief brief, String code, double percent) {
    Brief left = brief.withYarns(stocked(Blanket.ofUnjudged(brief), plan, code, percent));
    add(name, plan, left, new Change.Without("without", code));
  }

  /** The yarns, of which so much is left over once those of a tone take another's rounds. */
  private static List<Yarn> stocked(
      Blanket blanket, Arrangement plan, String gone, double percent) {
    int lost = blanket.yarnIndex(gone);
    long[] used = blanket.usedMillimetres(plan.sequences());
    long rounds = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        boolean goes = blanket.free(piece, round) && plan.sequences().yarn(piece, round) == lost;
        rounds += goes ? blanket.motifs().needMillimetres(blanket.kind(piece), round, lost) : 0;
      }
    }
    long others = 0;
    for (int yarn = 0; yarn < used.length; yarn++) {
      boolean takes = yarn != lost && blanket.yarns().tone(yarn) == blanket.yarns().tone(lost);
      others += takes ? used[yarn] : 0;
    }
    double over = 1 + percent / 100;
    double usable = 1 - blanket.brief().rules().keepBackPercent() / 100;
    List<Yarn> yarns = new ArrayList<>();
    for (int yarn = 0; yarn < used.length; yarn++) {
      Yarn old = blanket.yarn(yarn);
      boolean takes = yarn != lost && blanket.yarns().tone(yarn) == blanket.yarns().tone(lost);
      double times = takes ? over * (others + rounds) / others : over;
      long stock = (long) Math.ceil(used[yarn] * times / usable);
      yarns.add(
          old.withBalls(0)
              .withLeft(Optional.of(new YarnAmount.Length(stock)))
              .withBall(Optional.empty()));
    }
    return yarns;
  }
}
