package lozengy.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.brief.PieceState;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.progress.Mark;
import picocli.CommandLine.Option;

/** The options that say what has come about. */
final class MarkOptions {

  private static final double ALL = 100;

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
    List<Mark.Work> works =
        each(
            "--worked", worked, "Name yarns, such as r4c2=~,~,SND,~,~", mistakes, MarkReader::work);
    List<Mark.Count> counts =
        each(
            "--left",
            left,
            "Name a yarn and an amount, such as REE=85g",
            mistakes,
            MarkReader::count);
    List<Mark.Rounds> someRounds =
        each(
            "--rounds",
            rounds,
            "Name pieces and a number, such as squares=2",
            mistakes,
            MarkReader::rounds);
    List<Mark.Step> doneSteps = new ArrayList<>();
    steps.forEach(step -> MarkReader.step(step, mistakes).ifPresent(doneSteps::add));
    List<Mark.OfYarn> yarns = yarns(mistakes);
    Optional<Mark.Hand> inHand =
        Optional.ofNullable(hand).flatMap(text -> MarkReader.hand(text, mistakes));
    Optional<Mark.Day> day = MarkReader.day(Optional.ofNullable(on), mistakes);
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
    yarns.addAll(
        each(
            "--lot",
            lots,
            "Name the new lot and its shade, such as SL3=SLO",
            mistakes,
            (read, m) -> Optional.of(new Mark.Lot(read.place(), read.left(), read.right()))));
    gone.forEach(code -> yarns.add(new Mark.Gone("--gone " + code, code.strip())));
    yarns.addAll(
        each(
            "--bought",
            bought,
            "Name a yarn and an amount, such as SLO=2balls",
            mistakes,
            MarkReader::bought));
    uncounted.forEach(code -> yarns.add(new Mark.Uncounted("--uncount " + code, code.strip())));
    return yarns;
  }

  /** What an option's values of the form LEFT=RIGHT say, but those that cannot be read. */
  private static <T> List<T> each(
      String option,
      List<String> values,
      String remedy,
      List<Mistake> mistakes,
      BiFunction<Assigned, List<Mistake>, Optional<T>> reader) {
    return values.stream()
        .flatMap(value -> Assigned.read(option, value, remedy, mistakes).stream())
        .flatMap(read -> reader.apply(read, mistakes).stream())
        .toList();
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
}
