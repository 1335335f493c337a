package lozengy.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringReader;
import java.util.Collections;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.layout.Contact;
import lozengy.model.layout.Place;
import org.jgrapht.Graph;
import org.jgrapht.Graphs;
import org.jgrapht.graph.DefaultEdge;
import org.jgrapht.graph.SimpleGraph;
import org.jgrapht.nio.graphml.GraphMLImporter;
import org.junit.jupiter.api.Test;

class GraphMlTest {

  private final Map<String, Map<String, String>> nodes = new HashMap<>();
  private final Map<Set<String>, Map<String, String>> edges = new HashMap<>();

  /** Reads a graph back; vertices are the ids. The importer holds it against GraphML's schema. */
  private Graph<String, DefaultEdge> read(String text) {
    Graph<String, DefaultEdge> graph = new SimpleGraph<>(DefaultEdge.class);
    GraphMLImporter<String, DefaultEdge> importer = new GraphMLImporter<>();
    importer.setSchemaValidation(true);
    importer.setVertexFactory(id -> id);
    importer.addVertexAttributeConsumer(
        (at, value) ->
            nodes
                .computeIfAbsent(at.getFirst(), id -> new HashMap<>())
                .put(at.getSecond(), value.getValue()));
    Map<DefaultEdge, Map<String, String>> byEdge = new HashMap<>();
    importer.addEdgeAttributeConsumer(
        (at, value) ->
            byEdge
                .computeIfAbsent(at.getFirst(), id -> new HashMap<>())
                .put(at.getSecond(), value.getValue()));
    importer.importGraph(graph, new StringReader(text));
    byEdge.forEach(
        (edge, values) ->
            edges.put(Set.of(graph.getEdgeSource(edge), graph.getEdgeTarget(edge)), values));
    return graph;
  }

  @Test
  void graphReadsBackAsTheLayoutWithItsColours() {
    Arrangement arrangement = Samples.saltmarshThrow();
    Blanket blanket = arrangement.blanket();
    Graph<Place, Contact> layout = blanket.layout().graph();
    Graph<String, DefaultEdge> graph = read(GraphMl.text(arrangement));

    assertEquals(layout.vertexSet().size(), graph.vertexSet().size());
    assertEquals(layout.edgeSet().size(), graph.edgeSet().size());
    for (Place place : layout.vertexSet()) {
      Set<String> neighbours =
          Graphs.neighborListOf(layout, place).stream()
              .map(Place::name)
              .collect(Collectors.toSet());
      assertEquals(neighbours, Graphs.neighborSetOf(graph, place.name()), place.name());
      int border = arrangement.sequences().border(place.index());
      Map<String, String> node = nodes.get(place.name());
      assertEquals(blanket.yarn(border).code(), node.get("border"));
      assertEquals(blanket.yarn(border).colour().hex(), node.get("colour"));
      assertEquals(place.kind().word(), node.get("kind"));
      assertEquals(blanket.state(place.index()).word(), node.get("state"));
      assertEquals(place.x(), Integer.parseInt(node.get("x")));
    }
    for (Contact contact : layout.edgeSet()) {
      Map<String, String> edge = edges.get(Set.of(contact.first().name(), contact.second().name()));
      assertEquals(contact.kind() == Contact.Kind.SEAM ? "seam" : "touch", edge.get("contact"));
      double expected =
          blanket
              .yarns()
              .difference(
                  arrangement.sequences().border(contact.first().index()),
                  arrangement.sequences().border(contact.second().index()));
      assertEquals(expected, Double.parseDouble(edge.get("colour_difference")), 1e-12);
      boolean seam = contact.kind() == Contact.Kind.SEAM;
      assertEquals(seam, edge.containsKey("seam"));
      if (seam) {
        assertEquals(Math.min(1, expected / 40), Double.parseDouble(edge.get("contrast")), 1e-12);
        assertEquals(blanket.measures().sideCm(), Double.parseDouble(edge.get("length_cm")), 1e-12);
      }
    }
  }

  @Test
  void namesCannotBreakTheMarkup() {
    String name = "</data><node id=\"x\"/>&amp;\u0000]]>";
    Arrangement odd = Samples.named("odd", Collections.nCopies(Samples.yarns().size(), name));
    read(GraphMl.text(odd));
    assertEquals(odd.blanket().pieceCount(), nodes.size());
    Set<String> shown =
        nodes.values().stream().map(node -> node.get("border_name")).collect(Collectors.toSet());
    assertEquals(Set.of("</data><node id=\"x\"/>&amp;?]]>"), shown);
  }

  @Test
  void sameArrangementGivesTheSameText() {
    assertEquals(GraphMl.text(Samples.saltmarshThrow()), GraphMl.text(Samples.saltmarshThrow()));
  }
}
