package lozengy.report.print;

import com.github.weisj.jsvg.SVGDocument;
import com.github.weisj.jsvg.parser.DocumentLimits;
import com.github.weisj.jsvg.parser.LoaderContext;
import com.github.weisj.jsvg.parser.SVGLoader;
import com.github.weisj.jsvg.view.ViewBox;
import java.awt.Color;
import java.awt.Component;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Objects;
import javax.imageio.ImageIO;

/** A drawing of ours in SVG, ready to be drawn on something else. */
public final class Picture {

  private static final Component NOWHERE = null;

  /** As CSS has it. */
  private static final double PIXELS_PER_MM = 96 / 25.4;

  /** The library's guard against hostile drawings stops at 2000 shapes; these are our own. */
  private static final DocumentLimits ANY_NUMBER_OF_SHAPES =
      new DocumentLimits(
          DocumentLimits.DEFAULT_MAX_NESTING_DEPTH,
          DocumentLimits.DEFAULT_MAX_USE_NESTING_DEPTH,
          Integer.MAX_VALUE);

  private final SVGDocument document;

  private Picture(SVGDocument document) {
    this.document = document;
  }

  /** Takes a drawing. */
  static Picture of(String svg) {
    // No picture needs a screen, and asking for one takes time.
    System.setProperty("java.awt.headless", "true");
    ByteArrayInputStream bytes = new ByteArrayInputStream(Outlined.of(svg));
    LoaderContext context = LoaderContext.builder().documentLimits(ANY_NUMBER_OF_SHAPES).build();
    return new Picture(
        Objects.requireNonNull(new SVGLoader().load(bytes, null, context), "our own SVG"));
  }

  /** Its width in mm. */
  double widthMm() {
    return document.size().getWidth() / PIXELS_PER_MM;
  }

  /** Its height in mm. */
  double heightMm() {
    return document.size().getHeight() / PIXELS_PER_MM;
  }

  /** Draws it into a box from 0, 0. */
  void draw(Graphics2D graphics, double width, double height) {
    document.render(NOWHERE, graphics, new ViewBox((float) width, (float) height));
  }

  /**
   * A drawing as a PNG file, on white.
   *
   * @param svg the drawing
   * @param widthPixels width in pixels, above 0; the height follows from the drawing
   */
  public static byte[] png(String svg, int widthPixels) {
    Picture picture = of(svg);
    double ratio = picture.document.size().getHeight() / picture.document.size().getWidth();
    int height = (int) Math.max(1, Math.round(widthPixels * ratio));
    BufferedImage image = new BufferedImage(widthPixels, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D graphics = image.createGraphics();
    graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    graphics.setColor(Color.WHITE);
    graphics.fillRect(0, 0, widthPixels, height);
    picture.draw(graphics, widthPixels, height);
    graphics.dispose();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      ImageIO.setUseCache(false);
      ImageIO.write(image, "png", bytes);
    } catch (IOException e) {
      throw new UncheckedIOException("memory takes everything", e);
    }
    return bytes.toByteArray();
  }
}
