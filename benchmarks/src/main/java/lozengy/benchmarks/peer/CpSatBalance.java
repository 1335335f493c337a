package lozengy.benchmarks.peer;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;

/**
 * What balance loses. Within a layer, as many rounds are over the targets as are under, so only
 * those over are counted.
 */
final class CpSatBalance {

  private final CpSatModel stated;
  private final CpModel model;

  CpSatBalance(CpSatModel stated) {
    this.stated = stated;
    this.model = stated.model();
  }

  void post() {
    for (int layer = 0; layer < stated.blanket().layerCount(); layer++) {
      for (int yarn = 0; yarn < stated.blanket().yarnCount(); yarn++) {
        post(layer, yarn);
      }
    }
  }

  private void post(int layer, int yarn) {
    LinearExprBuilder count = LinearExpr.newBuilder();
    int most = 0;
    for (int piece = 0; piece < stated.blanket().pieceCount(); piece++) {
      Literal[] shown = stated.layer(piece, layer);
      if (shown != null && shown[yarn] != null) {
        count.add(shown[yarn]);
        most++;
      }
    }
    int target = stated.losses().target(layer, yarn);
    if (most > target && stated.losses().overTarget(layer) > 0) {
      IntVar over = model.newIntVar(0, most - target, "");
      model.addGreaterOrEqual(LinearExpr.newBuilder().add(over).add(target), count);
      stated.lose(over, stated.losses().overTarget(layer));
    }
  }
}
