package lozengy.benchmarks;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import lozengy.benchmarks.record.MarkdownTables;
import lozengy.benchmarks.record.Results;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Makes the tables of documents from raw results. */
@Command(
    name = "tables",
    mixinStandardHelpOptions = true,
    description = "Makes Markdown tables from results files.")
public final class Tables implements Callable<Integer> {

  @Parameters(arity = "1..*", description = "Results files, in the order of their tables.")
  private List<Path> files;

  @Option(
      names = "--into",
      description = {
        "A document: what stands between its lines <!-- tables --> and <!-- /tables --> is replaced."
            + " Without it the tables are printed."
      })
  private Path document;

  @Override
  public Integer call() throws IOException {
    StringBuilder text = new StringBuilder();
    for (Path file : files) {
      text.append(MarkdownTables.of(file.getFileName().toString(), Results.read(file)));
    }
    if (document == null) {
      System.out.print(text);
    } else {
      String before = Files.readString(document);
      Files.writeString(document, MarkdownTables.replace(before, text.toString()));
    }
    return 0;
  }
}
