package lozengy.cli.report;

import java.io.StringWriter;
import java.util.Arrays;
import java.util.stream.Stream;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Writes SVG 1.1, an element a line. Attributes are given as names and values in turn; a number is
 * written with at most three decimals and no exponent, the same on every machine.
 */
final class Svg {

  private static final String NAMESPACE = "http://www.w3.org/2000/svg";
  private static final int DECIMALS = 3;

  private final StringWriter text = new StringWriter();
  private final XMLStreamWriter writer;

  Svg() {
    try {
      writer = XMLOutputFactory.newDefaultFactory().createXMLStreamWriter(text);
    } catch (XMLStreamException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Opens the root element. */
  void root(Object... attributes) {
    write(
        () -> {
          writer.writeStartDocument("UTF-8", "1.0");
          writer.writeCharacters("\n");
          writer.writeStartElement("svg");
          writer.writeDefaultNamespace(NAMESPACE);
          attributes(attributes);
          writer.writeCharacters("\n");
        });
  }

  /** Opens an element that holds others. */
  void open(String name, Object... attributes) {
    write(
        () -> {
          writer.writeStartElement(name);
          attributes(attributes);
          writer.writeCharacters("\n");
        });
  }

  /** Closes what was opened last. */
  void close() {
    write(
        () -> {
          writer.writeEndElement();
          writer.writeCharacters("\n");
        });
  }

  /** An element that holds nothing. */
  void empty(String name, Object... attributes) {
    write(
        () -> {
          writer.writeEmptyElement(name);
          attributes(attributes);
          writer.writeCharacters("\n");
        });
  }

  /** An element that holds text; the text is made safe to show. */
  void text(String name, String content, Object... attributes) {
    write(
        () -> {
          writer.writeStartElement(name);
          attributes(attributes);
          writer.writeCharacters(PlainText.oneLine(content));
          writer.writeEndElement();
          writer.writeCharacters("\n");
        });
  }

  /** Closes the root element and gives the whole document. */
  String finish() {
    close();
    write(
        () -> {
          writer.writeEndDocument();
          writer.close();
        });
    return text.toString();
  }

  /** Attributes followed by more of them. */
  static Object[] with(Object[] attributes, Object... more) {
    return Stream.concat(Arrays.stream(attributes), Arrays.stream(more)).toArray();
  }

  /** A number as SVG takes it. */
  static String number(double value) {
    return Figures.shortest(value, DECIMALS);
  }

  private void attributes(Object... namesAndValues) throws XMLStreamException {
    for (int i = 0; i < namesAndValues.length; i += 2) {
      Object value = namesAndValues[i + 1];
      String shown = value instanceof Double number ? number(number) : value.toString();
      writer.writeAttribute(namesAndValues[i].toString(), shown);
    }
  }

  private static void write(Writing writing) {
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
