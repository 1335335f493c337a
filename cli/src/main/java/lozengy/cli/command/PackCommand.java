package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Target;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Yarn;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.report.Json;
import lozengy.report.pack.PackData;
import lozengy.report.pack.PackText;
import lozengy.report.tables.PackTable;
import lozengy.solver.SolveOptions;
import lozengy.solver.pack.PackGoal;
import lozengy.solver.pack.PackOptions;
import lozengy.solver.pack.Packer;
import lozengy.solver.pack.Packing;
import lozengy.solver.pack.Packing.Packed;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Finds the pack of whole balls that a blanket takes. */
@Command(
    description = {
      "Finds the pack that a blanket takes: whole balls of each shade, as few as can be found, from"
          + " which an arrangement almost as good as from plenty of yarn can be worked.",
      "",
      "What is at hand by the brief plays no part, and may be left out there. Shares bend, so that"
          + " fewer balls are begun; what is kept back is in the pack. Each pack is tried by planning"
          + " with exactly that, which takes a minute or more for a throw. The score is told with"
          + " leeway aside, for a pack is there to be used up.",
      "",
      "Whether a smaller pack would do is proved where it can be, and otherwise said to be open."
    },
    footer = {
      "",
      "Examples:",
      "  lozengy pack throw.yaml",
      "  lozengy pack throw.yaml --least price --within 1 --bend 20%%",
      "  lozengy pack throw.yaml --score 85 -o packed.arrangement.json",
      "  lozengy pack throw.yaml --csv > pack.csv"
    })
final class PackCommand implements Callable<Integer> {

  private static final double ALL = 100;

  private final Terminal terminal;

  @Mixin private FileArgument file;
  @Mixin private OutputOptions output;

  @Option(
      names = "--least",
      paramLabel = "WHAT",
      description = "What the pack is to have least of: balls, price or weight; balls if not said.")
  private PackGoal goal = PackGoal.BALLS;

  @Option(
      names = "--score",
      paramLabel = "POINTS",
      description = "What an arrangement from the pack must reach, leeway aside.")
  private Double score;

  @Option(
      names = "--within",
      paramLabel = "POINTS",
      description =
          "Without --score: how far it may be below the one from plenty of yarn; 2 points if not"
              + " said.")
  private Double within;

  @Option(
      names = "--bend",
      paramLabel = "PERCENT",
      description =
          "How much more or less than its share's length each shade may be used; 50 %% if not said.")
  private Converters.Percent bend;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Where the random source starts; 1 if not said.")
  private Long seed;

  @Option(
      names = "--moves",
      paramLabel = "N",
      description = "Try that many moves for each pack; by the blanket's size if not said.")
  private Long moves;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Use that many threads; all cores if not said.")
  private Integer threads;

  @Option(names = "--csv", description = "Print the pack as CSV, a row for each shade.")
  private boolean csv;

  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  PackCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    PackOptions options = options();
    Optional<Target> target = output.names().map(each -> Target.of(each, output.overwrite()));
    target.ifPresent(Target::expect);
    Blanket blanket = Inputs.blanket(Inputs.readWithoutStock(file.source(), terminal));
    expectPackable(blanket);
    Packing packing = Packer.find(blanket, options);
    if (packing instanceof Packed packed && target.isPresent()) {
      byte[] text = ArrangementWriter.text(packed.arrangement()).getBytes(StandardCharsets.UTF_8);
      target.get().write(terminal, text);
    }
    Optional<Path> written = target.flatMap(Target::file).filter(f -> packing instanceof Packed);
    if (target.isEmpty() || target.get().file().isPresent() || !(packing instanceof Packed)) {
      tell(blanket, packing, written);
    }
    return code(packing).code();
  }

  private PackOptions options() {
    SolveRequest request = SolveRequest.of(seed, moves, null, threads);
    List<Mistake> mistakes = new ArrayList<>();
    outside("--score", score).ifPresent(mistakes::add);
    outside("--within", within).ifPresent(mistakes::add);
    if (csv && json.wanted()) {
      mistakes.add(
          Mistake.ofWish(
              "--csv",
              MistakeCode.CONTRADICTS.about("--csv", "--json"),
              "It stands beside --json",
              "Leave one of them out"));
    }
    if (!mistakes.isEmpty()) {
      throw new Refusal("", mistakes);
    }
    SolveOptions solving = request.options(terminal.stopSignal().listen(), progress -> {});
    return new PackOptions(
        goal,
        score == null ? OptionalDouble.empty() : OptionalDouble.of(score),
        within == null ? PackOptions.USUAL_MARGIN : within,
        bend == null ? PackOptions.USUAL_BEND : bend.value(),
        solving.seed(),
        solving.moves(),
        solving.threads(),
        solving.stop());
  }

  private static Optional<Mistake> outside(String option, Double points) {
    return points == null || points >= 0 && points <= ALL
        ? Optional.empty()
        : Optional.of(
            Mistake.ofWish(
                option,
                MistakeCode.OUT_OF_RANGE.about(points, 0, 100),
                points.toString(),
                "Give a number of points from 0 to 100"));
  }

  /** Whole balls can be chosen of what has a put-up, the cheapest of what has a price. */
  private void expectPackable(Blanket blanket) {
    List<Mistake> mistakes = new ArrayList<>();
    if (blanket.brief().rules().keepBackPercent() >= ALL) {
      mistakes.add(
          Mistake.ofWhole(
              MistakeCode.OUT_OF_RANGE.about(100, null, null, "%"),
              "keep-back is 100 %: no yarn may be used at all",
              "Keep back less"));
    }
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      Yarn each = blanket.yarn(yarn);
      if (!each.gone() && each.ball().isEmpty()) {
        mistakes.add(lacks(yarn, "ball", each.code() + " has no put-up, so no balls of it can be"));
      } else if (!each.gone() && goal == PackGoal.PRICE && each.price().isEmpty()) {
        mistakes.add(lacks(yarn, "price", each.code() + " has no price, so no sums of it can be"));
      }
    }
    if (!mistakes.isEmpty()) {
      throw new Refusal(file.source().label(), mistakes);
    }
  }

  private static Mistake lacks(int yarn, String field, String found) {
    String remedy =
        field.equals("ball")
            ? "Add what is on a full ball, such as ball: { grams: 50, metres: 120 }"
            : "Add what a ball costs, such as price: 6.50 EUR";
    return new Mistake(
        BriefPath.of("yarns").item(yarn).field(field),
        0,
        MistakeCode.FIELD_MISSING.about(field),
        found + " counted",
        remedy);
  }

  private void tell(Blanket blanket, Packing packing, Optional<Path> written) {
    if (json.wanted()) {
      Map<String, Object> data = PackData.of(blanket, goal, packing);
      written.ifPresent(path -> data.put("arrangement", path.toString()));
      terminal.out().println(Json.result("pack-result", data));
    } else if (csv && packing instanceof Packed packed) {
      terminal.write(PackTable.csv(blanket, packed).getBytes(StandardCharsets.UTF_8));
    } else {
      PackText.lines(blanket, goal, packing).forEach(terminal.out()::println);
      written.ifPresent(path -> terminal.out().println("Wrote " + path));
    }
  }

  private static ExitCode code(Packing packing) {
    if (packing instanceof Packed) {
      return ExitCode.DONE;
    }
    boolean proved =
        packing instanceof Packing.Impossible
            || packing instanceof Packing.OutOfReach beyond && beyond.proved();
    return proved ? ExitCode.IMPOSSIBLE : ExitCode.UNFINISHED;
  }
}
