package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import lozengy.cli.Run.Result;

/** Small briefs and arrangements on disk. */
public final class Briefs {

  /** Moves that suffice for the small brief. */
  public static final String MOVES = "3000";

  private static String solved;

  private Briefs() {}

  /** Writes a brief of 2 x 2 on point to {@code small.yaml}. */
  public static String write(Path folder) {
    String file = folder.resolve("small.yaml").toString();
    assertEquals(0, Run.of("new", "--across", "2", "--down", "2", "-o", file).code());
    return file;
  }

  /** Writes that brief and solves it to {@code small.arrangement.json}. */
  public static String solve(Path folder) {
    Result result = Run.of("solve", write(folder), "--moves", MOVES, "--threads", "1");
    assertEquals(0, result.code(), result.err());
    return folder.resolve("small.arrangement.json").toString();
  }

  /** Writes the same, solved but once, for tests that do not ask how it is solved. */
  public static String solved(Path folder) {
    synchronized (Briefs.class) {
      if (solved == null) {
        solved = text(solve(folder));
      } else {
        write(folder);
      }
    }
    return write(folder, "small.arrangement.json", solved);
  }

  /** Reads a file. */
  public static String text(String file) {
    try {
      return Files.readString(Path.of(file));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Writes a file. */
  public static String write(Path folder, String name, String text) {
    try {
      return Files.write(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8)).toString();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
