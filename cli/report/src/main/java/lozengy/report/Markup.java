package lozengy.report;

import java.io.StringWriter;
import java.util.Arrays;
import java.util.stream.Stream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes SVG 1.1 and HTML, an element a line. Attributes are given as names and values in turn; a
 * number is written with at most three decimals and no exponent, the same on every machine. Text is
 * escaped, and made safe to show.
 */
public final class Markup {

  private static final String SVG_NAMESPACE = "http://www.w3.org/2000/svg";
  private static final String XLINK_NAMESPACE = "http://www.w3.org/1999/xlink";
  private static final int DECIMALS = 3;

  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter writer;

  private Markup() {
    try {
      writer = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Begins an SVG document with its root element, which has these attributes. */
  public static Markup svg(Object... attributes) {
    Markup svg = new Markup();
    svg.write(() -> svg.writer.writeStartDocument("UTF-8", "1.0"));
    svg.raw("\n");
    svg.open(
        "svg",
        with(new Object[] {"xmlns", SVG_NAMESPACE, "xmlns:xlink", XLINK_NAMESPACE}, attributes));
    return svg;
  }

  /** Begins an HTML document with its root element, which has these attributes. */
  public static Markup html(Object... attributes) {
    Markup html = new Markup();
    html.raw("<!DOCTYPE html>\n");
    html.open("html", attributes);
    return html;
  }

  /** Opens an element that holds others. */
  public void open(String name, Object... attributes) {
    write(
        () -> {
          writer.writeStartElement(name);
          attributes(attributes);
          writer.writeCharacters("\n");
        });
  }

  /** Closes what was opened last. */
  public void close() {
    write(
        () -> {
          writer.writeEndElement();
          writer.writeCharacters("\n");
        });
  }

  /** An element that holds nothing; in HTML only one that never does. */
  public void empty(String name, Object... attributes) {
    write(
        () -> {
          writer.writeEmptyElement(name);
          attributes(attributes);
          writer.writeCharacters("\n");
        });
  }

  /** An element that holds text. */
  public void text(String name, String content, Object... attributes) {
    write(
        () -> {
          writer.writeStartElement(name);
          attributes(attributes);
          writer.writeCharacters(PlainText.oneLine(content));
          writer.writeEndElement();
          writer.writeCharacters("\n");
        });
  }

  /** Text among elements, as they stand: spaces at its ends are kept. */
  public void words(String content) {
    String safe = PlainText.oneLine("|" + content + "|");
    write(() -> writer.writeCharacters(safe.substring(1, safe.length() - 1)));
  }

  /**
   * An element whose content HTML takes as it is: a style or a script.
   *
   * @param content our own text, or data in which every {@code <} has been replaced
   */
  public void verbatim(String name, String content, Object... attributes) {
    if (content.contains("</")) {
      throw new IllegalArgumentException("content would end its element");
    }
    write(
        () -> {
          writer.writeStartElement(name);
          attributes(attributes);
          writer.writeCharacters("");
        });
    raw(content);
    close();
  }

  /** Closes the root element and gives the whole document. */
  public String finish() {
    close();
    write(
        () -> {
          writer.writeEndDocument();
          writer.close();
        });
    return text.toString();
  }

  /** Attributes followed by more of them. */
  public static Object[] with(Object[] attributes, Object... more) {
    return Stream.concat(Arrays.stream(attributes), Arrays.stream(more)).toArray();
  }

  /** A number as SVG takes it. */
  public static String number(double value) {
    return Figures.shortest(value, DECIMALS);
  }

  private void raw(String content) {
    write(writer::flush);
    text.write(content);
  }

  private void attributes(Object... namesAndValues) throws XMLStreamException {
    for (int i = 0; i < namesAndValues.length; i += 2) {
      Object value = namesAndValues[i + 1];
      String shown = value instanceof Double number ? number(number) : value.toString();
      writer.writeAttribute(namesAndValues[i].toString(), shown);
    }
  }

  private void write(Writing writing) {
    try {
      writing.run();
    } catch (XMLStreamException e) {
      // A string writer takes everything, and elements are closed as they were opened.
      throw new IllegalStateException(e);
    }
  }

  @FunctionalInterface
  private interface Writing {
    void run() throws XMLStreamException;
  }
}
