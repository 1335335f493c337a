package lozengy.model.progress;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Diary;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.making.WorkTime;

/**
 * How the work goes, by the days of the diary: no clock is asked. What was marked on the first day
 * was worked before it, and so tells of no pace; from then on each day with marks ends a stretch of
 * work.
 *
 * @param finished pieces that are made, joined or from the pile
 * @param piecesToGo the other pieces
 * @param roundsToGo rounds that are still to be worked; joining and edging aside
 * @param byTime whether the end goes by the minutes that the brief tells, with the joining and
 *     edging of which it does, and not by rounds
 * @param week what is worked in a week, where there are two days with marks or more
 * @param tooFew whether there is work to do, and the days with marks are too few or too close to
 *     each other to tell an end of it
 * @param end when all of that is likely to be done, where there are days enough to tell
 */
public record Pace(
    int finished,
    int piecesToGo,
    int roundsToGo,
    boolean byTime,
    Optional<Week> week,
    boolean tooFew,
    Optional<End> end) {

  /** Days with marks that it takes to tell an end: three stretches of work between them. */
  public static final int LEAST_DAYS = 4;

  /** No end is told of a shorter time, in days: one weekend says little of a winter. */
  public static final int LEAST_SPAN = 7;

  private static final double DAYS_A_WEEK = 7;

  private static final double MINUTES_AN_HOUR = 60;

  /** Beyond so many days an end says nothing. */
  private static final double MOST_DAYS = 36_525;

  /**
   * Student's t at 0.9, two-sided 80 %, for 2 to 10 degrees of freedom; beyond, that of the normal
   * distribution is near enough.
   */
  private static final double[] STUDENT = {
    1.886, 1.638, 1.533, 1.476, 1.440, 1.415, 1.397, 1.383, 1.372
  };

  private static final double NORMAL = 1.282;

  /**
   * What is worked in a week, on average over all days from the first mark of pieces to the last.
   *
   * @param first the day of the first mark of pieces
   * @param last the day of the last mark of pieces
   * @param pieces pieces finished in a week
   * @param rounds rounds worked in a week
   * @param hours hours that these took by what the brief tells; empty where it tells nothing
   */
  public record Week(
      LocalDate first, LocalDate last, double pieces, double rounds, Optional<Double> hours) {}

  /** What was worked on a day. */
  private record Sums(int pieces, int rounds, double minutes) {
    Sums plus(Diary.Entry entry) {
      double more = entry.minutes().map(BigDecimal::doubleValue).orElse(0.0);
      return new Sums(pieces + entry.pieces(), rounds + entry.rounds(), minutes + more);
    }
  }

  /**
   * When all is likely to be done. With rounds, or minutes, x(i) in the stretches of t(i) days, n
   * of them, a day sees r = sum x / sum t rounds, with the standard error of a ratio, the root of n
   * / (n - 1) sum (x(i) - r t(i))^2 / (sum t)^2 (Cochran 1977, Sampling Techniques, chapter 6). The
   * days are those on which r plus and minus as many errors as hold four times of five (Student's
   * t, n - 1) come to its end. It takes the weeks to come for like those that were.
   *
   * @param from the earlier day
   * @param to the later one; empty where the pace varies so much that none can be told
   */
  public record End(LocalDate from, Optional<LocalDate> to) {}

  /**
   * Tells how the work on an arrangement goes; O(pieces x rounds + marks).
   *
   * @param arrangement the arrangement
   * @return the pace; empty where nothing was marked
   */
  public static Optional<Pace> of(Arrangement arrangement) {
    if (arrangement.diary().entries().isEmpty()) {
      return Optional.empty();
    }
    Blanket blanket = arrangement.blanket();
    PilePlacement laid = PilePlacement.of(blanket, arrangement.sequences());
    int pieces = blanket.pieceCount();
    int finished = (int) IntStream.range(0, pieces).filter(laid::worked).count();
    int toGo =
        IntStream.range(0, pieces)
            .map(piece -> blanket.roundCount(piece) - laid.roundsWorked(piece))
            .sum();
    TreeMap<LocalDate, Sums> days = days(arrangement.diary());
    Optional<BigDecimal> minutes =
        WorkTime.of(blanket, arrangement.sequences())
            .allMinutes()
            .filter(left -> timed(arrangement.diary()));
    double left = minutes.map(BigDecimal::doubleValue).orElse((double) toGo);
    ToDoubleFunction<Sums> done = minutes.isPresent() ? Sums::minutes : Sums::rounds;
    return Optional.of(
        new Pace(
            finished,
            pieces - finished,
            toGo,
            minutes.isPresent(),
            week(days, minutes.isPresent()),
            left > 0 && tooFew(days),
            left <= 0 ? Optional.empty() : end(days, left, done)));
  }

  /** Whether all work since the first mark says how long it took. */
  private static boolean timed(Diary diary) {
    return diary.entries().stream()
        .allMatch(entry -> entry.rounds() == 0 || entry.minutes().isPresent());
  }

  /** By day with work what was worked; a day of yarn alone ends no stretch. */
  private static TreeMap<LocalDate, Sums> days(Diary diary) {
    TreeMap<LocalDate, Sums> days = new TreeMap<>();
    for (Diary.Entry entry : diary.entries()) {
      entry
          .on()
          .filter(day -> entry.ofWork() || entry.minutes().isPresent())
          .ifPresent(day -> days.put(day, days.getOrDefault(day, new Sums(0, 0, 0)).plus(entry)));
    }
    return days;
  }

  private static Optional<Week> week(TreeMap<LocalDate, Sums> days, boolean byTime) {
    if (days.size() < 2) {
      return Optional.empty();
    }
    LocalDate first = days.firstKey();
    LocalDate last = days.lastKey();
    double weeks = ChronoUnit.DAYS.between(first, last) / DAYS_A_WEEK;
    return Optional.of(
        new Week(
            first,
            last,
            sum(days, Sums::pieces) / weeks,
            sum(days, Sums::rounds) / weeks,
            byTime
                ? Optional.of(sum(days, Sums::minutes) / MINUTES_AN_HOUR / weeks)
                : Optional.empty()));
  }

  /** Over all days but the first. */
  private static double sum(TreeMap<LocalDate, Sums> days, ToDoubleFunction<Sums> of) {
    return days.tailMap(days.firstKey(), false).values().stream().mapToDouble(of).sum();
  }

  private static boolean tooFew(TreeMap<LocalDate, Sums> days) {
    return days.size() < LEAST_DAYS
        || ChronoUnit.DAYS.between(days.firstKey(), days.lastKey()) < LEAST_SPAN;
  }

  private static Optional<End> end(
      TreeMap<LocalDate, Sums> days, double toGo, ToDoubleFunction<Sums> done) {
    if (tooFew(days)) {
      return Optional.empty();
    }
    LocalDate first = days.firstKey();
    LocalDate last = days.lastKey();
    double span = ChronoUnit.DAYS.between(first, last);
    double worked = sum(days, done);
    if (worked <= 0) {
      return Optional.empty();
    }
    double rate = worked / span;
    int stretches = days.size() - 1;
    double squares = 0;
    LocalDate before = first;
    for (Map.Entry<LocalDate, Sums> day : days.tailMap(first, false).entrySet()) {
      double off =
          done.applyAsDouble(day.getValue()) - rate * ChronoUnit.DAYS.between(before, day.getKey());
      squares += off * off;
      before = day.getKey();
    }
    double error = Math.sqrt(stretches / (stretches - 1.0) * squares) / span;
    int freedom = stretches - 1;
    double times = freedom - 2 < STUDENT.length ? STUDENT[freedom - 2] : NORMAL;
    return day(last, toGo, rate + times * error)
        .map(from -> new End(from, day(last, toGo, rate - times * error)));
  }

  private static Optional<LocalDate> day(LocalDate last, double toGo, double rate) {
    double days = toGo / rate;
    return rate <= 0 || days > MOST_DAYS
        ? Optional.empty()
        : Optional.of(last.plusDays((long) Math.ceil(days)));
  }
}
