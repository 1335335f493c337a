package lozengy.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import lozengy.benchmarks.brief.BriefSet;
import lozengy.benchmarks.brief.BriefSpec;
import lozengy.benchmarks.brief.PlantedBrief;
import lozengy.model.brief.BriefWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the generated briefs as files. */
@Command(
    name = "briefs",
    mixinStandardHelpOptions = true,
    description = "Lists the generated briefs, or writes them as files.")
final class DumpBriefs implements Callable<Integer> {

  @Option(names = "--into", description = "Folder to write brief files into.")
  private Path folder;

  @Parameters(arity = "0..*", description = "Names of briefs; by default the whole set.")
  private List<String> names = List.of();

  @Override
  public Integer call() throws IOException {
    List<BriefSpec> specs =
        names.isEmpty() ? BriefSet.all() : names.stream().map(BriefSet::named).toList();
    for (BriefSpec spec : specs) {
      PlantedBrief made = PlantedBrief.of(spec);
      System.out.printf(
          "%-16s %6d pieces, %s rounds, %d border yarns, %d yarns, %s %% slack, %s%n",
          spec.name(),
          made.blanket().pieceCount(),
          spec.rounds(),
          spec.borderYarns(),
          made.blanket().yarnCount(),
          spec.slackPercent(),
          spec.stock());
      if (folder != null) {
        write(folder, made);
      }
    }
    return 0;
  }

  /** Writes a brief's file into a folder. */
  static Path write(Path folder, PlantedBrief made) throws IOException {
    Files.createDirectories(folder);
    Path file = folder.resolve(made.spec().name() + ".json");
    Files.writeString(file, BriefWriter.text(made.blanket().brief()));
    return file;
  }
}
