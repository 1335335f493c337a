package lozengy.report;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.making.WorkTime;

/** Words for how long the work takes. */
public final class TimeWords {

  private static final long MINUTES_OF_HOUR = 60;

  private TimeWords() {}

  /** What is left to work, in hours and in ends; empty where nothing is. */
  public static Optional<String> of(Blanket blanket, Sequences sequences) {
    WorkTime time = WorkTime.of(blanket, sequences);
    if (time.ends() == 0) {
      return Optional.empty();
    }
    String ends = Figures.count(time.ends(), "end") + " to weave in.";
    if (time.leftMinutes().isEmpty()) {
      return Optional.of(ends);
    }
    String each =
        time.perPieceMinutes().entrySet().stream()
            .map(kind -> "a " + kind.getKey().word() + " " + hours(kind.getValue()))
            .collect(Collectors.joining(", "));
    return Optional.of(
        "About "
            + hours(time.leftMinutes().get())
            + " to work ("
            + each
            + "), joining and edging not counted; "
            + ends);
  }

  /** A time to the minute, such as {@code 14 h 20 min}. */
  private static String hours(BigDecimal minutes) {
    long whole = minutes.setScale(0, RoundingMode.HALF_UP).longValueExact();
    long hours = whole / MINUTES_OF_HOUR;
    long rest = whole % MINUTES_OF_HOUR;
    return hours == 0 ? rest + " min" : hours + " h" + (rest == 0 ? "" : " " + rest + " min");
  }
}
