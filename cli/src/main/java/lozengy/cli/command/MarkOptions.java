package lozengy.cli.command;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnAmount;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Quantity;
import lozengy.model.input.Range;
import lozengy.model.progress.Mark;
import picocli.CommandLine.Option;

/** The options that say what has come about. */
final class MarkOptions {

  /** Nothing needs no unit. */
  private static final String NOTHING = "0";

  private static final double ALL = 100;

  private static final String AS_COUNTED = "counted";

  private static final Range HANDS = Range.of(50, 200, "%");

  private static final Set<String> BALLS = Set.of("ball", "balls");

  /** As many as a brief may have of a yarn. */
  private static final BigDecimal MOST_BALLS = BigDecimal.valueOf(100_000);

  private static final Pattern STEPS =
      Pattern.compile("(\\d{1,6})(?:\\s*(?:-|\\.\\.)\\s*(\\d{1,6}))?(?:\\s*=\\s*(.+))?");

  @Option(
      names = "--made",
      paramLabel = "PIECES",
      description =
          "Pieces that are worked: names, ranges and groups, such as r1c1,row3,strip1..strip4; -"
              + " reads a CSV list from standard input. Repeatable.")
  private List<String> made = List.of();

  @Option(
      names = "--joined",
      paramLabel = "PIECES",
      description = "Pieces that are worked and joined. Repeatable.")
  private List<String> joined = List.of();

  @Option(
      names = "--planned",
      paramLabel = "PIECES",
      description = "Pieces that are to be worked, or worked anew. Repeatable.")
  private List<String> planned = List.of();

  @Option(
      names = "--rounds",
      paramLabel = "PIECES=N",
      description =
          "Pieces of which the first N rounds are worked, from the centre: squares=2. With all of"
              + " them a piece is made. Repeatable.")
  private List<String> rounds = List.of();

  @Option(
      names = "--step",
      paramLabel = "STEPS[=PIECES]",
      description =
          "Steps of the make list that are done, by the numbers that it shows: 3, or 1-4; or for"
              + " some pieces alone: 5=row2. Rounds within are worked too, then. Repeatable.")
  private List<String> steps = List.of();

  @Option(
      names = "--worked",
      paramLabel = "PIECES=YARNS",
      description =
          "What pieces were really worked in, the centre first, ~ as planned: r4c2=~,~,SND,~,~."
              + " After .. yarns count from the border. A planned piece becomes made, one that is begun"
              + " stays so. Repeatable.")
  private List<String> worked = List.of();

  @Option(
      names = "--left",
      paramLabel = "YARN=AMOUNT",
      description =
          "What is left of a yarn, such as REE=85g, in g, oz, m or yd: from now on the truth. What"
              + " is worked by now no longer counts against it. Repeatable.")
  private List<String> left = List.of();

  @Option(
      names = "--bought",
      paramLabel = "YARN=AMOUNT",
      description =
          "What was bought of a yarn, such as SLO=2balls, or 100g, 120m: it adds to what is at"
              + " hand, also after a count. Repeatable.")
  private List<String> bought = List.of();

  @Option(
      names = "--add",
      paramLabel = "YARN",
      description =
          "A shade that the brief does not know yet, with its fields as in a brief: 'code: RUS,"
              + " colour: \"#8a4b2d\", balls: 2, ball: { grams: 50, metres: 120 }'. Repeatable.")
  private List<String> added = List.of();

  @Option(
      names = "--lot",
      paramLabel = "NEW=YARN",
      description =
          "Another dye lot of a shade, under a code of its own, such as SL3=SLO; with --bought"
              + " SL3=1ball. The two are kept from meeting. Repeatable.")
  private List<String> lots = List.of();

  @Option(
      names = "--gone",
      paramLabel = "YARN",
      description =
          "A yarn that is there no more, for good. What is worked in it stays; 'solve' plans the"
              + " rest without it. Repeatable.")
  private List<String> gone = List.of();

  @Option(
      names = "--uncount",
      paramLabel = "YARN",
      description =
          "Take a yarn's count back, as if it had never been counted: what was bought of it counts"
              + " again, and all that is worked in it. Repeatable.")
  private List<String> uncounted = List.of();

  @Option(
      names = "--edged",
      paramLabel = "PERCENT",
      description =
          "With --left of the edging's yarn: the part of the outline that is edged already, in"
              + " per cent; as counted before, or 0, if not said.")
  private Converters.Percent edged;

  @Option(
      names = "--hand",
      paramLabel = "PERCENT",
      description =
          "What your hand takes of what is reckoned, such as 104%%; 'counted' takes what --left,"
              + " now and before, tells of it. All that is reckoned follows, joining and edging too.")
  private String hand;

  @Option(
      names = "--on",
      paramLabel = "DAY",
      description = "The day of all this, such as 2025-11-20; today if not said.")
  private String on;

  /** Whether anything is to be marked. */
  boolean any() {
    return Stream.of(
                made, joined, planned, rounds, steps, worked, left, bought, added, lots, gone,
                uncounted)
            .anyMatch(list -> !list.isEmpty())
        || edged != null
        || hand != null;
  }

  /** Whether a day is given. */
  boolean dated() {
    return on != null;
  }

  /** Whether a list is to come from standard input. */
  boolean readsStandardInput() {
    return lists().anyMatch(PieceLists::isStandardInput);
  }

  private Stream<String> lists() {
    return Stream.of(made, joined, planned).flatMap(List::stream);
  }

  /**
   * What has come about.
   *
   * @throws Refusal with all options that cannot be read
   */
  Mark mark(Terminal terminal) {
    List<Mistake> mistakes = new ArrayList<>();
    if (lists().filter(PieceLists::isStandardInput).count() > 1) {
      mistakes.add(
          Mistake.ofWish(
              "--made, --joined, --planned",
              MistakeCode.CONTRADICTS.about("-", "-"),
              "Two lists are to come from standard input",
              "Name one list with -"));
    }
    if (edged != null && !(edged.value() >= 0 && edged.value() <= ALL)) {
      mistakes.add(
          Mistake.ofWish(
              "--edged",
              MistakeCode.OUT_OF_RANGE.about(edged.value(), 0, ALL),
              Double.toString(edged.value()),
              "Give a number from 0 to 100"));
    }
    List<Mark.Work> works = new ArrayList<>();
    for (String work : worked) {
      Assigned.read("--worked", work, "Name yarns, such as r4c2=~,~,SND,~,~", mistakes)
          .flatMap(read -> Notes.rounds(read, mistakes).map(n -> new Mark.Work(read.place(), n)))
          .ifPresent(works::add);
    }
    List<Mark.Count> counts = new ArrayList<>();
    for (String count : left) {
      Assigned.read("--left", count, "Name a yarn and an amount, such as REE=85g", mistakes)
          .flatMap(read -> count(read, mistakes))
          .ifPresent(counts::add);
    }
    List<Mark.Rounds> someRounds = new ArrayList<>();
    for (String some : rounds) {
      Assigned.read("--rounds", some, "Name pieces and a number, such as squares=2", mistakes)
          .flatMap(read -> rounds(read, mistakes))
          .ifPresent(someRounds::add);
    }
    List<Mark.Step> doneSteps = new ArrayList<>();
    steps.forEach(step -> step(step, mistakes).ifPresent(doneSteps::add));
    List<Mark.OfYarn> yarns = yarns(mistakes);
    Optional<Mark.Hand> inHand = hand(mistakes);
    Optional<Mark.Day> day = day(mistakes);
    if (!mistakes.isEmpty()) {
      throw new Refusal("", mistakes);
    }
    Optional<Mark.Edged> part =
        Optional.ofNullable(edged).map(percent -> new Mark.Edged("--edged", percent.value()));
    return Mark.NONE
        .withStates(states(terminal))
        .withRounds(someRounds)
        .withSteps(doneSteps)
        .withWorked(works)
        .withCounts(counts)
        .withEdged(part)
        .withYarns(yarns)
        .withHand(inHand)
        .withOn(day);
  }

  private List<Mark.OfYarn> yarns(List<Mistake> mistakes) {
    List<Mark.OfYarn> yarns = new ArrayList<>();
    added.forEach(text -> NewYarn.read("--add", text, mistakes).ifPresent(yarns::add));
    for (String lot : lots) {
      Assigned.read("--lot", lot, "Name the new lot and its shade, such as SL3=SLO", mistakes)
          .map(read -> new Mark.Lot(read.place(), read.left(), read.right()))
          .ifPresent(yarns::add);
    }
    gone.forEach(code -> yarns.add(new Mark.Gone("--gone " + code, code.strip())));
    for (String more : bought) {
      Assigned.read("--bought", more, "Name a yarn and an amount, such as SLO=2balls", mistakes)
          .flatMap(read -> bought(read, mistakes))
          .ifPresent(yarns::add);
    }
    uncounted.forEach(code -> yarns.add(new Mark.Uncounted("--uncount " + code, code.strip())));
    return yarns;
  }

  private static Optional<Mark.Bought> bought(Assigned read, List<Mistake> mistakes) {
    Optional<BigDecimal> balls =
        Quantity.parse(read.right())
            .filter(amount -> BALLS.contains(amount.unit()))
            .map(Quantity::number)
            .filter(number -> number.signum() > 0 && number.compareTo(MOST_BALLS) <= 0);
    Optional<YarnAmount> loose = YarnAmount.read(read.right()).filter(MarkOptions::some);
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

  private static Optional<Mark.Rounds> rounds(Assigned read, List<Mistake> mistakes) {
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

  private static Optional<Mark.Step> step(String text, List<Mistake> mistakes) {
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

  private Optional<Mark.Hand> hand(List<Mistake> mistakes) {
    if (hand == null) {
      return Optional.empty();
    }
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

  private Optional<Mark.Day> day(List<Mistake> mistakes) {
    if (on == null) {
      return Optional.of(new Mark.Day("today's date", LocalDate.now()));
    }
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

  private List<Mark.State> states(Terminal terminal) {
    List<Mark.State> states = new ArrayList<>();
    Map<PieceState, List<String>> all = new TreeMap<>();
    all.put(PieceState.PLANNED, planned);
    all.put(PieceState.MADE, made);
    all.put(PieceState.JOINED, joined);
    all.forEach(
        (state, lists) ->
            lists.forEach(
                list ->
                    states.add(
                        new Mark.State(
                            "--" + state.word(), state, PieceLists.read(list, terminal)))));
    return states;
  }

  private Optional<Mark.Count> count(Assigned read, List<Mistake> mistakes) {
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
