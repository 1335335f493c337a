package lozengy.report;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.progress.Pace;

/** Says how the work goes, as far as its diary tells. */
public final class PaceWords {

  private PaceWords() {}

  /**
   * What is finished and left, how much a week sees, and when the last round is likely to be
   * worked; empty where nothing was marked.
   */
  public static Optional<String> of(Arrangement arrangement) {
    return Pace.of(arrangement).map(PaceWords::words);
  }

  private static String words(Pace pace) {
    String left =
        Figures.count(pace.finished(), "piece")
            + " finished, "
            + pace.piecesToGo()
            + " to go ("
            + Figures.count(pace.roundsToGo(), "round")
            + ")";
    return left
        + pace.week().map(PaceWords::week).orElse("")
        + pace.end().map(end -> end(end, pace.byTime())).orElse(soon(pace));
  }

  /** That an end is still to be told, where the marks are too few for one. */
  private static String soon(Pace pace) {
    return pace.tooFew() ? "; not enough marks yet to tell a likely end" : "";
  }

  private static String week(Pace.Week week) {
    return "; from "
        + week.first()
        + " to "
        + week.last()
        + " "
        + Figures.fixed(week.pieces(), 1)
        + " pieces and "
        + Figures.fixed(week.rounds(), 1)
        + " rounds"
        + week.hours().map(hours -> ", " + Figures.fixed(hours, 1) + " hours,").orElse("")
        + " a week";
  }

  private static String end(Pace.End end, boolean byTime) {
    String from = end.from().toString();
    return (byTime ? "; all done likely " : "; the last round likely ")
        + end.to()
            .map(to -> end.from().equals(to) ? "on " + from : "between " + from + " and " + to)
            .orElse("on " + from + " at the soonest");
  }

  /** The same as data; empty where nothing was marked. */
  static Optional<Map<String, Object>> data(Arrangement arrangement) {
    return Pace.of(arrangement).map(pace -> data(pace, arrangement.diary().entries().size()));
  }

  private static Map<String, Object> data(Pace pace, int marks) {
    Map<String, Object> data = new LinkedHashMap<>();
    data.put("marks", marks);
    data.put("pieces_finished", pace.finished());
    data.put("pieces_to_go", pace.piecesToGo());
    data.put("rounds_to_go", pace.roundsToGo());
    pace.week()
        .ifPresent(
            week -> {
              data.put("first_day", week.first().toString());
              data.put("last_day", week.last().toString());
              data.put("pieces_a_week", tenths(week.pieces()));
              data.put("rounds_a_week", tenths(week.rounds()));
              week.hours().ifPresent(hours -> data.put("hours_a_week", tenths(hours)));
            });
    pace.end()
        .ifPresent(
            end -> {
              data.put("end_from", end.from().toString());
              end.to().map(LocalDate::toString).ifPresent(to -> data.put("end_to", to));
            });
    return data;
  }

  private static double tenths(double figure) {
    return Math.round(figure * 10) / 10.0;
  }
}
