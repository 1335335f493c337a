package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.check.BriefLine;
import lozengy.model.check.Ground;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleBook;

/**
 * What rounds may ask of one yarn, and what is there for them. Exact, in whole millimetres.
 *
 * @param yarn the yarn
 * @param terms the classes of rounds that may take it
 * @param capacity usable stock less joining and edging, in mm; negative if those alone take more
 */
public record YarnLoad(int yarn, List<Term> terms, long capacity) {

  /**
   * A class of rounds that may take a yarn.
   *
   * @param index index of the class in {@link RoundClass#of}
   * @param length what one such round takes in this yarn, in mm
   * @param fixed how many of them can take nothing else
   * @param possible how many of them may take it, the fixed ones included
   */
  public record Term(int index, long length, int fixed, int possible) {

    /** {@return how many may take it or something else} */
    public int open() {
      return possible - fixed;
    }
  }

  /** A length that no blanket needs, in mm: what a yarn has that nothing bounds. */
  public static final long ENDLESS = 1L << 60;

  /** Most bits that {@link #mostReachable} spends on the sums. */
  private static final int MOST_SUMS = 4_000_000;

  /**
   * {@return the loads of all yarns, in order}
   *
   * @param blanket the blanket
   * @param domains what each round may take
   */
  public static List<YarnLoad> of(Blanket blanket, RoundYarns domains) {
    return of(blanket, domains, RuleBook.lines(blanket));
  }

  /**
   * {@return the loads of all yarns where only some lines of the brief hold}
   *
   * @param blanket the blanket
   * @param domains what each round may take
   * @param lines the lines that hold, some of {@link RuleBook#lines}
   */
  public static List<YarnLoad> of(Blanket blanket, RoundYarns domains, List<BriefLine> lines) {
    long[] capacity = new long[blanket.yarnCount()];
    Arrays.fill(capacity, ENDLESS);
    lines.stream()
        .flatMap(line -> line.grounds(Ground.Stock.class))
        .forEach(stock -> capacity[stock.yarn()] = stock.millimetres());
    lines.stream()
        .flatMap(line -> line.grounds(Ground.Taken.class))
        .forEach(taken -> capacity[taken.yarn()] -= taken.millimetres());
    return of(blanket, domains, capacity, seams(lines));
  }

  /**
   * {@return whether it is among some lines that borders take what they do of their seams}
   *
   * @param lines the lines
   */
  public static boolean seams(List<BriefLine> lines) {
    return lines.stream().anyMatch(line -> line.grounds(Ground.Seams.class).findAny().isPresent());
  }

  private static List<YarnLoad> of(
      Blanket blanket, RoundYarns domains, long[] capacity, boolean seams) {
    List<RoundClass> classes = RoundClass.of(blanket);
    List<YarnLoad> loads = new ArrayList<>();
    int[][] fixed = new int[classes.size()][blanket.yarnCount()];
    int[][] possible = new int[classes.size()][blanket.yarnCount()];
    for (int c = 0; c < classes.size(); c++) {
      count(classes.get(c), domains, fixed[c], possible[c]);
    }
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      List<Term> terms = new ArrayList<>();
      for (int c = 0; c < classes.size(); c++) {
        if (possible[c][yarn] > 0) {
          RoundClass rounds = classes.get(c);
          long length = rounds.millimetres(blanket, yarn, seams);
          terms.add(new Term(c, length, fixed[c][yarn], possible[c][yarn]));
        }
      }
      loads.add(new YarnLoad(yarn, List.copyOf(terms), capacity[yarn]));
    }
    return loads;
  }

  private static void count(RoundClass rounds, RoundYarns domains, int[] fixed, int[] possible) {
    for (int piece : rounds.pieces()) {
      int[] yarns = domains.yarnsOf(piece, rounds.round());
      for (int yarn : yarns) {
        possible[yarn]++;
        fixed[yarn] += yarns.length == 1 ? 1 : 0;
      }
    }
  }

  /** {@return what the rounds take that can take nothing else, in mm} */
  public long fixedUse() {
    return terms.stream().mapToLong(term -> term.length() * term.fixed()).sum();
  }

  /**
   * {@return what is left for rounds that may take something else, in mm; negative if overdrawn}
   */
  public long openCapacity() {
    return capacity - fixedUse();
  }

  /**
   * {@return what the rounds that may take something else would take if all took this yarn, in mm}
   */
  public long mostOpenUse() {
    return terms.stream().mapToLong(term -> term.length() * term.open()).sum();
  }

  /**
   * {@return the greatest length that divides those of all open rounds, in mm; 0 if there are none}
   */
  public long unit() {
    long unit = 0;
    for (Term term : terms) {
      unit = term.open() > 0 ? ReachableSums.gcd(unit, term.length()) : unit;
    }
    return unit;
  }

  /**
   * {@return the most that open rounds and those of their classes can take of this yarn, in units
   * of {@link #unit}} A count of rounds weighted by such lengths is an int where this is one.
   */
  long mostUnits() {
    long most = 0;
    for (Term term : terms) {
      most += term.open() > 0 ? term.length() / Math.max(1, unit()) * term.possible() : 0;
    }
    return most;
  }

  /**
   * {@return the most that open rounds can take without overdrawing the stock, in mm: rounds are
   * whole, so it is often less than what is left} An upper bound on it where the sums would be too
   * many. Negative if the stock is overdrawn already.
   */
  public long mostReachable() {
    long limit = Math.min(openCapacity(), mostOpenUse());
    if (limit <= 0) {
      return limit;
    }
    long[] lengths = terms.stream().mapToLong(Term::length).toArray();
    int[] counts = terms.stream().mapToInt(Term::open).toArray();
    return ReachableSums.most(lengths, counts, limit, MOST_SUMS);
  }
}
