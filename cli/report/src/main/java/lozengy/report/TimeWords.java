package lozengy.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Joining;
import lozengy.model.making.WorkTime;

/** Words for how long the work takes. */
public final class TimeWords {

  private static final long MINUTES_OF_HOUR = 60;

  private TimeWords() {}

  /** What is left to do, in hours and in ends; empty where nothing is that is told. */
  public static Optional<String> of(Blanket blanket, Sequences sequences) {
    WorkTime time = WorkTime.of(blanket, sequences);
    BigDecimal all = time.allMinutes().orElse(BigDecimal.ZERO);
    if (time.ends() == 0 && all.signum() == 0) {
      return Optional.empty();
    }
    String ends = Figures.count(time.ends(), "end") + " of rounds to weave in.";
    if (all.signum() == 0) {
      return Optional.of(ends);
    }
    List<String> parts = new ArrayList<>();
    if (time.ends() > 0) {
      time.perPieceMinutes()
          .forEach((kind, minutes) -> parts.add("a " + kind.word() + " " + hours(minutes)));
    }
    List<String> untold = new ArrayList<>();
    finish("joining", blanket.brief().joining(), time.joiningMinutes(), parts, untold);
    finish(
        "edging",
        blanket.brief().edging().stream().findFirst(),
        time.edgingMinutes(),
        parts,
        untold);
    return Optional.of(
        "About "
            + hours(all)
            + " to work ("
            + String.join(", ", parts)
            + ")"
            + (untold.isEmpty() ? "" : ", " + String.join(" and ", untold) + " not counted")
            + "; "
            + ends);
  }

  private static void finish(
      String what,
      Optional<? extends Joining> use,
      Optional<BigDecimal> minutes,
      List<String> parts,
      List<String> untold) {
    if (use.isPresent()) {
      minutes.ifPresentOrElse(each -> parts.add(what + " " + hours(each)), () -> untold.add(what));
    }
  }

  /** A time to the minute, such as {@code 14 h 20 min}. */
  static String hours(BigDecimal minutes) {
    long whole = minutes.setScale(0, RoundingMode.HALF_UP).longValueExact();
    long hours = whole / MINUTES_OF_HOUR;
    long rest = whole % MINUTES_OF_HOUR;
    return hours == 0 ? rest + " min" : hours + " h" + (rest == 0 ? "" : " " + rest + " min");
  }
}
