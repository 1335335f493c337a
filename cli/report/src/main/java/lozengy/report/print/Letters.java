package lozengy.report.print;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * The font of pictures and booklets. It ships with the PDF library, so that they look the same
 * everywhere; it holds Latin, Greek, Cyrillic and Hebrew letters. Booklets are set from left to
 * right only. It is read from memory alone: Java's own fonts would be copied to the folder for
 * temporary files, which may be closed to writing.
 */
final class Letters {

  private static final String FILE = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private static TrueTypeFont read;

  private Letters() {}

  /** The font for a document. */
  static PDFont of(PDDocument document) throws IOException {
    return PDType0Font.load(document, parse(), true);
  }

  private static TrueTypeFont parse() throws IOException {
    try (InputStream in = PDDocument.class.getResourceAsStream(FILE)) {
      TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in));
      // Looking for ligatures takes longer than all the rest of a booklet.
      font.setEnableGsub(false);
      return font;
    }
  }

  private static TrueTypeFont font() throws IOException {
    if (read == null) {
      read = parse();
    }
    return read;
  }

  /** A line of text as outlines that begin at 0, 0 on its base line. */
  record Line(Shape shape, double width) {}

  /**
   * Draws a line of text; letters that the font lacks are left out.
   *
   * @param size the font's size, in the units of the answer
   */
  static synchronized Line line(String text, double size) {
    try {
      CmapLookup letters = font().getUnicodeCmapLookup();
      double scale = size / font().getUnitsPerEm();
      Path2D line = new Path2D.Double();
      double width = 0;
      for (int letter : text.codePoints().toArray()) {
        int glyph = letters.getGlyphId(letter);
        GlyphData drawn = glyph == 0 ? null : font().getGlyph().getGlyph(glyph);
        if (drawn != null) {
          line.append(
              drawn.getPath().getPathIterator(new AffineTransform(scale, 0, 0, -scale, width, 0)),
              false);
        }
        width += glyph == 0 ? 0 : scale * font().getAdvanceWidth(glyph);
      }
      return new Line(line, width);
    } catch (IOException e) {
      throw new UncheckedIOException("the font that ships with the program", e);
    }
  }

  private static synchronized boolean has(int letter) {
    try {
      return font().getUnicodeCmapLookup().getGlyphId(letter) != 0;
    } catch (IOException e) {
      throw new UncheckedIOException("the font that ships with the program", e);
    }
  }

  /**
   * As much of a text as a booklet can show: without signs that the font lacks, such as emoji, and
   * nothing at all where a letter is missing or runs from right to left.
   */
  static String shown(String text) {
    boolean readable =
        text.codePoints()
            .filter(Character::isLetter)
            .allMatch(letter -> has(letter) && !fromTheRight(letter));
    return readable
        ? text.codePoints()
            .filter(Letters::has)
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
}
