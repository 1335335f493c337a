package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.check.Check;
import lozengy.model.score.Scorer;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.gallery.Exhibit;
import lozengy.solver.gallery.Gallery;
import lozengy.solver.gallery.GalleryLook;
import org.junit.jupiter.api.Test;

class GalleryTest {

  private static Gallery gallery(String name, List<GalleryLook> looks) {
    Blanket blanket = ExampleBriefs.blanket(name);
    return Gallery.of(blanket, looks, Solver::solve, SolveOptions.defaults().withMoves(300_000));
  }

  @Test
  void everyLookIsSeenInWhatItAsksForAndKeepsTheRules() {
    Gallery gallery = gallery("cushion", List.of(GalleryLook.values()));
    assertEquals(GalleryLook.values().length, gallery.exhibits().size());
    Arrangement plain = gallery.plain().orElseThrow().arrangement().orElseThrow();
    List<GalleryLook> found = new ArrayList<>();
    for (Exhibit exhibit : gallery.exhibits()) {
      if (exhibit.arrangement().isEmpty()) {
        continue;
      }
      found.add(exhibit.look());
      Arrangement shown = exhibit.arrangement().get();
      assertEquals(List.of(), Check.faults(shown.blanket(), shown.sequences()));
      // by the look's own brief it is better than what was found without the look
      Optional<Part> part = part(exhibit.look());
      if (part.isPresent()) {
        double here = shown.score().parts().get(part.get());
        double without =
            Scorer.score(shown.blanket(), plain.sequences(), Optional.empty())
                .parts()
                .get(part.get());
        assertTrue(here >= without, exhibit.look() + ": " + here + " < " + without);
      }
      // and what it costs is told by the brief as it is
      assertEquals(
          Scorer.score(gallery.blanket(), shown.sequences(), Optional.empty()),
          exhibit.asAsked().orElseThrow());
    }
    assertTrue(found.size() >= 8, found.toString());
    assertEquals(
        found.size(),
        new HashSet<>(
                gallery.exhibits().stream()
                    .flatMap(each -> each.arrangement().stream())
                    .map(Arrangement::sequences)
                    .toList())
            .size(),
        "no two looks are the same blanket");
  }

  private static Optional<Part> part(GalleryLook look) {
    return switch (look) {
      case SCATTERED, ORDERED -> Optional.of(Part.ORDER);
      case FADE_RIGHT, FADE_DOWN, FADE_DIAGONAL, FROM_CENTRE -> Optional.of(Part.FADE);
      case CALM, LIVELY -> Optional.of(Part.CONTRAST);
      default -> Optional.empty();
    };
  }

  @Test
  void aLookThatTheBriefCannotHoldIsAmongThem() {
    // a locked yarn is banned from the piece's image, which would have to follow
    Gallery gallery = gallery("locked-throw", List.of(GalleryLook.MIRRORED));
    Exhibit mirrored = gallery.exhibits().get(1);
    assertEquals(GalleryLook.MIRRORED, mirrored.look());
    assertTrue(mirrored.arrangement().isEmpty());
    boolean told =
        !mirrored.mistakes().isEmpty()
            || mirrored.result().filter(SolveResult.Impossible.class::isInstance).isPresent();
    assertTrue(told, mirrored.toString());
    assertNotEquals(Optional.empty(), gallery.plain());
  }
}
