package lozengy.model.layout;

import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.graph.AsUnmodifiableGraph;
import org.jgrapht.graph.SimpleGraph;

/** Builds the graph of a layout. */
final class LayoutGraph {

  private LayoutGraph() {}

  static Graph<Place, Contact> of(Layout layout) {
    Graph<Place, Contact> graph = new SimpleGraph<>(Contact.class);
    layout.places().forEach(graph::addVertex);
    addAll(graph, layout.places(), layout.seams(), Contact.Kind.SEAM);
    addAll(graph, layout.places(), layout.touches(), Contact.Kind.TOUCH);
    return new AsUnmodifiableGraph<>(graph);
  }

  private static void addAll(
      Graph<Place, Contact> graph, List<Place> places, Pairs pairs, Contact.Kind kind) {
    for (int i = 0; i < pairs.size(); i++) {
      Place first = places.get(pairs.first()[i]);
      Place second = places.get(pairs.second()[i]);
      graph.addEdge(first, second, new Contact(first, second, kind));
    }
  }
}
