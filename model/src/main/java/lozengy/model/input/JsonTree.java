package lozengy.model.input;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** Reads JSON through a streaming parser. */
final class JsonTree {

  private static final int MOST_TEXT_CHARACTERS = 10_000;

  // NaN and the like come through as text, so that the field's own message can name them.
  private static final JsonFactory FACTORY =
      JsonFactory.builder()
          .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
          .streamReadConstraints(
              StreamReadConstraints.builder()
                  .maxStringLength(MOST_TEXT_CHARACTERS)
                  .maxNameLength(MOST_TEXT_CHARACTERS)
                  .maxNumberLength(MOST_TEXT_CHARACTERS)
                  .build())
          .build();

  private final JsonParser parser;
  private final TreeBuilder builder;

  private JsonTree(JsonParser parser, TreeBuilder builder) {
    this.parser = parser;
    this.builder = builder;
  }

  static Node read(SourceText source, TreeBuilder builder, Mistakes mistakes) {
    try (JsonParser parser = FACTORY.createParser(source.text())) {
      parser.nextToken();
      Node root = new JsonTree(parser, builder).value(0);
      if (parser.nextToken() != null) {
        throw mistakes.fatal(
            parser.currentTokenLocation().getLineNr(),
            MistakeCode.SYNTAX.about("JSON"),
            "Something follows after the end of the JSON text",
            "Keep one brief or arrangement in a file");
      }
      return root;
    } catch (StreamConstraintsException e) {
      throw mistakes.fatal(
          0,
          MistakeCode.TOO_LARGE.about("text", MOST_TEXT_CHARACTERS),
          "The JSON text holds a name, a text or a number that is longer than "
              + Words.number(MOST_TEXT_CHARACTERS)
              + " characters",
          "Check that it is a brief or an arrangement");
    } catch (JsonProcessingException e) {
      int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
      String column =
          e.getLocation() == null ? "" : " near column " + e.getLocation().getColumnNr();
      throw mistakes.fatal(
          line,
          MistakeCode.SYNTAX.about("JSON"),
          "This is not JSON: " + firstLine(e.getOriginalMessage()),
          "Mend the JSON" + column + "; a text that begins with { is read as JSON");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String firstLine(String message) {
    String line = message.lines().findFirst().orElse("").strip();
    return line.endsWith(".") ? line.substring(0, line.length() - 1) : line;
  }

  /** The value at the current token; its line is that of its field, if that has one. */
  private Node value(int fieldLine) throws IOException {
    int line = parser.currentTokenLocation().getLineNr();
    int containerLine = fieldLine > 0 ? fieldLine : line;
    return switch (parser.currentToken()) {
      case START_OBJECT -> object(containerLine);
      case START_ARRAY -> array(containerLine);
      case VALUE_STRING -> builder.scalar(line, parser.getText(), true);
      default -> builder.scalar(line, parser.getText(), false);
    };
  }

  private Node object(int line) throws IOException {
    builder.enter(line);
    List<Node.Field> fields = new ArrayList<>();
    while (parser.nextToken() == JsonToken.FIELD_NAME) {
      String name = parser.currentName();
      int nameLine = parser.currentTokenLocation().getLineNr();
      builder.step(name);
      parser.nextToken();
      fields.add(new Node.Field(nameLine, name, value(nameLine)));
    }
    return builder.mapping(line, fields);
  }

  private Node array(int line) throws IOException {
    builder.enter(line);
    List<Node> items = new ArrayList<>();
    while (parser.nextToken() != JsonToken.END_ARRAY) {
      builder.step(items.size());
      items.add(value(0));
    }
    return builder.items(line, items);
  }
}
