package lozengy.report;

import java.io.StringWriter;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.layout.Contact;
import lozengy.model.layout.Place;
import lozengy.model.score.Scorer;
import org.jgrapht.nio.Attribute;
import org.jgrapht.nio.AttributeType;
import org.jgrapht.nio.DefaultAttribute;
import org.jgrapht.nio.graphml.GraphMLExporter;
import org.jgrapht.nio.graphml.GraphMLExporter.AttributeCategory;

/**
 * An arrangement as a graph in GraphML: a node for every piece, an edge for every seam and touch,
 * with their colours. Node ids are the pieces' names.
 */
public final class GraphMl {

  private final Blanket blanket;
  private final PilePlacement laid;
  private final SeamKinds seams;
  private final Arrangement arrangement;
  private final GraphMLExporter<Place, Contact> exporter = new GraphMLExporter<>(Place::name);

  private GraphMl(Arrangement arrangement) {
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.seams = SeamKinds.of(blanket.layout());
    this.laid = PilePlacement.of(blanket, arrangement.sequences());
  }

  /**
   * Writes the graph. The same arrangement gives the same text.
   *
   * @param arrangement a complete arrangement
   */
  public static String text(Arrangement arrangement) {
    return new GraphMl(arrangement).write();
  }

  private String write() {
    node("kind", AttributeType.STRING);
    node("state", AttributeType.STRING);
    node("rounds_worked", AttributeType.INT);
    node("x", AttributeType.INT);
    node("y", AttributeType.INT);
    node("sequence", AttributeType.STRING);
    node("border", AttributeType.STRING);
    node("border_name", AttributeType.STRING);
    node("colour", AttributeType.STRING);
    // The exporter takes a name once, for nodes or for edges.
    edge("contact", AttributeType.STRING);
    edge("seam", AttributeType.STRING);
    edge("colour_difference", AttributeType.DOUBLE);
    edge("contrast", AttributeType.DOUBLE);
    edge("length_cm", AttributeType.DOUBLE);
    exporter.setVertexAttributeProvider(this::piece);
    exporter.setEdgeAttributeProvider(this::contact);
    StringWriter text = new StringWriter();
    exporter.exportGraph(blanket.layout().graph(), text);
    return text.toString().replace("\r\n", "\n");
  }

  private void node(String name, AttributeType type) {
    exporter.registerAttribute(name, AttributeCategory.NODE, type);
  }

  private void edge(String name, AttributeType type) {
    exporter.registerAttribute(name, AttributeCategory.EDGE, type);
  }

  private Map<String, Attribute> piece(Place place) {
    int piece = place.index();
    int border = arrangement.sequences().border(piece);
    Map<String, Attribute> attributes = new LinkedHashMap<>();
    attributes.put("kind", words(place.kind().word()));
    attributes.put("state", words(laid.state(piece).word()));
    attributes.put("rounds_worked", DefaultAttribute.createAttribute(laid.roundsWorked(piece)));
    attributes.put("x", DefaultAttribute.createAttribute(place.x()));
    attributes.put("y", DefaultAttribute.createAttribute(place.y()));
    attributes.put(
        "sequence",
        words(
            Arrays.stream(arrangement.sequences().of(piece))
                .mapToObj(yarn -> blanket.yarn(yarn).code())
                .collect(Collectors.joining(" "))));
    attributes.put("border", words(blanket.yarn(border).code()));
    attributes.put("border_name", words(blanket.yarn(border).name()));
    attributes.put("colour", words(blanket.yarn(border).colour().hex()));
    return attributes;
  }

  private Map<String, Attribute> contact(Contact contact) {
    int first = contact.first().index();
    int second = contact.second().index();
    int yarn = arrangement.sequences().border(first);
    int other = arrangement.sequences().border(second);
    Map<String, Attribute> attributes = new LinkedHashMap<>();
    attributes.put("contact", words(contact.kind().name().toLowerCase(Locale.ROOT)));
    attributes.put("colour_difference", number(blanket.yarns().difference(yarn, other)));
    if (contact.kind() == Contact.Kind.SEAM) {
      attributes.put("seam", words(seams.of(first, second)));
      attributes.put("contrast", number(Scorer.contrast(blanket, true, yarn, other)));
      attributes.put("length_cm", number(blanket.measures().sideCm()));
    }
    return attributes;
  }

  private static Attribute number(double number) {
    return DefaultAttribute.createAttribute(number);
  }

  private static Attribute words(String text) {
    return DefaultAttribute.createAttribute(PlainText.oneLine(text));
  }
}
