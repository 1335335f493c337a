package lozengy.solver.constraint;

import java.util.function.IntUnaryOperator;
import org.chocosolver.solver.constraints.Propagator;
import org.chocosolver.solver.constraints.PropagatorPriority;
import org.chocosolver.solver.exception.ContradictionException;
import org.chocosolver.solver.variables.IntVar;
import org.chocosolver.solver.variables.events.IntEventType;
import org.chocosolver.util.ESat;

/** The more of a yarn is used, the more leeway is lost: bounds of one by bounds of the other. */
final class LeewayPropagator extends Propagator<IntVar> {

  private final IntVar used;
  private final IntVar lost;
  private final IntUnaryOperator loss;

  /**
   * Ties the two.
   *
   * @param loss what is lost by what is used; never falls
   */
  LeewayPropagator(IntVar used, IntVar lost, IntUnaryOperator loss) {
    super(new IntVar[] {used, lost}, PropagatorPriority.BINARY, false);
    this.used = used;
    this.lost = lost;
    this.loss = loss;
  }

  @Override
  public int getPropagationConditions(int variable) {
    return IntEventType.boundAndInst();
  }

  @Override
  public void propagate(int events) throws ContradictionException {
    lost.updateBounds(loss.applyAsInt(used.getLB()), loss.applyAsInt(used.getUB()), this);
    int within = used.getLB();
    int beyond = used.getUB() + 1;
    while (beyond - within > 1) {
      int middle = within + (beyond - within) / 2;
      if (loss.applyAsInt(middle) <= lost.getUB()) {
        within = middle;
      } else {
        beyond = middle;
      }
    }
    used.updateUpperBound(within, this);
  }

  @Override
  public ESat isEntailed() {
    if (used.isInstantiated() && lost.isInstantiated()) {
      return ESat.eval(lost.getValue() == loss.applyAsInt(used.getValue()));
    }
    return ESat.UNDEFINED;
  }
}
