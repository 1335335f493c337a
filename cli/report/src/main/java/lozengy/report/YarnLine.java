package lozengy.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Yarn;
import lozengy.model.colour.Tone;
import lozengy.model.yarn.YarnWork;

/**
 * What an arrangement takes of one yarn, joining and edging included.
 *
 * @param yarn the yarn
 * @param tone its tone
 * @param availableMillimetres length in mm at hand, kept-back part included
 * @param usedMillimetres length in mm that the arrangement takes
 * @param work what is worked, still to be worked, and at hand now
 */
public record YarnLine(
    Yarn yarn, Tone tone, long availableMillimetres, long usedMillimetres, YarnWork work) {

  /** What stands in place of an amount at hand of a yarn that is there no more. */
  public static final String GONE = "gone";

  /** A line for every yarn, in the brief's order. */
  public static List<YarnLine> of(Arrangement arrangement) {
    Blanket blanket = arrangement.blanket();
    long[] used = blanket.usedMillimetres(arrangement.sequences());
    List<YarnWork> work = YarnWork.of(blanket, arrangement.sequences());
    List<YarnLine> lines = new ArrayList<>();
    for (int yarn = 0; yarn < used.length; yarn++) {
      long available = blanket.yarn(yarn).stockMillimetres();
      lines.add(
          new YarnLine(
              blanket.yarn(yarn),
              blanket.yarns().tone(yarn),
              available,
              used[yarn],
              work.get(yarn)));
    }
    return lines;
  }

  /** What is at hand now, for people: a length in m, or that the yarn is gone. */
  public String atHandWords() {
    return yarn.gone() ? GONE : Figures.metres(work.atHandMillimetres());
  }

  /** What is left in mm; below 0 where the yarn runs out. */
  public long leftMillimetres() {
    return availableMillimetres - usedMillimetres;
  }

  /** A length in balls; empty where no put-up is stated. */
  public OptionalDouble balls(long millimetres) {
    return yarn.ball().isEmpty()
        ? OptionalDouble.empty()
        : OptionalDouble.of(millimetres / yarn.ball().get().millimetres().doubleValue());
  }

  /** A length in g; empty where no put-up is stated. */
  public OptionalDouble grams(long millimetres) {
    OptionalDouble balls = balls(millimetres);
    double gramsPerBall = yarn.ball().map(ball -> ball.grams().doubleValue()).orElse(0.0);
    return balls.isEmpty() ? balls : OptionalDouble.of(balls.getAsDouble() * gramsPerBall);
  }
}
