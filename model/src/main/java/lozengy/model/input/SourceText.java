package lozengy.model.input;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/**
 * The text of an input.
 *
 * @param name what the input is called in messages
 * @param text its text, without a byte order mark
 * @param json whether it is read as JSON, otherwise as YAML
 */
public record SourceText(String name, String text, boolean json) {

  /** Largest JSON input, in bytes; an arrangement of the largest layout stays below. */
  public static final int MOST_JSON_BYTES = 128 << 20;

  /** Largest YAML input, in bytes; it is written by hand. */
  public static final int MOST_YAML_BYTES = 8 << 20;

  /**
   * Takes a text: JSON if its name ends in {@code .json} or it begins with a brace, otherwise YAML.
   *
   * @param name what to call it in messages
   * @param text its content
   * @return the text with its name
   */
  public static SourceText of(String name, String text) {
    String whole = text.startsWith("\uFEFF") ? text.substring(1) : text;
    boolean json =
        name.toLowerCase(Locale.ROOT).endsWith(".json") || whole.stripLeading().startsWith("{");
    return new SourceText(name, whole, json);
  }

  /**
   * Reads a file.
   *
   * @param file the file, YAML or JSON in UTF-8
   * @return the text with its name
   * @throws InputException if there is no such file, it cannot be read, is too large or is not
   *     UTF-8 text
   */
  public static SourceText read(Path file) {
    if (Files.isDirectory(file)) {
      throw unreadable(MistakeCode.UNREADABLE.about(), file + " is a folder", "Name a file");
    }
    if (!Files.exists(file)) {
      throw unreadable(
          MistakeCode.NO_SUCH_FILE.about(file),
          "There is no file " + file,
          "Check the name and the folder");
    }
    try (InputStream in = Files.newInputStream(file)) {
      return read(file.toString(), in);
    } catch (IOException e) {
      throw unreadable(
          MistakeCode.UNREADABLE.about(e.getMessage()),
          file + " cannot be read (" + e.getMessage() + ")",
          "Check its permissions");
    }
  }

  /**
   * Reads a stream to its end.
   *
   * @param name what to call it in messages
   * @param in the stream, which is left open
   * @return the text with its name
   * @throws IOException if the stream fails
   * @throws InputException if it is too large or not UTF-8 text
   */
  public static SourceText read(String name, InputStream in) throws IOException {
    byte[] bytes = in.readNBytes(MOST_JSON_BYTES + 1);
    if (bytes.length > MOST_JSON_BYTES) {
      throw tooLarge("", MOST_JSON_BYTES);
    }
    SourceText source = of(name, decode(bytes));
    if (!source.json && bytes.length > MOST_YAML_BYTES) {
      throw tooLarge(" as YAML", MOST_YAML_BYTES);
    }
    return source;
  }

  private static InputException tooLarge(String as, int mostBytes) {
    return unreadable(
        MistakeCode.TOO_LARGE.about("bytes", mostBytes),
        "The input is larger than the " + (mostBytes >> 20) + " MiB that are read" + as,
        "Check that it is a brief or an arrangement");
  }

  private static String decode(byte[] bytes) {
    if (bytes.length >= 2 && (bytes[0] & 0xff) + (bytes[1] & 0xff) == 0xff + 0xfe) {
      throw unreadable(
          MistakeCode.NOT_TEXT.about("UTF-16"), "The input is UTF-16 text", "Save it as UTF-8");
    }
    int sound = soundBytes(bytes);
    String text = new String(bytes, 0, sound, StandardCharsets.UTF_8);
    int nul = text.indexOf('\0');
    if (nul >= 0) {
      throw notText(text.substring(0, nul), "a zero byte");
    }
    if (sound < bytes.length) {
      throw notText(text, String.format(Locale.ROOT, "the byte 0x%02x", bytes[sound] & 0xff));
    }
    return text;
  }

  /** How many bytes from the start are UTF-8; decodes piece by piece, to spare memory. */
  private static int soundBytes(byte[] bytes) {
    CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder(); // reports what is malformed
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer piece = CharBuffer.allocate(1 << 16);
    while (decoder.decode(in, piece.clear(), true).isOverflow()) {
      // the next piece
    }
    return in.position();
  }

  private static InputException notText(String before, String found) {
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    return new InputException(
        List.of(
            new Mistake(
                BriefPath.ROOT,
                line,
                MistakeCode.NOT_TEXT.about(found),
                "The input is not UTF-8 text: it holds " + found,
                "Check that it is a brief or an arrangement, and save it as UTF-8")));
  }

  private static InputException unreadable(Mistake.Sort sort, String found, String remedy) {
    return new InputException(List.of(Mistake.ofWhole(sort, found, remedy)));
  }
}
