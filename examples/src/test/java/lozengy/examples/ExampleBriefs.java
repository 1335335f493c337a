package lozengy.examples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.reading.BriefReader;

/** The example briefs, as they lie in this module's folder. */
final class ExampleBriefs {

  private static final String ENDING = ".yaml";

  private ExampleBriefs() {}

  /** A file of the examples. */
  static Path file(String name) {
    return Path.of(System.getProperty("basedir", "."), name);
  }

  /** The names of all example briefs in the folder, sorted. */
  static List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(file(""))) {
      return files
          .map(each -> each.getFileName().toString())
          .filter(each -> each.endsWith(ENDING))
          .map(each -> each.substring(0, each.length() - ENDING.length()))
          .sorted()
          .toList();
    }
  }

  /** An example brief, read and made ready. */
  static Blanket blanket(String name) {
    return Blanket.of(BriefReader.read(file(name + ENDING)));
  }
}
