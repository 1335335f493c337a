package lozengy.report.print;

import java.awt.geom.PathIterator;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import lozengy.report.Markup;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.SAXException;

/**
 * Turns the text of a drawing of ours into outlines, so that no font is needed to draw it. Its
 * attributes may stand on the text or on what is around it, as SVG has them.
 */
final class Outlined {

  private static final Set<String> OF_TEXT =
      Set.of("x", "y", "font-size", "font-weight", "font-family", "text-anchor");

  /** How much a line around bold letters adds, in font sizes. */
  private static final double BOLD = 0.035;

  private Outlined() {}

  /** The drawing without text. */
  static byte[] of(String svg) {
    try {
      Document document =
          DocumentBuilderFactory.newDefaultInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(svg.getBytes(StandardCharsets.UTF_8)));
      NodeList found = document.getElementsByTagName("text");
      List<Element> texts =
          IntStream.range(0, found.getLength()).mapToObj(i -> (Element) found.item(i)).toList();
      texts.forEach(text -> text.getParentNode().replaceChild(path(text), text));
      ByteArrayOutputStream bytes = new ByteArrayOutputStream();
      TransformerFactory.newDefaultInstance()
          .newTransformer()
          .transform(new DOMSource(document), new StreamResult(bytes));
      return bytes.toByteArray();
    } catch (ParserConfigurationException | SAXException | IOException | TransformerException e) {
      throw new IllegalStateException("our own SVG", e);
    }
  }

  private static Element path(Element text) {
    double size = Double.parseDouble(inherited(text, "font-size", "16"));
    Letters.Line line = Letters.line(text.getTextContent(), size);
    double left =
        number(text, "x")
            - switch (inherited(text, "text-anchor", "start")) {
              case "middle" -> line.width() / 2;
              case "end" -> line.width();
              default -> 0;
            };
    Element path = text.getOwnerDocument().createElement("path");
    for (int i = 0; i < text.getAttributes().getLength(); i++) {
      Node attribute = text.getAttributes().item(i);
      if (!OF_TEXT.contains(attribute.getNodeName())) {
        path.setAttribute(attribute.getNodeName(), attribute.getNodeValue());
      }
    }
    path.setAttribute("d", data(line, left, number(text, "y")));
    boolean bold = inherited(text, "font-weight", "").equals("bold");
    if (bold && inherited(text, "stroke", "none").equals("none")) {
      path.setAttribute("stroke", inherited(text, "fill", "#000000"));
      path.setAttribute("stroke-width", Markup.number(BOLD * size));
    }
    return path;
  }

  private static double number(Element text, String name) {
    return text.hasAttribute(name) ? Double.parseDouble(text.getAttribute(name)) : 0;
  }

  private static String inherited(Element text, String name, String otherwise) {
    for (Node at = text; at instanceof Element element; at = at.getParentNode()) {
      if (element.hasAttribute(name)) {
        return element.getAttribute(name);
      }
    }
    return otherwise;
  }

  private static String data(Letters.Line line, double left, double base) {
    StringBuilder data = new StringBuilder();
    double[] at = new double[6];
    for (PathIterator i = line.shape().getPathIterator(null); !i.isDone(); i.next()) {
      int points =
          switch (i.currentSegment(at)) {
            case PathIterator.SEG_MOVETO -> letter(data, 'M', 1);
            case PathIterator.SEG_LINETO -> letter(data, 'L', 1);
            case PathIterator.SEG_QUADTO -> letter(data, 'Q', 2);
            case PathIterator.SEG_CUBICTO -> letter(data, 'C', 3);
            default -> letter(data, 'Z', 0);
          };
      for (int point = 0; point < points; point++) {
        data.append(Markup.number(left + at[2 * point]))
            .append(' ')
            .append(Markup.number(base + at[2 * point + 1]))
            .append(' ');
      }
    }
    return data.toString();
  }

  private static int letter(StringBuilder data, char letter, int points) {
    data.append(letter);
    return points;
  }
}
