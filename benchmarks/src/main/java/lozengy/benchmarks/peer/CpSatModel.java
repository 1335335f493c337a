package lozengy.benchmarks.peer;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.LinearArgument;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;

/**
 * A blanket's rules and score for CP-SAT. A literal says that a round shows a yarn; there is none
 * where tone, ban or lock rule the yarn out. The objective is the score's loss, in units.
 */
final class CpSatModel {

  /** Units of the objective in a point of the score. */
  static final double UNITS_PER_POINT = 1e6;

  private final Blanket blanket;
  private final CpModel model = new CpModel();
  private final Literal[][][] shows;
  private final Losses losses;
  private final LinearExprBuilder loss = LinearExpr.newBuilder();

  /**
   * States a blanket.
   *
   * @param earlier sequences to stay close to, where planning again
   */
  CpSatModel(Blanket blanket, Optional<Sequences> earlier) {
    this(blanket, new Losses(blanket, earlier, UNITS_PER_POINT));
    new CpSatPairs(this).post();
    new CpSatBalance(this).post();
    new CpSatStock(this).post();
    new CpSatCopies(this).post();
    earlier.ifPresent(this::keep);
    model.minimize(loss);
  }

  /** States what borders and pieces may show, with neither stock nor score. */
  static CpSatModel ofRules(Blanket blanket) {
    return new CpSatModel(blanket, new Losses(blanket, Optional.empty(), UNITS_PER_POINT));
  }

  private CpSatModel(Blanket blanket, Losses losses) {
    this.blanket = blanket;
    this.losses = losses;
    this.shows = new Literal[blanket.pieceCount()][][];
    for (int piece = 0; piece < shows.length; piece++) {
      shows[piece] = new Literal[blanket.roundCount(piece)][];
      for (int round = 0; round < shows[piece].length; round++) {
        shows[piece][round] = round(piece, round);
      }
    }
    new CpSatRules(this).post();
  }

  private void keep(Sequences earlier) {
    for (int piece = 0; piece < shows.length; piece++) {
      for (int round = 0; round < shows[piece].length; round++) {
        int before = earlier.yarn(piece, round);
        if (!blanket.free(piece, round) || before == Sequences.OPEN) {
          continue;
        }
        Literal kept = shows[piece][round][before];
        if (kept == null) {
          loss.add(losses.changed());
        } else {
          lose(kept.not(), losses.changed());
        }
      }
    }
  }

  /** Has the solver begin with an arrangement. */
  void hint(Sequences start) {
    for (int piece = 0; piece < shows.length; piece++) {
      for (int round = 0; round < shows[piece].length; round++) {
        for (int yarn = 0; yarn < shows[piece][round].length; yarn++) {
          if (shows[piece][round][yarn] instanceof BoolVar literal) {
            model.addHint(literal, start.yarn(piece, round) == yarn);
          }
        }
      }
    }
  }

  private Literal[] round(int piece, int round) {
    Literal[] literals = new Literal[blanket.yarnCount()];
    List<Literal> all = new ArrayList<>();
    for (int yarn : RoundDomain.of(blanket, piece, round)) {
      BoolVar literal = model.newBoolVar("");
      literals[yarn] = literal;
      all.add(literal);
    }
    model.addExactlyOne(all);
    return literals;
  }

  Blanket blanket() {
    return blanket;
  }

  CpModel model() {
    return model;
  }

  Losses losses() {
    return losses;
  }

  /** Adds to the objective. */
  void lose(LinearArgument what, long units) {
    if (units != 0) {
      loss.addTerm(what, units);
    }
  }

  /** By yarn, whether a round shows it; null where it may not. */
  Literal[] shows(int piece, int round) {
    return shows[piece][round];
  }

  int rounds(int piece) {
    return shows[piece].length;
  }

  /** The same of a piece's border. */
  Literal[] border(int piece) {
    return shows[piece][shows[piece].length - 1];
  }

  /** The same of a piece's layer, 0 the border; null where the piece has no such layer. */
  Literal[] layer(int piece, int layer) {
    int round = shows[piece].length - 1 - layer;
    return round < 0 ? null : shows[piece][round];
  }

  /**
   * Reads a solution.
   *
   * @param value whether a literal is true
   */
  Sequences sequences(Predicate<Literal> value) {
    Sequences sequences = blanket.open();
    for (int piece = 0; piece < shows.length; piece++) {
      for (int round = 0; round < shows[piece].length; round++) {
        Literal[] literals = shows[piece][round];
        int yarn = 0;
        while (literals[yarn] == null || !value.test(literals[yarn])) {
          yarn++;
        }
        sequences.set(piece, round, yarn);
      }
    }
    return sequences;
  }
}
