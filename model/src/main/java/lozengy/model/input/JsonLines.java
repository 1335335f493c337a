package lozengy.model.input;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.PrettyPrinter;
import java.io.IOException;

/**
 * Breaks the lines of JSON: a tall container has a line for each value, a flat one is on one. Where
 * all is to be on one line, every container is flat.
 */
final class JsonLines implements PrettyPrinter {

  private static final int MOST_DEEP = 32;

  private final boolean[] tall = new boolean[MOST_DEEP];
  private final boolean oneLine;
  private int depth;
  private boolean nextTall;

  JsonLines(boolean oneLine) {
    this.oneLine = oneLine;
  }

  /** Whether the container that begins next is tall. */
  void nextTall(boolean isTall) {
    nextTall = isTall && !oneLine;
  }

  private void begin(JsonGenerator json, char bracket) throws IOException {
    json.writeRaw(bracket);
    tall[++depth] = nextTall;
  }

  private void end(JsonGenerator json, char bracket, int values) throws IOException {
    boolean breaks = tall[depth--] && values > 0;
    if (breaks) {
      newLine(json);
    }
    json.writeRaw(bracket);
  }

  private void breakAfter(JsonGenerator json, String comma) throws IOException {
    json.writeRaw(comma);
    if (tall[depth]) {
      newLine(json);
    } else if (!comma.isEmpty()) {
      json.writeRaw(' ');
    }
  }

  private void newLine(JsonGenerator json) throws IOException {
    json.writeRaw('\n');
    for (int i = 0; i < depth; i++) {
      json.writeRaw("  ");
    }
  }

  @Override
  public void writeRootValueSeparator(JsonGenerator json) throws IOException {
    json.writeRaw('\n');
  }

  @Override
  public void writeStartObject(JsonGenerator json) throws IOException {
    begin(json, '{');
  }

  @Override
  public void writeEndObject(JsonGenerator json, int values) throws IOException {
    end(json, '}', values);
  }

  @Override
  public void writeObjectEntrySeparator(JsonGenerator json) throws IOException {
    breakAfter(json, ",");
  }

  @Override
  public void writeObjectFieldValueSeparator(JsonGenerator json) throws IOException {
    json.writeRaw(": ");
  }

  @Override
  public void writeStartArray(JsonGenerator json) throws IOException {
    begin(json, '[');
  }

  @Override
  public void writeEndArray(JsonGenerator json, int values) throws IOException {
    end(json, ']', values);
  }

  @Override
  public void writeArrayValueSeparator(JsonGenerator json) throws IOException {
    breakAfter(json, ",");
  }

  @Override
  public void beforeArrayValues(JsonGenerator json) throws IOException {
    breakAfter(json, "");
  }

  @Override
  public void beforeObjectEntries(JsonGenerator json) throws IOException {
    breakAfter(json, "");
  }
}
