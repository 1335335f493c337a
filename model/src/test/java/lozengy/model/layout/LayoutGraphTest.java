package lozengy.model.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.jgrapht.Graph;
import org.jgrapht.GraphTests;
import org.jgrapht.alg.clique.DegeneracyBronKerboschCliqueFinder;
import org.jgrapht.alg.color.SaturationDegreeColoring;
import org.jgrapht.alg.connectivity.ConnectivityInspector;
import org.jgrapht.graph.MaskSubgraph;
import org.junit.jupiter.api.Test;

/** Holds the layout against the graph library's own algorithms. */
class LayoutGraphTest {

  @Property(seed = "10", tries = 300)
  void hasAnEdgeForEverySeamAndTouch(@ForAll(supplier = LayoutSizes.class) LayoutSize size) {
    Layout layout = Layout.of(size);
    Graph<Place, Contact> graph = layout.graph();
    assertEquals(layout.places().size(), graph.vertexSet().size());
    assertEquals(layout.seams().size(), seams(layout).edgeSet().size());
    assertEquals(layout.seams().size() + layout.touches().size(), graph.edgeSet().size());
    for (Contact contact : graph.edgeSet()) {
      assertTrue(contact.first().index() < contact.second().index());
      assertSame(contact.first(), graph.getEdgeSource(contact));
      assertSame(contact.second(), graph.getEdgeTarget(contact));
    }
  }

  /** So two border yarns are enough wherever stock and tones allow them. */
  @Property(seed = "11", tries = 300)
  void seamsNeedTwoColours(@ForAll(supplier = LayoutSizes.class) LayoutSize size) {
    Graph<Place, Contact> seams = seams(Layout.of(size));
    assertTrue(GraphTests.isBipartite(seams));
    int colours = new SaturationDegreeColoring<>(seams).getColoring().getNumberColors();
    assertEquals(seams.edgeSet().isEmpty() ? 1 : 2, colours);
  }

  @Property(seed = "12", tries = 300)
  void blanketsHangTogether(@ForAll(supplier = LayoutSizes.class) LayoutSize size) {
    Layout layout = Layout.of(size);
    assertTrue(new ConnectivityInspector<>(layout.graph()).isConnected());
    boolean pointsOnly =
        size.setting() == Setting.ON_POINT
            && !size.sideTriangles()
            && Math.min(size.across(), size.down()) == 1;
    int parts = new ConnectivityInspector<>(seams(layout)).connectedSets().size();
    assertEquals(pointsOnly ? Math.max(size.across(), size.down()) : 1, parts);
  }

  /** Four pieces meet around a point; no five meet pairwise. */
  @Test
  void fourPiecesMeetAroundAPoint() {
    Graph<Place, Contact> graph = Layout.of(LayoutSizes.filled(4, 5)).graph();
    int largest = 0;
    for (var clique : new DegeneracyBronKerboschCliqueFinder<>(graph)) {
      largest = Math.max(largest, clique.size());
    }
    assertEquals(4, largest);
  }

  @Test
  void isBuiltOnceAndCannotBeChanged() {
    Layout layout = Layout.of(LayoutSizes.filled(2, 2));
    Graph<Place, Contact> graph = layout.graph();
    assertSame(graph, layout.graph());
    Place first = layout.places().get(0);
    assertThrows(UnsupportedOperationException.class, () -> graph.removeVertex(first));
  }

  private static Graph<Place, Contact> seams(Layout layout) {
    return new MaskSubgraph<>(
        layout.graph(), place -> false, contact -> contact.kind() != Contact.Kind.SEAM);
  }
}
