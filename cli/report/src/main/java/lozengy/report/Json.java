package lozengy.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/** Writes the results that {@code --json} asks for. */
public final class Json {

  private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

  private Json() {}

  /**
   * A value that is JSON already.
   *
   * @param text its text
   */
  public record Raw(String text) {}

  /**
   * Begins an object.
   *
   * @param fields names and values in turn; a field whose value is an empty {@link Optional} is
   *     left out
   */
  public static Map<String, Object> object(Object... fields) {
    Map<String, Object> object = new LinkedHashMap<>();
    for (int i = 0; i < fields.length; i += 2) {
      Object value =
          fields[i + 1] instanceof Optional<?> optional ? optional.orElse(null) : fields[i + 1];
      if (value != null) {
        object.put((String) fields[i], value);
      }
    }
    return object;
  }

  /**
   * A result of a command as indented JSON; its first field says what it is.
   *
   * @param what the name of its schema without the version, such as {@code check-result}
   */
  public static String result(String what, Map<String, Object> fields) {
    Map<String, Object> result = object("format", "lozengy-" + what + "/1");
    result.putAll(fields);
    return text(result);
  }

  /**
   * A result as indented JSON, the same on every system; without a line break at its end.
   *
   * @param result maps with names as keys, lists, strings, numbers, booleans and {@link Raw}
   */
  public static String text(Object result) {
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(INDENT);
    printer.indentArraysWith(INDENT);
    return text(result, generator -> generator.setPrettyPrinter(printer));
  }

  /** The same on one line. */
  public static String compact(Object result) {
    return text(result, generator -> {});
  }

  private static String text(Object result, Consumer<JsonGenerator> layout) {
    StringWriter text = new StringWriter();
    try (JsonGenerator generator = new JsonFactory().createGenerator(text)) {
      layout.accept(generator);
      write(generator, result);
    } catch (IOException e) {
      throw new UncheckedIOException("cannot write JSON", e);
    }
    return text.toString();
  }

  private static void write(JsonGenerator generator, Object value) throws IOException {
    if (value instanceof Map<?, ?> object) {
      generator.writeStartObject();
      for (Map.Entry<?, ?> field : object.entrySet()) {
        generator.writeFieldName((String) field.getKey());
        write(generator, field.getValue());
      }
      generator.writeEndObject();
    } else if (value instanceof List<?> list) {
      generator.writeStartArray();
      for (Object each : list) {
        write(generator, each);
      }
      generator.writeEndArray();
    } else {
      scalar(generator, value);
    }
  }

  private static void scalar(JsonGenerator generator, Object value) throws IOException {
    if (value instanceof String string) {
      generator.writeString(string);
    } else if (value instanceof Boolean bool) {
      generator.writeBoolean(bool);
    } else if (value instanceof Integer || value instanceof Long) {
      generator.writeNumber(((Number) value).longValue());
    } else if (value instanceof BigDecimal decimal) {
      generator.writeNumber(decimal.toPlainString());
    } else if (value instanceof Raw raw) {
      generator.writeRawValue(raw.text());
    } else if (value instanceof Double number) {
      generator.writeNumber(number);
    } else {
      throw new IllegalArgumentException("no JSON for " + value);
    }
  }
}
