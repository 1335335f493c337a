package lozengy.examples;

import java.nio.file.Path;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.BriefReader;

/** The example briefs, as they lie in this module's folder. */
final class ExampleBriefs {

  private ExampleBriefs() {}

  /** A file of the examples. */
  static Path file(String name) {
    return Path.of(System.getProperty("basedir", "."), name);
  }

  /** An example brief, read and made ready. */
  static Blanket blanket(String name) {
    return Blanket.of(BriefReader.read(file(name + ".yaml")));
  }
}
