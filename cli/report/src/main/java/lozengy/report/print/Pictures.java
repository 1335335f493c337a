package lozengy.report.print;

import com.openhtmltopdf.extend.FSObjectDrawer;
import com.openhtmltopdf.extend.FSObjectDrawerFactory;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.Shape;
import java.util.Map;
import org.w3c.dom.Element;

/** Draws the booklet's pictures where their names stand. */
final class Pictures implements FSObjectDrawerFactory, FSObjectDrawer {

  static final String TYPE = "lozengy/picture";

  private final Map<String, String> pictures;

  Pictures(Map<String, String> pictures) {
    this.pictures = pictures;
  }

  @Override
  public FSObjectDrawer createDrawer(Element element) {
    return isReplacedObject(element) ? this : null;
  }

  @Override
  public boolean isReplacedObject(Element element) {
    return element.getAttribute("type").equals(TYPE);
  }

  @Override
  public Map<Shape, String> drawObject(
      Element element,
      double x,
      double y,
      double width,
      double height,
      OutputDevice device,
      RenderingContext context,
      int dotsPerPixel) {
    Picture picture = Picture.of(pictures.get(element.getAttribute("data-name")));
    float wide = (float) (width / dotsPerPixel);
    float high = (float) (height / dotsPerPixel);
    device.drawWithGraphics(
        (float) x, (float) y, wide, high, graphics -> picture.draw(graphics, wide, high));
    return Map.of();
  }
}
