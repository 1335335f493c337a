package lozengy.report;

/** Words of commands that are to be copied to a shell. */
public final class ShellWord {

  private ShellWord() {}

  /** A word as a shell takes it, on one line: within quotes where it needs them. */
  public static String of(String word) {
    return PlainText.oneLine(
        word.matches("[\\w./+=,-]+") ? word : "'" + word.replace("'", "'\\''") + "'");
  }
}
