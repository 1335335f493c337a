package lozengy.benchmarks.peer;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.layout.Pairs;

/** Posts the rules on neighbouring borders and within pieces. */
final class CpSatRules {

  private final CpSatModel stated;
  private final CpModel model;
  private final Blanket blanket;

  CpSatRules(CpSatModel stated) {
    this.stated = stated;
    this.model = stated.model();
    this.blanket = stated.blanket();
  }

  void post() {
    neighbourBorders();
    withinPiece();
  }

  private void neighbourBorders() {
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      Literal[] first = stated.border(seams.first()[seam]);
      Literal[] second = stated.border(seams.second()[seam]);
      for (int a = 0; a < first.length; a++) {
        for (int b = 0; b < second.length; b++) {
          if (first[a] != null && second[b] != null && blanket.yarns().sameBorder(a, b)) {
            model.addAtMostOne(new Literal[] {first[a], second[b]});
          }
        }
      }
    }
  }

  private void withinPiece() {
    WithinPiece within = blanket.brief().rules().withinPiece();
    for (int piece = 0; within != WithinPiece.FREE && piece < blanket.pieceCount(); piece++) {
      for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
        if (within == WithinPiece.ALL_DIFFER) {
          atMostOne(piece, 0, stated.rounds(piece), yarn);
        } else {
          for (int round = 1; round < stated.rounds(piece); round++) {
            atMostOne(piece, round - 1, round + 1, yarn);
          }
        }
      }
    }
  }

  private void atMostOne(int piece, int from, int to, int yarn) {
    List<Literal> literals = new ArrayList<>();
    for (int round = from; round < to; round++) {
      if (stated.shows(piece, round)[yarn] != null) {
        literals.add(stated.shows(piece, round)[yarn]);
      }
    }
    if (literals.size() > 1) {
      model.addAtMostOne(literals);
    }
  }
}
