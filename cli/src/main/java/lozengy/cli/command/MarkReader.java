package lozengy.cli.command;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lozengy.cli.process.Refusal;
import lozengy.model.brief.YarnAmount;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Quantity;
import lozengy.model.input.Range;
import lozengy.model.progress.Mark;

/** Reads what the command line says has come about. What cannot be read is told as a mistake. */
final class MarkReader {

  /** Nothing needs no unit. */
  private static final String NOTHING = "0";

  private static final String AS_COUNTED = "counted";

  private static final Range HANDS = Range.of(50, 200, "%");

  private static final Set<String> BALLS = Set.of("ball", "balls");

  /** As many as a brief may have of a yarn. */
  private static final BigDecimal MOST_BALLS = BigDecimal.valueOf(100_000);

  private static final Pattern STEPS =
      Pattern.compile("(\\d{1,6})(?:\\s*(?:-|\\.\\.)\\s*(\\d{1,6}))?(?:\\s*=\\s*(.+))?");

  private MarkReader() {}

  /** Pieces and the yarns that they were really worked in. */
  static Optional<Mark.Work> work(Assigned read, List<Mistake> mistakes) {
    return Notes.rounds(read, mistakes).map(note -> new Mark.Work(read.place(), note));
  }

  /** A yarn and how much of it was bought. */
  static Optional<Mark.Bought> bought(Assigned read, List<Mistake> mistakes) {
    Optional<BigDecimal> balls =
        Quantity.parse(read.right())
            .filter(amount -> BALLS.contains(amount.unit()))
            .map(Quantity::number)
            .filter(number -> number.signum() > 0 && number.compareTo(MOST_BALLS) <= 0);
    Optional<YarnAmount> loose = YarnAmount.read(read.right()).filter(MarkReader::some);
    if (balls.isEmpty() && loose.isEmpty()) {
      mistakes.add(
          Mistake.ofWish(
              read.place(),
              MistakeCode.NOT_A_QUANTITY.about(read.right()),
              "'" + read.right() + "' is no amount that can be bought",
              Quantity.pointForComma(read.right())
                  .orElse("Give a number above 0 and balls, g, oz, m or yd, such as SLO=2balls")));
      return Optional.empty();
    }
    double whole = balls.map(BigDecimal::doubleValue).orElse(0.0);
    return Optional.of(new Mark.Bought(read.place(), read.left(), whole, loose));
  }

  private static boolean some(YarnAmount amount) {
    return amount instanceof YarnAmount.Length length
        ? length.millimetres().signum() > 0
        : ((YarnAmount.Weight) amount).milligrams().signum() > 0;
  }

  /** Pieces and how many of their rounds are worked. */
  static Optional<Mark.Rounds> rounds(Assigned read, List<Mistake> mistakes) {
    if (!read.right().matches("\\d{1,4}")) {
      mistakes.add(
          Mistake.ofWish(
              read.place(),
              MistakeCode.NOT_A_NUMBER.about(read.right()),
              "'" + read.right() + "' is no number of rounds",
              "Give how many are worked, from the centre, such as squares=2"));
      return Optional.empty();
    }
    List<String> at = PieceLists.selectors(read.left());
    return Optional.of(new Mark.Rounds(read.place(), Integer.parseInt(read.right()), at));
  }

  /** Steps of the make list, maybe for some pieces alone. */
  static Optional<Mark.Step> step(String text, List<Mistake> mistakes) {
    Matcher matcher = STEPS.matcher(text.strip());
    if (!matcher.matches()) {
      mistakes.add(
          Mistake.ofWish(
              "--step " + text,
              MistakeCode.MALFORMED.about(text),
              "This names no step",
              "Give a number, or a range such as 1-4; for some pieces alone, 5=row2"));
      return Optional.empty();
    }
    int from = Integer.parseInt(matcher.group(1));
    int to = matcher.group(2) == null ? from : Integer.parseInt(matcher.group(2));
    List<String> at = matcher.group(3) == null ? List.of() : PieceLists.selectors(matcher.group(3));
    return Optional.of(new Mark.Step("--step " + text, from, to, at));
  }

  /** What a hand takes of what is reckoned, or that it is what counts tell. */
  static Optional<Mark.Hand> hand(String hand, List<Mistake> mistakes) {
    String place = "--hand " + hand;
    if (hand.strip().equals(AS_COUNTED)) {
      return Optional.of(new Mark.Hand(place, Optional.empty()));
    }
    Optional<BigDecimal> percent =
        Quantity.parse(hand)
            .filter(quantity -> quantity.unit().equals("%"))
            .map(Quantity::number)
            .filter(HANDS::holds);
    if (percent.isEmpty()) {
      mistakes.add(
          Mistake.ofWish(
              place,
              HANDS.missed(hand),
              "'" + hand + "' is no part of what is reckoned",
              "Give 50% to 200%, such as 104% for a hand that takes 4 % more, or write counted"));
    }
    return percent.map(number -> new Mark.Hand(place, Optional.of(number)));
  }

  /** The day of it all; today if none is given. */
  static Optional<Mark.Day> day(Optional<String> given, List<Mistake> mistakes) {
    if (given.isEmpty()) {
      return Optional.of(new Mark.Day("today's date", LocalDate.now()));
    }
    String on = given.get();
    try {
      return Optional.of(new Mark.Day("--on " + on, LocalDate.parse(on.strip())));
    } catch (DateTimeParseException e) {
      mistakes.add(
          Mistake.ofWish(
              "--on " + on,
              MistakeCode.MALFORMED.about(on),
              "This is no day",
              "Give year, month and day, such as 2025-11-20"));
      return Optional.empty();
    }
  }

  /**
   * Refuses a day that is still to come, unless the last mark has it, which a clock may have made
   * that was ahead: no earlier day can follow.
   */
  static void refuseToCome(Mark.Day day, Optional<LocalDate> last) {
    LocalDate today = LocalDate.now();
    // where it is a day later already
    if (day.day().isAfter(today.plusDays(1)) && !last.equals(Optional.of(day.day()))) {
      throw Refusal.of(
          day.place(),
          MistakeCode.OUT_OF_RANGE.about(day.day()),
          "That day is still to come",
          "Today is " + today + " by the clock");
    }
  }

  /** A yarn and what is left of it. */
  static Optional<Mark.Count> count(Assigned read, List<Mistake> mistakes) {
    Optional<YarnAmount> amount =
        read.right().equals(NOTHING)
            ? Optional.of(new YarnAmount.Length(0))
            : YarnAmount.read(read.right());
    if (amount.isEmpty()) {
      mistakes.add(
          Mistake.ofWish(
              read.place(),
              MistakeCode.NOT_A_QUANTITY.about(read.right()),
              "'" + read.right() + "' is no amount of yarn",
              Quantity.pointForComma(read.right())
                  .orElse(
                      "Give a number and g, oz, m or yd, such as REE=85g; more yarns with --left"
                          + " again")));
      return Optional.empty();
    }
    return Optional.of(new Mark.Count(read.place(), read.left(), amount.get()));
  }
}
