package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import lozengy.cli.file.FolderTarget;
import lozengy.cli.file.Inputs;
import lozengy.cli.file.Target;
import lozengy.cli.file.WholeFiles;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.yarn.ShadeNeed;
import lozengy.model.yarn.Sized;
import lozengy.report.Json;
import lozengy.report.need.SizeLines;
import lozengy.report.tables.SizesTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Says what one motif set and palette takes in several sizes. */
@Command(
    description = {
      "Says what the motifs and the palette of a brief take in several sizes: pieces, finished size,"
          + " yarn, balls, hours and price of each, and the balls of each shade.",
      "",
      "SIZE is a name with squares across x down, or with a finished size, to which the nearest"
          + " layout is found. cushion, lap, throw and bed alone stand for about 40 x 40, 90 x 120,"
          + " 130 x 170 and 200 x 220 cm; all four if no size is named. What the brief knows of"
          + " single pieces and of a pile is left out."
    },
    footer = {
      "",
      "Examples:",
      "  lozengy sizes throw.yaml",
      "  lozengy sizes throw.yaml cushion lap=4x6 \"throw=about 120 x 160 cm\" bed=72x84in",
      "  lozengy sizes throw.yaml lap throw --briefs sizes    then: lozengy solve sizes/lap.json"
    })
final class SizesCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Mixin private FileArgument file;

  @Parameters(index = "1..*", paramLabel = "SIZE", description = "A size that is wanted.")
  private List<String> wishes = List.of();

  @Option(
      names = "--briefs",
      paramLabel = "FOLDER",
      description =
          "Write the brief of each size into this folder, with as many balls of each shade as its"
              + " share takes.")
  private String briefs;

  @Option(names = "--csv", description = "Print a row for each size as CSV.")
  private boolean csv;

  @Option(names = "--overwrite", description = "Replace files that are there already.")
  private boolean overwrite;

  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  SizesCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    if (csv && json.wanted()) {
      throw new Refusal(
          "",
          List.of(
              Mistake.ofWish(
                  "--csv",
                  MistakeCode.CONTRADICTS.about("--csv", "--json"),
                  "It stands beside --json",
                  "Leave one of them out")));
    }
    Brief brief = Inputs.blanket(Inputs.readWithoutStock(file.source(), terminal)).brief();
    KeepBack.expectSome(brief, file.source());
    List<Sized> sizes = SizeWish.of(brief, wishes.isEmpty() ? SizeWish.usual() : wishes, "SIZE");
    Map<String, Blanket> blankets = SizeWish.blankets(sizes);
    List<String> written = briefs == null ? List.of() : write(sizes, blankets);
    SizeLines lines = SizeLines.of(blankets);
    if (json.wanted()) {
      terminal
          .out()
          .println(
              Json.result(
                  "sizes-result",
                  Json.object(
                      "title",
                      brief.title(),
                      "sizes",
                      lines.data(),
                      "briefs",
                      written.isEmpty() ? Optional.empty() : written)));
    } else if (csv) {
      terminal.write(SizesTable.csv(lines.data()).getBytes(StandardCharsets.UTF_8));
    } else {
      lines.lines().forEach(terminal.out()::println);
      written.forEach(name -> terminal.out().println("Wrote " + name));
    }
    return ExitCode.DONE.code();
  }

  private List<String> write(List<Sized> sizes, Map<String, Blanket> blankets) {
    Path folder = Target.of(briefs, overwrite).file().orElse(Path.of(briefs));
    FolderTarget target =
        new FolderTarget(Optional.of(folder), new WholeFiles(overwrite).namedBy("--briefs"));
    Map<String, byte[]> files = new LinkedHashMap<>();
    for (Sized size : sizes) {
      Brief stocked = size.stocked(ShadeNeed.of(blankets.get(size.name())));
      files.put(size.name() + ".json", BriefWriter.text(stocked).getBytes(StandardCharsets.UTF_8));
    }
    target.expect(files.keySet());
    target.write(terminal, files);
    return files.keySet().stream().map(name -> folder.resolve(name).toString()).toList();
  }
}
