package lozengy.model.input;

/** Reads YAML and JSON into one kind of tree. */
public final class TreeReader {

  private TreeReader() {}

  /**
   * Reads a text. Mistakes that can be read past, such as a field given twice, are collected.
   *
   * @param source the text
   * @param mistakes where mistakes go
   * @return the root
   * @throws InputException with all mistakes so far if the text is empty, not well formed, nested
   *     too deep or holds too many values
   */
  public static Node read(SourceText source, Mistakes mistakes) {
    TreeBuilder builder = new TreeBuilder(mistakes);
    if (source.text().isBlank()) {
      throw mistakes.fatal(
          0, MistakeCode.EMPTY_INPUT.about(), "The input is empty", TreeBuilder.REMEDY_EMPTY);
    }
    return source.json()
        ? JsonTree.read(source, builder, mistakes)
        : YamlTree.read(source, builder, mistakes);
  }
}
