package lozengy.report.print;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.io.InputStream;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The font of pictures and booklets. It ships with the PDF library, so that they look the same
 * everywhere; it holds Latin, Greek, Cyrillic and Hebrew letters. Booklets are set from left to
 * right only.
 */
final class Letters {

  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private static Font registered;

  private Letters() {}

  /** The font for a document. */
  static PDFont of(PDDocument document) throws IOException {
    try (InputStream in = font()) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
      // Looking for ligatures takes longer than all the rest of a booklet.
      font.setEnableGsub(false);
      return PDType0Font.load(document, font, true);
    }
  }

  private static InputStream font() {
    return PDDocument.class.getResourceAsStream(FILE);
  }

  /**
   * As much of a text as a booklet can show: without signs that the font lacks, such as emoji, and
   * nothing at all where a letter is missing or runs from right to left.
   */
  static String shown(String text) {
    Font font = register();
    boolean readable =
        text.codePoints()
            .filter(Character::isLetter)
            .allMatch(letter -> font.canDisplay(letter) && !fromTheRight(letter));
    return readable
        ? text.codePoints()
            .filter(font::canDisplay)
            .mapToObj(Character::toString)
            .collect(Collectors.joining())
            .strip()
        : "";
  }

  private static boolean fromTheRight(int letter) {
    byte direction = Character.getDirectionality(letter);
    return direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT
        || direction == Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC;
  }

  /** Lets pictures use the font by its name. */
  static synchronized Font register() {
    if (registered != null) {
      return registered;
    }
    // No picture needs a screen, and asking for one takes time.
    System.setProperty("java.awt.headless", "true");
    try (InputStream in = font()) {
      Font font = Font.createFont(Font.TRUETYPE_FONT, in);
      GraphicsEnvironment.getLocalGraphicsEnvironment().registerFont(font);
      registered = font;
      return font;
    } catch (IOException | FontFormatException e) {
      throw new IllegalStateException("the font that ships with the program", e);
    }
  }
}
