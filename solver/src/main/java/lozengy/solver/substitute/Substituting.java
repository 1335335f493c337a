package lozengy.solver.substitute;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.input.InputException;
import lozengy.model.progress.Changed;
import lozengy.model.progress.CurrentPlan;
import lozengy.model.progress.Mark;
import lozengy.model.progress.Substituted;
import lozengy.model.progress.Substituted.Instead;
import lozengy.model.progress.Substituted.Part;
import lozengy.model.progress.Upset;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.model.yarn.Substitute;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.substitute.Substitution.Mixture;
import lozengy.solver.substitute.Substitution.Shade;
import lozengy.solver.substitute.Substitution.Trial;
import lozengy.solver.substitute.Substitution.Tried;

/**
 * Looks for shades to stand in for those that are gone: the nearest of the same tone, first those
 * of which there is enough, each tried by solving. Where a plan stands, the trials plan again from
 * it; where there is only a brief, each is solved afresh, and so is the brief as it is.
 */
public final class Substituting {

  private static final long MOVES_PER_ROUND = 4_000;
  private static final long LEAST_MOVES = 400_000;
  private static final double ALL = 100;

  private final CurrentPlan current;
  private final List<Listed> listed;
  private final SolveOptions options;
  private final boolean plenty;
  private final BitSet toBuy = new BitSet();
  private final Blanket all;
  private final Optional<Sequences> plan;
  private final Optional<Score> before;

  private Substituting(
      CurrentPlan asked, List<String> gone, List<Listed> listed, SolveOptions options) {
    this.listed = List.copyOf(listed);
    this.plenty = unstocked(asked.brief());
    Brief brief = plenty ? with(asked.brief(), yarn -> true, plenty(asked.brief())) : asked.brief();
    boolean planned = asked.sequences().isPresent();
    this.current = new CurrentPlan(planned ? brief : there(brief, gone), asked.sequences());
    this.all = Blanket.ofUnjudged(Substituted.with(current.brief(), marks(listed)));
    for (Listed each : listed) {
      toBuy.set(all.yarnIndex(each.yarn().code()), each.toBuy());
    }
    this.options = planned || options.moves().isPresent() ? options : limited(options, all);
    Blanket own = Blanket.ofUnjudged(current.brief());
    this.plan = planned ? asked.sequences() : solved(own);
    this.before = plan.map(each -> Scorer.score(own, each, Optional.empty()));
  }

  /**
   * Looks for shades.
   *
   * @param current how things stand; less than all is kept back. Where nothing is at hand of any
   *     yarn, all of them count as plenty
   * @param gone codes of the shades that are gone, each once
   * @param listed further shades that may stand in, with codes that the brief does not know
   * @param tries how many shades are tried at most for each that is gone, at least 1
   * @param options how each trial is solved
   * @return what may stand in for each, and what it would do
   * @throws InputException if a shade is not there or does not fit the brief
   */
  public static Substitution find(
      CurrentPlan current,
      List<String> gone,
      List<Listed> listed,
      int tries,
      SolveOptions options) {
    return new Substituting(current, gone, listed, options).find(gone, tries);
  }

  /**
   * Tries given shades alone, with all the moves that solving takes.
   *
   * @param current how things stand, as for {@link #find}
   * @param instead the shades for each that is gone, by code, in an order that lasts, the one first
   *     that joins and edges
   * @param listed further shades that may stand in
   * @param options how it is solved
   * @return the shades that are gone, each with the one that was tried; of all of them one trial
   * @throws InputException if a shade is not there or does not fit the brief
   */
  public static Substitution take(
      CurrentPlan current,
      Map<String, List<String>> instead,
      List<Listed> listed,
      SolveOptions options) {
    List<String> gone = List.copyOf(instead.keySet());
    OptionalLong moves = options.moves();
    SolveOptions full =
        moves.isPresent() || current.sequences().isPresent()
            ? options
            : options.withMoves(SolveOptions.defaultMoves(Blanket.ofUnjudged(current.brief())));
    return new Substituting(current, gone, listed, full).taken(instead);
  }

  /** Whether nothing is said to be at hand of any yarn. */
  private static boolean unstocked(Brief brief) {
    return brief.yarns().stream()
        .allMatch(yarn -> yarn.balls() == 0 && yarn.left().isEmpty() && yarn.counted().isEmpty());
  }

  /** The shades that are gone as they were, to see what they would have given. */
  private static Brief there(Brief brief, List<String> gone) {
    List<Yarn> yarns = new ArrayList<>();
    for (Yarn yarn : brief.yarns()) {
      yarns.add(gone.contains(yarn.code()) ? yarn.withGone(false) : yarn);
    }
    Brief there = brief.withYarns(yarns);
    return with(
        there, yarn -> gone.contains(yarn.code()) && yarn.stockMillimetres() == 0, plenty(brief));
  }

  private interface Which {
    boolean is(Yarn yarn);
  }

  private static Brief with(Brief brief, Which which, YarnAmount left) {
    return brief.withYarns(
        brief.yarns().stream()
            .map(yarn -> which.is(yarn) ? yarn.withLeft(Optional.of(left)) : yarn)
            .toList());
  }

  /** More than all rounds, joining and edging can take, whatever is kept back. */
  private static YarnAmount plenty(Brief brief) {
    Blanket blanket = Blanket.ofUnjudged(brief);
    long sum = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        long most = 0;
        for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
          most = Math.max(most, blanket.takenMillimetres(piece, round, yarn));
        }
        sum += most;
      }
    }
    sum += blanket.fixedUse().joiningMillimetres();
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      sum += blanket.fixedUse().wholeEdgingMillimetres(yarn);
    }
    double used = 1 - brief.rules().keepBackPercent() / ALL;
    return new YarnAmount.Length((long) Math.ceil(2 * sum / used));
  }

  private static SolveOptions limited(SolveOptions options, Blanket blanket) {
    long rounds = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      rounds += blanket.roundCount(piece) - blanket.roundsWorked(piece);
    }
    return options.withMoves(Math.max(LEAST_MOVES, MOVES_PER_ROUND * rounds));
  }

  private Optional<Sequences> solved(Blanket own) {
    return Solver.solve(own, Optional.empty(), options) instanceof SolveResult.Found found
        ? Optional.of(found.arrangement().sequences())
        : Optional.empty();
  }

  private static List<Mark.Added> marks(List<Listed> listed) {
    return listed.stream().map(each -> new Mark.Added(each.place(), bare(each.yarn()))).toList();
  }

  /** A shade comes in for a share of what is gone alone. */
  private static Yarn bare(Yarn yarn) {
    return yarn.withShare(0);
  }

  private Substitution find(List<String> gone, int tries) {
    Map<String, List<Substitute>> candidates = new TreeMap<>();
    for (String code : gone) {
      int yarn = all.yarnIndex(code);
      List<Substitute> found = new ArrayList<>(Substitute.of(all, plan, yarn, toBuy));
      found.removeIf(each -> gone.contains(code(each)));
      found.sort(Comparator.comparing(each -> !each.enough()));
      candidates.put(code, found);
    }
    Map<String, Instead> usual = usual(gone, candidates);
    List<Shade> shades = new ArrayList<>();
    boolean needed = false;
    for (String code : gone) {
      long need = Substitute.needMillimetres(all, plan, all.yarnIndex(code));
      needed |= need > 0;
      shades.add(shade(code, need, candidates.get(code), usual, tries));
    }
    List<Instead> nothing = gone.stream().map(code -> instead(code, List.of())).toList();
    return new Substitution(
        all,
        before,
        current.sequences().isPresent(),
        plenty,
        shades,
        needed ? Optional.of(trial(nothing)) : Optional.empty());
  }

  /** The nearest that has enough for each, one shade for one. */
  private Map<String, Instead> usual(List<String> gone, Map<String, List<Substitute>> candidates) {
    Map<String, Instead> usual = new TreeMap<>();
    Set<Integer> taken = new HashSet<>();
    for (String code : gone) {
      Optional<Substitute> nearest =
          candidates.get(code).stream()
              .filter(each -> each.enough() && !taken.contains(each.yarn()))
              .findFirst();
      nearest.ifPresent(each -> taken.add(each.yarn()));
      usual.put(code, instead(code, nearest.stream().toList()));
    }
    return usual;
  }

  private Shade shade(
      String code, long need, List<Substitute> candidates, Map<String, Instead> usual, int tries) {
    int yarn = all.yarnIndex(code);
    if (need == 0) {
      return new Shade(yarn, 0, List.of(), candidates, Optional.empty());
    }
    int count = Math.min(tries, candidates.size());
    List<Tried> tried = new ArrayList<>();
    for (Substitute each : candidates.subList(0, count)) {
      tried.add(new Tried(each, trial(code, List.of(each), usual)));
    }
    Optional<Mixture> mixture =
        candidates.stream().anyMatch(Substitute::enough)
            ? Optional.empty()
            : together(code, candidates)
                .map(parts -> new Mixture(parts, trial(code, parts, usual)));
    return new Shade(yarn, need, tried, candidates.subList(count, candidates.size()), mixture);
  }

  /** The nearest shades that have enough together; the one with most of it joins and edges. */
  private Optional<List<Substitute>> together(String code, List<Substitute> candidates) {
    List<Substitute> parts = new ArrayList<>();
    double filled = 0;
    for (Substitute each : candidates) {
      if (each.spareMillimetres() > 0 && filled < 1) {
        parts.add(each);
        filled += (double) each.spareMillimetres() / each.needMillimetres();
      }
    }
    if (filled < 1) {
      return Optional.empty();
    }
    if (finishes(code)) {
      parts.sort(Comparator.comparingLong(each -> -each.spareMillimetres()));
    }
    return Optional.of(parts);
  }

  /** Whether joining or edging is in a shade. */
  private boolean finishes(String code) {
    Brief brief = current.brief();
    return brief.joiningInOneYarn().filter(use -> use.yarn().equals(code)).isPresent()
        || brief.edging().stream().anyMatch(use -> use.yarn().equals(code));
  }

  private Substitution taken(Map<String, List<String>> chosen) {
    List<String> gone = List.copyOf(chosen.keySet());
    Map<String, List<Substitute>> substitutes = new TreeMap<>();
    List<Instead> ordered = new ArrayList<>();
    for (String code : gone) {
      List<Substitute> parts = new ArrayList<>();
      for (String other : chosen.get(code)) {
        int yarn = all.yarnIndex(other);
        parts.add(Substitute.of(all, plan, all.yarnIndex(code), yarn, toBuy));
      }
      substitutes.put(code, parts);
      ordered.add(instead(code, parts));
    }
    Trial trial = trial(ordered);
    List<Shade> shades = new ArrayList<>();
    for (String code : gone) {
      int yarn = all.yarnIndex(code);
      long need = Substitute.needMillimetres(all, plan, yarn);
      List<Tried> tried =
          substitutes.get(code).stream().map(each -> new Tried(each, trial)).toList();
      shades.add(new Shade(yarn, need, tried, List.of(), Optional.empty()));
    }
    return new Substitution(
        all, before, current.sequences().isPresent(), plenty, shades, Optional.empty());
  }

  private String code(Substitute substitute) {
    return all.yarn(substitute.yarn()).code();
  }

  private Instead instead(String code, List<Substitute> parts) {
    double sum = parts.stream().mapToLong(Substitute::spareMillimetres).sum();
    return new Instead(
        code,
        code,
        parts.stream()
            .map(
                each ->
                    new Part(
                        code(each), sum == 0 ? 1.0 / parts.size() : each.spareMillimetres() / sum))
            .toList());
  }

  private Trial trial(String code, List<Substitute> parts, Map<String, Instead> usual) {
    return trial(
        usual.values().stream()
            .map(each -> each.gone().equals(code) ? instead(code, parts) : each)
            .toList());
  }

  private Trial trial(List<Instead> instead) {
    Changed changed = Substituted.of(current, added(instead), instead);
    Blanket blanket = changed.blanket();
    SolveResult result = Solver.solve(blanket, changed.earlier(), options);
    if (!(result instanceof SolveResult.Found found) || changed.before().isEmpty()) {
      return new Trial(instead, blanket, result, Optional.empty(), 0);
    }
    Sequences now = found.arrangement().sequences();
    return new Trial(
        instead,
        blanket,
        result,
        Optional.of(Upset.of(blanket, changed.before().get(), now)),
        Upset.of(blanket, changed.earlier().orElseThrow(), now).pieces().size());
  }

  /** The listed shades that stand in; what is to be bought of them is at hand then. */
  private List<Mark.Added> added(List<Instead> instead) {
    List<Mark.Added> added = new ArrayList<>();
    for (Listed each : listed) {
      Yarn yarn = bare(each.yarn());
      boolean used = false;
      for (Instead one : instead) {
        if (one.parts().stream().anyMatch(part -> part.code().equals(each.yarn().code()))) {
          used = true;
          yarn = each.toBuy() ? bought(yarn, one.gone()) : yarn;
        }
      }
      if (used) {
        added.add(new Mark.Added(each.place(), yarn));
      }
    }
    return added;
  }

  private Yarn bought(Yarn yarn, String gone) {
    Substitute taken =
        Substitute.of(all, plan, all.yarnIndex(gone), all.yarnIndex(yarn.code()), toBuy);
    if (taken.ballsToTake().isPresent()) {
      return yarn.withBalls(yarn.balls() + taken.ballsToTake().getAsLong());
    }
    long sum = yarn.stockMillimetres() + taken.wholeMillimetres(all);
    return yarn.withLeft(Optional.of(new YarnAmount.Length(sum)));
  }
}
