package lozengy.solver.explain.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Brief;
import lozengy.model.check.BriefLine;
import lozengy.model.check.RuleBook;
import lozengy.model.input.BriefPath;
import lozengy.solver.explain.argument.Argument;
import lozengy.solver.explain.argument.Finding;
import lozengy.solver.explain.argument.Reason;
import lozengy.solver.explain.argument.Requirements;
import lozengy.solver.explain.conflict.ConsistencyOracle;
import lozengy.solver.explain.conflict.ConsistencyOracle.Settled;
import lozengy.solver.explain.conflict.ConsistencyOracle.Verdict;
import lozengy.solver.explain.conflict.ExplainOptions;
import lozengy.solver.explain.conflict.Root;
import lozengy.solver.explain.remedy.Remedy.Proved;

/**
 * Looks for changes that make a brief fit, and tries each of them out. First single changes, of
 * lines that all conflicts share. Where none does, the least upsetting change that does away with
 * one conflict is made, and the rest is looked at in the same way.
 */
public final class Remedies {

  /** Changes made together at most. */
  private static final int MOST_STEPS = 24;

  /** Remedies told at most. */
  private static final int MOST_REMEDIES = 8;

  private final Blanket original;
  private final ConsistencyOracle oracle;
  private final ExplainOptions options;
  private final LaterCauses beside;
  private boolean complete = true;

  /**
   * What was found.
   *
   * @param remedies the least upsetting first
   * @param complete whether all that is known was tried to its end
   * @param beside further causes that came to light where a first one was mended
   */
  public record Outcome(List<Remedy> remedies, boolean complete, List<Cause> beside) {}

  private Remedies(
      Blanket blanket, List<Cause> causes, ConsistencyOracle oracle, ExplainOptions options) {
    this.original = blanket;
    this.beside = new LaterCauses(Root.findings(Requirements.all(blanket)), causes);
    this.oracle = oracle;
    this.options = options;
  }

  /**
   * Looks for remedies.
   *
   * @param blanket the brief made ready
   * @param causes why the brief cannot hold
   * @param oracle settles whether a changed brief can
   * @param options effort
   * @return what was found
   */
  public static Outcome of(
      Blanket blanket, List<Cause> causes, ConsistencyOracle oracle, ExplainOptions options) {
    Remedies remedies = new Remedies(blanket, causes, oracle, options);
    List<Remedy> found = remedies.search(blanket, causes, List.of());
    List<Remedy> sorted =
        found.stream().sorted(Comparator.comparingInt(Remedy::upset)).limit(MOST_REMEDIES).toList();
    return new Outcome(sorted, remedies.complete, remedies.beside.causes());
  }

  private List<Remedy> search(Blanket blanket, List<Cause> causes, List<Move> made) {
    List<Remedy> found = new ArrayList<>();
    Optional<BriefLine> stock = stock(causes);
    if (stock.isPresent()) {
      bought(blanket, made).ifPresent(found::add);
      for (Ladder ladder : new SizeRelaxing().ladders(blanket, stock.get())) {
        climbed(blanket, ladder, made).ifPresent(found::add);
      }
    }
    for (BriefLine line : shared(causes)) {
      for (Ladder ladder : Relaxing.ofLine(blanket, line)) {
        climbed(blanket, ladder, made).ifPresent(found::add);
      }
    }
    if (!found.isEmpty() || made.size() >= MOST_STEPS || stopped()) {
      return found;
    }
    Optional<Move> next = step(blanket, causes.get(0));
    if (next.isEmpty()) {
      return List.of();
    }
    List<Move> more = new ArrayList<>(made);
    more.add(next.get());
    Blanket changed = changed(blanket, List.of(next.get()));
    Map<Argument, List<Finding>> findings = Root.findings(Requirements.all(changed));
    if (!findings.isEmpty()) {
      List<Cause> left = Cause.of(changed, findings, oracle);
      beside.add(findings, left);
      return search(changed, left, more);
    }
    Settled settled = oracle.settleUnargued(changed);
    if (settled.witness().isPresent()) {
      return List.of(remedy(more, Proved.NOTHING, changed, settled.witness().get()));
    }
    complete &= settled.verdict() == Verdict.CONFLICTS;
    if (settled.verdict() != Verdict.CONFLICTS) {
      return List.of();
    }
    List<Cause> left = List.of(Cause.ofRefuted(changed, oracle));
    beside.add(Map.of(), left);
    return search(changed, left, more);
  }

  private boolean stopped() {
    boolean stopped = options.stop().getAsBoolean();
    complete &= !stopped;
    return stopped;
  }

  /** The first stock that they rest on, where each cause rests on a stock. */
  private static Optional<BriefLine> stock(List<Cause> causes) {
    return causes.stream().allMatch(cause -> !cause.stocks().isEmpty())
        ? causes.get(0).conflict().lines().stream()
            .filter(line -> line.path().inItem("yarns"))
            .findFirst()
        : Optional.empty();
  }

  /** The lines that all causes rest on. */
  private static List<BriefLine> shared(List<Cause> causes) {
    List<BriefLine> shared = new ArrayList<>(causes.get(0).conflict().lines());
    for (Cause cause : causes) {
      List<BriefPath> paths = cause.conflict().lines().stream().map(BriefLine::path).toList();
      shared.removeIf(line -> !paths.contains(line.path()));
    }
    return shared;
  }

  private static Blanket changed(Blanket blanket, List<Move> moves) {
    Brief brief = blanket.brief();
    for (Move move : moves) {
      brief = move.change().apply(brief);
    }
    return Blanket.ofUnjudged(brief);
  }

  private Optional<Remedy> bought(Blanket blanket, List<Move> made) {
    Optional<Balls.Bought> bought =
        stopped() ? Optional.empty() : new Buyer(blanket, oracle).bought();
    if (bought.isEmpty()) {
      return Optional.empty();
    }
    int[] counts = bought.get().balls();
    List<Move> buys =
        IntStream.range(0, counts.length)
            .filter(yarn -> counts[yarn] > 0)
            .mapToObj(yarn -> StockRelaxing.move(blanket, yarn, counts[yarn]))
            .toList();
    List<Move> moves = new ArrayList<>(made);
    moves.addAll(buys);
    boolean fewest = bought.get().fewest() && bought.get().count() > 1;
    Proved proof = new Proved(fewest, false, OtherShades.of(blanket, oracle, bought.get()));
    return Optional.of(remedy(moves, proof, changed(blanket, buys), bought.get().witness()));
  }

  /** The mildest rung of a ladder that makes the brief fit. */
  private Optional<Remedy> climbed(Blanket blanket, Ladder ladder, List<Move> made) {
    List<Move> rungs = ladder.rungs();
    if (stopped()) {
      return Optional.empty();
    }
    int lowest = rungs.size() - 1;
    Settled best = tried(blanket, rungs.get(lowest));
    if (best.witness().isEmpty()) {
      return Optional.empty();
    }
    int below = -1;
    boolean proved = true;
    while (lowest - below > 1) {
      int middle = (lowest + below) / 2;
      Settled settled = tried(blanket, rungs.get(middle));
      if (settled.witness().isPresent()) {
        lowest = middle;
        best = settled;
      } else {
        below = middle;
        proved = settled.verdict() == Verdict.CONFLICTS;
      }
    }
    Proved proof = new Proved(false, lowest > 0 && proved, List.of());
    List<Move> moves = new ArrayList<>(made);
    moves.add(rungs.get(lowest));
    Blanket changed = changed(blanket, List.of(rungs.get(lowest)));
    return Optional.of(remedy(moves, proof, changed, best.witness().get()));
  }

  private Settled tried(Blanket blanket, Move move) {
    Settled settled = oracle.settle(changed(blanket, List.of(move)));
    complete &= settled.verdict() != Verdict.OPEN;
    return settled;
  }

  /** The least upsetting change of a line of a conflict that does away with it. */
  private Optional<Move> step(Blanket blanket, Cause cause) {
    Set<Reason> known =
        Root.findings(Requirements.all(blanket)).values().stream()
            .flatMap(List::stream)
            .map(Finding::reason)
            .collect(Collectors.toSet());
    List<Move> moves = new ArrayList<>();
    for (BriefLine line : cause.conflict().lines()) {
      for (Ladder ladder : Relaxing.all(blanket, line)) {
        mildest(blanket, ladder, cause, known).ifPresent(moves::add);
      }
    }
    return moves.stream().min(Comparator.comparingInt(Move::upset));
  }

  private Optional<Move> mildest(Blanket blanket, Ladder ladder, Cause cause, Set<Reason> known) {
    List<Move> rungs = ladder.rungs();
    if (stopped() || !resolves(blanket, rungs.get(rungs.size() - 1), cause, known)) {
      return Optional.empty();
    }
    int lowest = rungs.size() - 1;
    int below = -1;
    while (lowest - below > 1) {
      int middle = (lowest + below) / 2;
      if (resolves(blanket, rungs.get(middle), cause, known)) {
        lowest = middle;
      } else {
        below = middle;
      }
    }
    return Optional.of(rungs.get(lowest));
  }

  /**
   * Whether a change does away with a cause; other causes may be left.
   *
   * @param known what findings say before the change
   */
  private boolean resolves(Blanket blanket, Move move, Cause cause, Set<Reason> known) {
    Blanket changed = changed(blanket, List.of(move));
    Map<Argument, List<Finding>> findings = Root.findings(Requirements.all(changed));
    if (cause.first().isEmpty()) {
      List<BriefPath> paths = cause.conflict().lines().stream().map(BriefLine::path).toList();
      List<BriefLine> left =
          RuleBook.lines(changed).stream().filter(line -> paths.contains(line.path())).toList();
      return findings.isEmpty() && oracle.settle(changed, left) != Verdict.CONFLICTS;
    }
    return findings.entrySet().stream()
        .flatMap(each -> each.getValue().stream())
        .noneMatch(finding -> sameMatter(finding, cause, known));
  }

  /** A finding that is new, and says of other numbers what the cause says, is the cause's own. */
  private static boolean sameMatter(Finding finding, Cause cause, Set<Reason> known) {
    Reason first = cause.first().orElseThrow();
    Reason found = finding.reason();
    boolean less = !known.contains(found) && found.matter().equals(first.matter());
    return found.equals(first) || less || cause.stocks().intersects(finding.yarns());
  }

  private Remedy remedy(List<Move> moves, Proved proof, Blanket changed, Sequences witness) {
    List<Move> once = eachFieldOnce(moves);
    int upset = once.stream().mapToInt(Move::upset).sum();
    return new Remedy(
        FreedTogether.of(once.stream().map(Move::step).toList()),
        upset,
        proof,
        changed.brief(),
        witness);
  }

  /** The moves; of those that give one field a value, the one that gives it the last at once. */
  private List<Move> eachFieldOnce(List<Move> moves) {
    List<Move> once = new ArrayList<>();
    for (Move move : moves) {
      Optional<Move> before =
          once.stream().filter(each -> each.step().path().equals(move.step().path())).findFirst();
      Optional<Move> rung = before.flatMap(each -> rung(move.step()));
      rung.ifPresentOrElse(
          each -> once.set(once.indexOf(before.orElseThrow()), each), () -> once.add(move));
    }
    return once;
  }

  /** The change of the brief as it was that gives a field a value. */
  private Optional<Move> rung(Remedy.Step step) {
    return RuleBook.lines(original).stream()
        .filter(line -> step.value().isPresent())
        .flatMap(line -> Relaxing.all(original, line).stream())
        .flatMap(ladder -> ladder.rungs().stream())
        .filter(each -> each.step().path().equals(step.path()))
        .filter(each -> each.step().value().equals(step.value()))
        .findFirst();
  }
}
