package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;
import lozengy.cli.file.FileNames;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Source;
import lozengy.cli.file.Target;
import lozengy.cli.file.WholeFiles;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.blanket.Blanket;
import lozengy.model.input.MistakeCode;
import lozengy.report.Json;
import lozengy.report.gallery.GalleryPage;
import lozengy.report.gallery.GalleryText;
import lozengy.solver.SolveResult;
import lozengy.solver.Solving;
import lozengy.solver.gallery.Exhibit;
import lozengy.solver.gallery.Gallery;
import lozengy.solver.gallery.GalleryLook;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Sets looks out to choose from. */
@Command(
    description = {
      "Solves a brief under several looks and sets them out on one page, to choose by eye.",
      "",
      "The page, throw-gallery.html, has the pictures first, then what each look costs the parts"
          + " that the brief asks for. Each look is an arrangement of its own beside it,"
          + " throw-ordered.arrangement.json and so on, from which all commands go on. A look that"
          + " the brief cannot hold is told with the reason.",
      "",
      "Looks: scattered, ordered, fade-right, fade-down, fade-diagonal, from-centre, calm, lively,"
          + " mirrored, half-turn, zones.",
    },
    footer = {
      "",
      "Examples:",
      "  lozengy gallery throw.yaml",
      "  lozengy gallery throw.yaml --looks ordered,fade-down,calm --moves 2000000"
    })
final class GalleryCommand implements Callable<Integer> {

  private final Terminal terminal;
  private final Solving solving;

  @Mixin private FileArgument file;

  @Option(
      names = "--looks",
      paramLabel = "LOOK",
      split = ",",
      description = "Only these looks, apart by commas; all if not said.")
  private List<GalleryLook> looks;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Where the random source starts; 1 if not said.")
  private Long seed;

  @Option(
      names = "--moves",
      paramLabel = "N",
      description = "Try that many moves for each look at most; by the blanket's size if not said.")
  private Long moves;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description = "Use that many threads; all cores if not said.")
  private Integer threads;

  @Mixin private OutputOptions output;
  @Mixin private WalkersOption walkers;
  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  GalleryCommand(Terminal terminal, Solving solving) {
    this.terminal = terminal;
    this.solving = solving;
  }

  @Override
  public Integer call() {
    SolveRequest request = SolveRequest.of(seed, moves, walkers.wanted(), null, threads);
    Source source = file.source();
    Path page = page(source);
    List<GalleryLook> all = new ArrayList<>(List.of(GalleryLook.AS_ASKED));
    all.addAll(looks == null ? List.of(GalleryLook.values()) : looks);
    Map<GalleryLook, Path> places = new EnumMap<>(GalleryLook.class);
    all.forEach(look -> places.put(look, place(page, look)));
    WholeFiles files = output.files();
    files.expect(page);
    places.values().forEach(files::expect);
    Blanket blanket = Inputs.blanket(Inputs.read(source, terminal));
    BooleanSupplier stop = terminal.stopSignal().listen();
    Gallery gallery = Gallery.of(blanket, all, solving, request.options(stop, progress -> {}));
    write(gallery, page, places, files);
    return code(gallery).code();
  }

  private Path page(Source source) {
    Target target =
        output.targetOr(
            () ->
                source.isStandardInput()
                    ? Target.standardOutput()
                    : new Target(
                        Optional.of(FileNames.beside(source.path(), "-gallery.html")),
                        output.files()));
    return target
        .file()
        .orElseThrow(
            () ->
                Refusal.of(
                    "-o",
                    MistakeCode.OPTION_MISSING.about("-o"),
                    "Several files for standard output",
                    "Name the page's file with -o"));
  }

  /** {@code throw-ordered.arrangement.json} beside {@code throw-gallery.html}. */
  private static Path place(Path page, GalleryLook look) {
    String stem =
        String.valueOf(page.getFileName())
            .replaceFirst("\\.html?$", "")
            .replaceFirst("-gallery$", "");
    return page.resolveSibling(stem + "-" + look.word() + FileNames.ARRANGEMENT);
  }

  private void write(Gallery gallery, Path page, Map<GalleryLook, Path> places, WholeFiles files) {
    Map<GalleryLook, String> names = new EnumMap<>(GalleryLook.class);
    Map<Path, byte[]> contents = new LinkedHashMap<>();
    for (Exhibit exhibit : gallery.exhibits()) {
      exhibit
          .arrangement()
          .ifPresent(
              found -> {
                Path place = places.get(exhibit.look());
                names.put(exhibit.look(), place.toString());
                contents.put(place, utf8(ArrangementWriter.text(found)));
              });
    }
    contents.put(page, utf8(GalleryPage.html(gallery, names)));
    files.write(contents);
    GalleryText text = new GalleryText(gallery, names);
    if (json.wanted()) {
      Map<String, Object> data = new LinkedHashMap<>(text.data());
      data.put("written", page.toString());
      terminal.out().println(Json.result("gallery-result", data));
      return;
    }
    text.lines().forEach(terminal.out()::println);
    terminal.out().println("Wrote " + page);
  }

  /** Done where anything was found; else what the brief as it is came to. */
  private static ExitCode code(Gallery gallery) {
    List<Exhibit> all = gallery.exhibits();
    if (all.stream().anyMatch(each -> each.arrangement().isPresent())) {
      return ExitCode.DONE;
    }
    boolean impossible =
        !all.isEmpty()
            && all.get(0).result().filter(SolveResult.Impossible.class::isInstance).isPresent();
    return impossible ? ExitCode.IMPOSSIBLE : ExitCode.UNFINISHED;
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
