package lozengy.model.input;

import java.util.ArrayList;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;

/** Reads YAML through a streaming parser. One document, without anchors, aliases and tags. */
final class YamlTree {

  private static final int MOST_LINE_CHARACTERS = 100_000;

  private final ParserImpl parser;
  private final TreeBuilder builder;
  private final Mistakes mistakes;

  private YamlTree(ParserImpl parser, TreeBuilder builder) {
    this.parser = parser;
    this.builder = builder;
    this.mistakes = builder.mistakes();
  }

  static Node read(SourceText source, TreeBuilder builder, Mistakes mistakes) {
    refuseLongLines(source.text(), mistakes);
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(SourceText.MOST_YAML_BYTES);
    try {
      StreamReader reader = new StreamReader(source.text());
      return new YamlTree(new ParserImpl(reader, options), builder).document();
    } catch (MarkedYAMLException e) {
      int line = e.getProblemMark() == null ? 0 : e.getProblemMark().getLine() + 1;
      int column = e.getProblemMark() == null ? 1 : e.getProblemMark().getColumn() + 1;
      String context = e.getContext() == null ? "" : e.getContext() + ", ";
      throw mistakes.fatal(
          line,
          MistakeCode.SYNTAX.about("YAML"),
          "This is not YAML: " + context + e.getProblem(),
          "Check indentation, colons, brackets and quotes near column "
              + column
              + (source.text().matches("(?s).*:\\s#[0-9a-fA-F]{6}.*")
                  ? "; a colour such as \"#2c2a29\" needs quotes, a plain # begins a comment"
                  : ""));
    } catch (ReaderException e) {
      int line =
          1 + (int) source.text().chars().limit(e.getPosition()).filter(c -> c == '\n').count();
      throw mistakes.fatal(
          line,
          MistakeCode.SYNTAX.about("YAML"),
          String.format("This is not YAML: it holds the character U+%04X", e.getCodePoint()),
          "Take the character out");
    } catch (YAMLException e) {
      throw mistakes.fatal(
          0,
          MistakeCode.SYNTAX.about("YAML"),
          "This is not YAML: " + e.getMessage(),
          "Mend the YAML");
    }
  }

  /** The parser's time grows with the square of a line's longest word. */
  private static void refuseLongLines(String text, Mistakes mistakes) {
    int line = 1;
    int start = 0;
    for (int end = text.indexOf('\n'); start < text.length(); end = text.indexOf('\n', start)) {
      int length = (end < 0 ? text.length() : end) - start;
      if (length > MOST_LINE_CHARACTERS) {
        throw mistakes.fatal(
            line,
            MistakeCode.TOO_LARGE.about("line", MOST_LINE_CHARACTERS, length),
            "The line holds " + Words.number(length) + " characters",
            "Keep a line of YAML below " + Words.number(MOST_LINE_CHARACTERS) + " characters");
      }
      start += length + 1;
      line++;
    }
  }

  private Node document() {
    parser.getEvent(); // the stream's start
    if (parser.checkEvent(Event.ID.StreamEnd)) {
      throw mistakes.fatal(
          0,
          MistakeCode.EMPTY_INPUT.about(),
          "The input holds nothing but comments",
          TreeBuilder.REMEDY_EMPTY);
    }
    tellDirectives((DocumentStartEvent) parser.getEvent());
    Node root = value(0);
    parser.getEvent(); // the document's end
    if (!parser.checkEvent(Event.ID.StreamEnd)) {
      mistakes.add(
          BriefPath.ROOT,
          line(parser.peekEvent()),
          MistakeCode.UNSUPPORTED.about("documents"),
          "A second YAML document begins here",
          "Keep one brief in a file, without a further line ---");
    }
    return root;
  }

  private void tellDirectives(DocumentStartEvent start) {
    if (start.getTags() != null && !start.getTags().isEmpty()) {
      mistakes.add(
          BriefPath.ROOT,
          line(start),
          MistakeCode.UNSUPPORTED.about("tag"),
          "YAML tags are declared",
          "Take the %TAG line out");
    }
  }

  /** The next value; a container's line is that of its field, if that has one. */
  private Node value(int fieldLine) {
    Event event = parser.getEvent();
    int line = line(event);
    if (event instanceof AliasEvent alias) {
      mistakes.add(
          builder.path(),
          line,
          MistakeCode.UNSUPPORTED.about("alias"),
          "The alias *" + alias.getAnchor() + " stands for another part of the file",
          "Write that part out here");
      return new Node.Broken(line);
    }
    tellAnchor((NodeEvent) event);
    int containerLine = fieldLine > 0 ? fieldLine : line;
    if (event instanceof ScalarEvent scalar) {
      tellTag(scalar.getTag(), line);
      boolean plain = scalar.getScalarStyle() == ScalarStyle.PLAIN;
      return builder.scalar(line, scalar.getValue(), !plain);
    }
    if (event instanceof SequenceStartEvent start) {
      tellTag(start.getTag(), line);
      return items(containerLine);
    }
    tellTag(((MappingStartEvent) event).getTag(), line);
    return mapping(containerLine);
  }

  private Node items(int line) {
    builder.enter(line);
    List<Node> items = new ArrayList<>();
    while (!parser.checkEvent(Event.ID.SequenceEnd)) {
      builder.step(items.size());
      items.add(value(0));
    }
    parser.getEvent();
    return builder.items(line, items);
  }

  private Node mapping(int line) {
    builder.enter(line);
    List<Node.Field> fields = new ArrayList<>();
    while (!parser.checkEvent(Event.ID.MappingEnd)) {
      builder.step(null);
      Node key = value(0);
      String name = key instanceof Node.Scalar scalar ? scalar.text() : "";
      builder.step(key instanceof Node.Scalar ? name : null);
      Node value = value(key.line());
      if (key instanceof Node.Scalar) {
        fields.add(new Node.Field(key.line(), name, value));
      } else if (!(key instanceof Node.Broken)) {
        mistakes.add(
            builder.path(),
            key.line(),
            MistakeCode.WRONG_TYPE.about(),
            "A list or a mapping stands as a field's name",
            "Name the field");
      }
    }
    parser.getEvent();
    return builder.mapping(line, fields);
  }

  private void tellAnchor(NodeEvent event) {
    if (event.getAnchor() != null) {
      mistakes.add(
          builder.path(),
          line(event),
          MistakeCode.UNSUPPORTED.about("anchor"),
          "The anchor &" + event.getAnchor() + " marks a part for use elsewhere",
          "Take it out, and write the part out wherever it is meant");
    }
  }

  private void tellTag(String tag, int line) {
    if (tag != null) {
      mistakes.add(
          builder.path(),
          line,
          MistakeCode.UNSUPPORTED.about("tag"),
          "The tag " + Words.quoted(tag) + " sets a type",
          "Take the tag out");
    }
  }

  private static int line(Event event) {
    return event.getStartMark().getLine() + 1;
  }
}
