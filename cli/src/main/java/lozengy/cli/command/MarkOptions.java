package lozengy.cli.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.YarnAmount;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.progress.Mark;
import picocli.CommandLine.Option;

/** The options that say what has come about. */
final class MarkOptions {

  /** Nothing needs no unit. */
  private static final String NOTHING = "0";

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
      names = "--worked",
      paramLabel = "PIECES=YARNS",
      description =
          "What pieces were really worked in, the centre first, ~ as planned: r4c2=~,~,SND,~,~."
              + " After .. yarns count from the border. A planned piece becomes made. Repeatable.")
  private List<String> worked = List.of();

  @Option(
      names = "--left",
      paramLabel = "YARN=AMOUNT",
      description =
          "What is left of a yarn, such as REE=85g, in g, oz, m or yd: from now on the truth. What"
              + " is worked by now no longer counts against it. Repeatable.")
  private List<String> left = List.of();

  @Option(
      names = "--edged",
      paramLabel = "PERCENT",
      description =
          "With --left of the edging's yarn: the part of the outline that is edged already, in"
              + " per cent; as counted before, or 0, if not said.")
  private Double edged;

  /** Whether anything is to be marked. */
  boolean any() {
    return Stream.of(made, joined, planned, worked, left).anyMatch(list -> !list.isEmpty())
        || edged != null;
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
    if (edged != null && !(edged >= 0 && edged <= ALL)) {
      mistakes.add(
          Mistake.ofWish(
              "--edged",
              MistakeCode.OUT_OF_RANGE.about(edged, 0, ALL),
              edged.toString(),
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
    if (!mistakes.isEmpty()) {
      throw new Refusal("", mistakes);
    }
    Optional<Mark.Edged> part =
        Optional.ofNullable(edged).map(percent -> new Mark.Edged("--edged", percent));
    return new Mark(states(terminal), works, counts, part);
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
              "Give a number and g, oz, m or yd, such as REE=85g; more yarns with --left again"));
      return Optional.empty();
    }
    return Optional.of(new Mark.Count(read.place(), read.left(), amount.get()));
  }
}
