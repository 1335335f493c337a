package lozengy.benchmarks.peer;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToLongFunction;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.Pairs;
import lozengy.model.score.Nearness;

/**
 * What pairs of rounds lose: spread and contrast. Each round has one variable for what it loses
 * with the rounds of its layer in later pieces and with the round inside it; for each yarn it may
 * take, a linear row says that taking it loses at least that much. Measured against a literal for
 * each pair and against a variable for each pair this states the reference brief in a quarter of
 * the constraints, and brought better scores in as much time.
 */
final class CpSatPairs {

  private final CpSatModel stated;
  private final CpModel model;
  private final Blanket blanket;
  private final Losses losses;
  private final List<List<Partner>> later = new ArrayList<>();

  /** A later piece near a piece. */
  private record Partner(int piece, Nearness nearness) {}

  CpSatPairs(CpSatModel stated) {
    this.stated = stated;
    this.model = stated.model();
    this.blanket = stated.blanket();
    this.losses = stated.losses();
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      later.add(new ArrayList<>());
    }
    for (Nearness nearness : Nearness.values()) {
      Pairs pairs = nearness.pairs(blanket.layout());
      for (int pair = 0; pair < pairs.size(); pair++) {
        later.get(pairs.first()[pair]).add(new Partner(pairs.second()[pair], nearness));
      }
    }
  }

  void post() {
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      for (int layer = 0; layer < stated.rounds(piece); layer++) {
        post(piece, layer);
      }
    }
  }

  private void post(int piece, int layer) {
    Literal[] shown = stated.layer(piece, layer);
    Row[] rows = new Row[shown.length];
    long most = 0;
    for (int yarn = 0; yarn < shown.length; yarn++) {
      if (shown[yarn] != null) {
        rows[yarn] = row(piece, layer, yarn);
        most = Math.max(most, rows[yarn].most);
      }
    }
    if (most == 0) {
      return;
    }
    IntVar loss = model.newIntVar(0, most, "");
    stated.lose(loss, 1);
    for (int yarn = 0; yarn < shown.length; yarn++) {
      if (shown[yarn] != null && rows[yarn].most > 0) {
        // loss >= row where the yarn is shown; elsewhere the row says nothing
        long slack = rows[yarn].most;
        model.addGreaterOrEqual(
            LinearExpr.newBuilder().add(loss).add(slack).addTerm(shown[yarn], -slack),
            rows[yarn].sum);
      }
    }
  }

  private Row row(int piece, int layer, int yarn) {
    Row row = new Row();
    for (Partner partner : later.get(piece)) {
      Literal[] other = stated.layer(partner.piece(), layer);
      if (other == null) {
        continue;
      }
      if (layer == 0 && partner.nearness() == Nearness.SEAM) {
        row.add(other, b -> blanket.yarns().sameBorder(yarn, b) ? 0 : losses.seam(yarn, b));
      } else {
        long repeat = losses.repeat(layer, partner.nearness());
        row.add(other, b -> b == yarn ? repeat : 0);
      }
    }
    Literal[] inner = stated.layer(piece, layer + 1);
    if (inner != null) {
      boolean free = blanket.brief().rules().withinPiece() == WithinPiece.FREE;
      row.add(inner, b -> b == yarn && !free ? 0 : losses.step(yarn, b));
    }
    return row;
  }

  /** What a round loses with one yarn: a sum over other rounds' yarns, and the most it can be. */
  private static final class Row {

    private final LinearExprBuilder sum = LinearExpr.newBuilder();
    private long most;

    void add(Literal[] other, IntToLongFunction loses) {
      long worst = 0;
      for (int yarn = 0; yarn < other.length; yarn++) {
        long units = other[yarn] == null ? 0 : loses.applyAsLong(yarn);
        if (units > 0) {
          sum.addTerm(other[yarn], units);
          worst = Math.max(worst, units);
        }
      }
      most += worst;
    }
  }
}
