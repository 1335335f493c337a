package lozengy.cli.command;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import lozengy.cli.file.FolderTarget;
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
import lozengy.report.pack.SizePack;
import lozengy.report.pack.SizePacksText;
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
      "Whether a smaller pack would do is proved where it can be, and otherwise said to be open.",
      "",
      "With --size there is a pack for each size, or with --one-for-all one pack from which"
          + " whichever size can be worked by itself. 'lozengy sizes' tells what a size may be."
    },
    footer = {
      "",
      "Examples:",
      "  lozengy pack throw.yaml",
      "  lozengy pack throw.yaml --least price --within 1 --bend 20%%",
      "  lozengy pack throw.yaml --score 85 -o packed.arrangement.json",
      "  lozengy pack throw.yaml --csv > pack.csv",
      "  lozengy pack throw.yaml --size cushion --size lap=4x6 --one-for-all --looser 8%% -o packs"
    })
final class PackCommand implements Callable<Integer> {

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
      names = "--looser",
      paramLabel = "PERCENT",
      description =
          "By how much more yarn than is reckoned hands may take; if not said, what the brief says"
              + " of whoever buys it, or else how far it says that yarn varies.")
  private Converters.Percent looser;

  @Option(
      names = "--size",
      paramLabel = "SIZE",
      description =
          "Find the pack of this size, such as lap, lap=4x6 or lap=90x120cm; may be given again.")
  private List<String> wishes = List.of();

  @Option(
      names = "--one-for-all",
      description = "Find one pack from which whichever of the sizes can be worked.")
  private boolean oneForAll;

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

  @Option(
      names = "--csv",
      description = "Print the pack as CSV, a row for each shade, size by size.")
  private boolean csv;

  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  PackCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    PackProgress progress = new PackProgress(terminal);
    PackOptions options = options(progress);
    return wishes.isEmpty() ? one(options, progress) : sizes(options, progress);
  }

  private int one(PackOptions options, PackProgress progress) {
    Optional<Target> target = output.names().map(each -> Target.of(each, output.overwrite()));
    target.ifPresent(Target::expect);
    Blanket blanket = packable();
    Packing packing = progress.during(() -> Packer.find(blanket, options));
    if (packing instanceof Packed packed && target.isPresent()) {
      target.get().write(terminal, text(packed));
    }
    Optional<Path> written = target.flatMap(Target::file).filter(f -> packing instanceof Packed);
    if (target.isEmpty() || target.get().file().isPresent() || !(packing instanceof Packed)) {
      tell(blanket, packing, written);
    }
    return code(packing).code();
  }

  private int sizes(PackOptions options, PackProgress progress) {
    Optional<FolderTarget> target =
        output.names().map(each -> new FolderTarget(Target.of(each, false).file(), output.files()));
    Map<String, Blanket> blankets =
        SizeWish.blankets(SizeWish.of(packable().brief(), wishes, "--size"));
    target.ifPresent(folder -> folder.expect(blankets.keySet().stream().map(this::file).toList()));
    List<Blanket> each = List.copyOf(blankets.values());
    List<Packing> packings =
        progress.during(
            () ->
                oneForAll
                    ? Packer.findShared(each, options)
                    : each.stream().map(blanket -> Packer.find(blanket, options)).toList());
    List<SizePack> sizes = new ArrayList<>();
    Map<String, byte[]> files = new LinkedHashMap<>();
    blankets.forEach(
        (name, blanket) -> {
          SizePack size = new SizePack(name, blanket, packings.get(sizes.size()));
          sizes.add(size);
          size.packed().ifPresent(packed -> files.put(file(name), text(packed)));
        });
    if (!files.isEmpty()) {
      target.ifPresent(folder -> folder.write(terminal, files));
    }
    if (target.isEmpty() || target.get().folder().isPresent() || files.isEmpty()) {
      tell(sizes);
      target
          .flatMap(FolderTarget::folder)
          .filter(folder -> !json.wanted() && !csv)
          .ifPresent(
              folder ->
                  files.keySet().stream()
                      .map(name -> "Wrote " + folder.resolve(name))
                      .forEach(terminal.out()::println));
    }
    List<ExitCode> codes = packings.stream().map(PackCommand::code).toList();
    return Stream.of(ExitCode.IMPOSSIBLE, ExitCode.UNFINISHED)
        .filter(codes::contains)
        .findFirst()
        .orElse(ExitCode.DONE)
        .code();
  }

  private String file(String size) {
    return size + ".arrangement.json";
  }

  private static byte[] text(Packed packed) {
    return ArrangementWriter.text(packed.arrangement()).getBytes(StandardCharsets.UTF_8);
  }

  private Blanket packable() {
    Blanket blanket = Inputs.blanket(Inputs.readWithoutStock(file.source(), terminal));
    expectPackable(blanket);
    return blanket;
  }

  private PackOptions options(PackProgress progress) {
    SolveRequest request = SolveRequest.of(seed, moves, null, null, threads);
    List<Mistake> mistakes = new ArrayList<>();
    outside("--score", score).ifPresent(mistakes::add);
    outside("--within", within).ifPresent(mistakes::add);
    if (oneForAll && wishes.isEmpty()) {
      mistakes.add(
          Mistake.ofWish(
              "--one-for-all",
              MistakeCode.OPTION_MISSING.about("--size"),
              "It is about several sizes, and none is named",
              "Name them with --size"));
    }
    outside("--looser", looser == null ? null : looser.value()).ifPresent(mistakes::add);
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
    SolveOptions solving = request.options(terminal.stopSignal().listen(), unheard -> {});
    return new PackOptions(
        goal,
        score == null ? OptionalDouble.empty() : OptionalDouble.of(score),
        within == null ? PackOptions.USUAL_MARGIN : within,
        bend == null ? PackOptions.USUAL_BEND : bend.value(),
        Optional.ofNullable(looser).map(percent -> BigDecimal.valueOf(percent.value())),
        solving.seed(),
        solving.moves(),
        solving.threads(),
        solving.stop(),
        progress);
  }

  private static Optional<Mistake> outside(String option, Double points) {
    return points == null || points >= 0 && points <= 100
        ? Optional.empty()
        : Optional.of(
            Mistake.ofWish(
                option,
                MistakeCode.OUT_OF_RANGE.about(points, 0, 100),
                points.toString(),
                "Give a number from 0 to 100"));
  }

  /** Whole balls can be chosen of what has a put-up, the cheapest of what has a price. */
  private void expectPackable(Blanket blanket) {
    List<Mistake> mistakes = new ArrayList<>();
    KeepBack.mistake(blanket.brief()).ifPresent(mistakes::add);
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

  private void tell(List<SizePack> sizes) {
    if (json.wanted()) {
      Map<String, Object> data = PackData.of(sizes, oneForAll, goal);
      terminal.out().println(Json.result("pack-sizes-result", data));
    } else if (csv && sizes.stream().allMatch(size -> size.packed().isPresent())) {
      terminal.write(PackTable.csv(sizes).getBytes(StandardCharsets.UTF_8));
    } else {
      SizePacksText.lines(sizes, oneForAll, goal).forEach(terminal.out()::println);
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
