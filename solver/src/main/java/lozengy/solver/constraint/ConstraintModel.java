package lozengy.solver.constraint;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.check.BriefLine;
import lozengy.model.check.ClashGraph;
import lozengy.model.check.PileFits;
import lozengy.model.check.RoundYarns;
import lozengy.model.check.RuleBook;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Settings;
import org.chocosolver.solver.variables.IntVar;

/**
 * A blanket's rules, or some of the lines that ask for them, as a Choco model: a variable for every
 * round of every piece, whose values are the yarns that it may take.
 *
 * <p>O(rounds x yarns) memory; see {@link #fits} for how much that is.
 */
public final class ConstraintModel {

  private final Blanket blanket;
  private final Model model;
  private final RoundYarns domains;
  private final IntVar[][] pieces;
  private final IntVar[] laid;
  private final List<RoundClass> classes;
  private final IntVar[][] counts;
  private final List<YarnLoad> loads;
  private final ClashGraph clashes;
  private boolean exact = true;

  /**
   * Most rounds of a blanket for which a model is worth building. Measured on one core of a small
   * machine: 4,184 rounds take 0.1 s to build, 10 MB of heap and 0.4 s to 5 s to a first
   * arrangement; 12,356 rounds take 22 MB and did not get there in 30 s.
   */
  public static final int MOST_ROUNDS = 6_000;

  private ConstraintModel(Blanket blanket, List<BriefLine> lines) {
    this.blanket = blanket;
    RoundYarns worked = RoundYarns.toWork(blanket, lines);
    this.domains = PileFits.widened(blanket, worked, lines);
    this.model = new Model("blanket", Settings.init().setWarnUser(false));
    this.pieces = new IntVar[blanket.pieceCount()][];
    for (int piece = 0; piece < pieces.length; piece++) {
      int number = piece;
      pieces[piece] =
          IntStream.range(0, blanket.roundCount(piece))
              .mapToObj(round -> variable(number, round))
              .toArray(IntVar[]::new);
    }
    this.laid = PileVariables.post(model, blanket, worked, lines, pieces);
    this.classes = RoundClass.of(blanket);
    this.counts = new IntVar[classes.size()][];
    this.loads = YarnLoad.of(blanket, domains, lines);
    this.clashes = ClashGraph.of(blanket, lines);
    KindPostings.post(this, lines);
  }

  /**
   * {@return a model of all rules of a blanket}
   *
   * @param blanket the blanket
   */
  public static ConstraintModel of(Blanket blanket) {
    return of(blanket, RuleBook.lines(blanket));
  }

  /**
   * {@return a model of some lines of the brief}
   *
   * @param blanket the blanket
   * @param lines some of {@link RuleBook#lines}
   */
  public static ConstraintModel of(Blanket blanket, List<BriefLine> lines) {
    return new ConstraintModel(blanket, lines);
  }

  /**
   * {@return whether a blanket has few enough rounds, see {@link #MOST_ROUNDS}}
   *
   * @param blanket the blanket
   */
  public static boolean fits(Blanket blanket) {
    int rounds = 0;
    for (int piece = 0; piece < blanket.pieceCount() && rounds <= MOST_ROUNDS; piece++) {
      rounds += blanket.roundCount(piece);
    }
    return rounds <= MOST_ROUNDS;
  }

  private IntVar variable(int piece, int round) {
    int[] yarns = domains.yarnsOf(piece, round);
    if (yarns.length == 0) {
      model.falseConstraint().post();
      yarns = new int[] {0};
    }
    return yarns.length == 1 ? model.intVar(yarns[0]) : model.intVar(yarns);
  }

  /** {@return the blanket} */
  public Blanket blanket() {
    return blanket;
  }

  /** {@return the Choco model} */
  public Model model() {
    return model;
  }

  /** {@return whether it states every rule exactly; if not, solutions may break a rule} */
  public boolean exact() {
    return exact;
  }

  /** The rounds' variables by piece, centre first. */
  IntVar[][] pieces() {
    return pieces;
  }

  /**
   * What lies at a place: 0 a piece still to be worked, s + 1 a piece of the pile's stack s; null
   * where no piece of the pile can lie.
   */
  IntVar laid(int piece) {
    return laid[piece];
  }

  /** The variables of all places at which a piece of the pile can lie. */
  IntVar[] allLaid() {
    return Stream.of(laid).filter(variable -> variable != null).toArray(IntVar[]::new);
  }

  /** The rounds' variables of a piece, centre first. */
  IntVar[] rounds(int piece) {
    return pieces[piece];
  }

  /** The border's variable of every piece. */
  IntVar[] borders() {
    IntVar[] borders = new IntVar[pieces.length];
    for (int piece = 0; piece < borders.length; piece++) {
      borders[piece] = pieces[piece][pieces[piece].length - 1];
    }
    return borders;
  }

  /** The variable of a round by its number. */
  IntVar round(int number) {
    return pieces[blanket.index().piece(number)][blanket.index().round(number)];
  }

  /** Whether the lines that concern single rounds let one take a yarn. */
  boolean mayTake(int number, int yarn) {
    return domains.allows(blanket.index().piece(number), blanket.index().round(number), yarn);
  }

  /** What rounds may not have together. */
  ClashGraph clashes() {
    return clashes;
  }

  /** What the lines that concern single rounds leave each of them. */
  RoundYarns direct() {
    return domains;
  }

  /** The classes of rounds. */
  List<RoundClass> classes() {
    return classes;
  }

  /** What the rounds may ask of each yarn, by the lines that concern single rounds. */
  List<YarnLoad> loads() {
    return loads;
  }

  /** Says that a rule is stated more weakly than it is. */
  void relaxed() {
    exact = false;
  }

  /**
   * How many rounds of a class take each yarn, by yarn; null for a yarn that none may take. Posted
   * when first asked for.
   *
   * @param index index of the class in {@link RoundClass#of}
   */
  IntVar[] counts(int index) {
    if (counts[index] == null) {
      counts[index] = count(index);
    }
    return counts[index];
  }

  /** How many rounds of a class may take one yarn or another. */
  int openRounds(int index) {
    RoundClass rounds = classes.get(index);
    return (int)
        IntStream.of(rounds.pieces())
            .filter(piece -> domains.size(piece, rounds.round()) > 1)
            .count();
  }

  /** Whether the rounds of a class are counted. */
  boolean counted(int index) {
    return counts[index] != null;
  }

  private IntVar[] count(int index) {
    RoundClass rounds = classes.get(index);
    IntVar[] variables =
        IntStream.of(rounds.pieces())
            .mapToObj(piece -> pieces[piece][rounds.round()])
            .toArray(IntVar[]::new);
    IntVar[] byYarn = new IntVar[blanket.yarnCount()];
    List<IntVar> present = new ArrayList<>();
    List<Integer> yarns = new ArrayList<>();
    for (YarnLoad load : loads) {
      for (YarnLoad.Term term : load.terms()) {
        if (term.index() == index) {
          byYarn[load.yarn()] = model.intVar(term.fixed(), term.possible());
          present.add(byYarn[load.yarn()]);
          yarns.add(load.yarn());
        }
      }
    }
    if (present.isEmpty()) {
      // no round of the class may take any yarn, which the rounds' variables have told
      return byYarn;
    }
    IntVar[] all = present.toArray(IntVar[]::new);
    int[] values = yarns.stream().mapToInt(Integer::intValue).toArray();
    model.globalCardinality(variables, values, all, false).post();
    model.sum(all, "=", variables.length).post();
    return byYarn;
  }

  /**
   * {@return the yarns that the variables have now; a round whose variable has none yet is open}
   */
  public Sequences read() {
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < pieces.length; piece++) {
      for (int round = 0; round < pieces[piece].length; round++) {
        IntVar variable = pieces[piece][round];
        sequences.set(
            piece, round, variable.isInstantiated() ? variable.getValue() : Sequences.OPEN);
      }
    }
    return sequences;
  }
}
