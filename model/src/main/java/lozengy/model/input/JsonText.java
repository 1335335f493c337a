package lozengy.model.input;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.io.JsonStringEncoder;
import java.io.IOException;
import java.io.OutputStream;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Map;
import java.util.Optional;

/**
 * Writes JSON as a stream, the same bytes for the same calls: UTF-8, lines ended by a line feed,
 * numbers in the shortest form. Containers are tall, with a line for each value, or flat, on one
 * line.
 */
public final class JsonText {

  private final JsonGenerator generator;
  private final JsonLines lines;
  private final Optional<JsonPlaces> places;

  private JsonText(JsonGenerator generator, JsonLines lines, Optional<JsonPlaces> places) {
    this.generator = generator;
    this.lines = lines;
    this.places = places;
  }

  /**
   * {@return what writes the next value with further fields at the end of mappings in it}
   *
   * @param fields the fields by the mapping's place in that value, with their values as JSON
   */
  public JsonText with(Map<BriefPath, Map<String, String>> fields) {
    return fields.isEmpty()
        ? this
        : new JsonText(generator, lines, Optional.of(new JsonPlaces(fields)));
  }

  /** What is written. */
  @FunctionalInterface
  public interface Content {
    /**
     * Writes one value.
     *
     * @param json where to
     * @throws IOException if the stream fails
     */
    void write(JsonText json) throws IOException;
  }

  /**
   * Writes one value and a line feed; flushes the stream and leaves it open.
   *
   * @param out the stream
   * @param content what writes the value
   * @throws IOException if the stream fails
   */
  public static void write(OutputStream out, Content content) throws IOException {
    write(out, content, new JsonLines(false));
  }

  /**
   * The same with all of the value on one line.
   *
   * @param out the stream
   * @param content what writes the value
   * @throws IOException if the stream fails
   */
  public static void writeLine(OutputStream out, Content content) throws IOException {
    write(out, content, new JsonLines(true));
  }

  private static void write(OutputStream out, Content content, JsonLines lines) throws IOException {
    JsonFactory factory =
        JsonFactory.builder()
            .disable(StreamWriteFeature.AUTO_CLOSE_TARGET)
            .disable(StreamWriteFeature.AUTO_CLOSE_CONTENT)
            .build();
    JsonGenerator generator = factory.createGenerator(out);
    generator.setPrettyPrinter(lines);
    content.write(new JsonText(generator, lines, Optional.empty()));
    generator.writeRaw('\n');
    generator.close();
    out.flush();
  }

  /**
   * Begins a mapping with a line for each field.
   *
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText tallMapping() throws IOException {
    lines.nextTall(true);
    places.ifPresent(JsonPlaces::beginMapping);
    generator.writeStartObject();
    return this;
  }

  /**
   * Begins a mapping on one line.
   *
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText mapping() throws IOException {
    lines.nextTall(false);
    places.ifPresent(JsonPlaces::beginMapping);
    generator.writeStartObject();
    return this;
  }

  /**
   * Ends the innermost mapping.
   *
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText endMapping() throws IOException {
    if (places.isPresent()) {
      for (Map.Entry<String, String> field : places.get().endMapping().entrySet()) {
        generator.writeFieldName(field.getKey());
        generator.writeRawValue(field.getValue());
      }
    }
    generator.writeEndObject();
    return this;
  }

  /**
   * Begins a list with a line for each item.
   *
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText tallList() throws IOException {
    lines.nextTall(true);
    places.ifPresent(JsonPlaces::beginList);
    generator.writeStartArray();
    return this;
  }

  /**
   * Begins a list on one line.
   *
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText list() throws IOException {
    lines.nextTall(false);
    places.ifPresent(JsonPlaces::beginList);
    generator.writeStartArray();
    return this;
  }

  /**
   * Ends the innermost list.
   *
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText endList() throws IOException {
    places.ifPresent(JsonPlaces::endList);
    generator.writeEndArray();
    return this;
  }

  /**
   * Names the field whose value comes next.
   *
   * @param name the field's name
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText field(String name) throws IOException {
    places.ifPresent(each -> each.field(name));
    generator.writeFieldName(name);
    return this;
  }

  /**
   * Writes a text.
   *
   * @param text the text
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText text(String text) throws IOException {
    places.ifPresent(JsonPlaces::value);
    generator.writeString(text);
    return this;
  }

  /**
   * Writes a text, or null where there is none.
   *
   * @param text the text
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText text(Optional<String> text) throws IOException {
    places.ifPresent(JsonPlaces::value);
    if (text.isEmpty()) {
      generator.writeNull();
    } else {
      generator.writeString(text.get());
    }
    return this;
  }

  /**
   * Writes true or false.
   *
   * @param flag the value
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText flag(boolean flag) throws IOException {
    places.ifPresent(JsonPlaces::value);
    generator.writeBoolean(flag);
    return this;
  }

  /**
   * Writes a whole number.
   *
   * @param number the number
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText number(long number) throws IOException {
    places.ifPresent(JsonPlaces::value);
    generator.writeNumber(number);
    return this;
  }

  /**
   * Writes a number so that reading it gives the same double.
   *
   * @param number the number
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText number(double number) throws IOException {
    places.ifPresent(JsonPlaces::value);
    generator.writeNumber(shortest(BigDecimal.valueOf(number)));
    return this;
  }

  /**
   * Writes a number.
   *
   * @param number the number
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText number(BigDecimal number) throws IOException {
    places.ifPresent(JsonPlaces::value);
    generator.writeNumber(shortest(number));
    return this;
  }

  /**
   * Writes a number rounded to so many decimals, halves up, or null where there is none.
   *
   * @param number the number
   * @param decimals how many decimals at most, 0 or more
   * @return this
   * @throws IOException if the stream fails
   */
  public JsonText rounded(Optional<Double> number, int decimals) throws IOException {
    if (number.isEmpty()) {
      places.ifPresent(JsonPlaces::value);
      generator.writeNull();
      return this;
    }
    return number(BigDecimal.valueOf(number.get()).setScale(decimals, RoundingMode.HALF_UP));
  }

  /**
   * {@return the shortest plain form, such as {@code 100} or {@code 0.25}; with an exponent if very
   * small}
   *
   * @param number the number
   */
  public static String shortest(BigDecimal number) {
    BigDecimal stripped = number.stripTrailingZeros();
    return Math.abs(stripped.scale()) > 20 ? stripped.toString() : stripped.toPlainString();
  }

  /**
   * {@return a text as JSON}
   *
   * @param text the text
   */
  public static String quoted(String text) {
    return '"' + String.valueOf(JsonStringEncoder.getInstance().quoteAsString(text)) + '"';
  }
}
