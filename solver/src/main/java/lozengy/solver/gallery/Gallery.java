package lozengy.solver.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.input.InputException;
import lozengy.model.score.Score;
import lozengy.model.score.Scorer;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solving;

/**
 * One brief solved under several looks, each within what the brief allows. A look that the brief
 * cannot hold is among the exhibits too, with the reason.
 *
 * @param blanket the blanket as the brief asks for it
 * @param exhibits one for each look, in the order they were asked for
 * @param notReached looks before which the search was stopped
 */
public record Gallery(Blanket blanket, List<Exhibit> exhibits, List<GalleryLook> notReached) {

  /**
   * Copies the lists.
   *
   * @param blanket the blanket as the brief asks for it
   * @param exhibits one for each look
   * @param notReached looks before which the search was stopped
   */
  public Gallery {
    exhibits = List.copyOf(exhibits);
    notReached = List.copyOf(notReached);
  }

  /**
   * Solves a blanket under looks, one after the other; O(looks) solves.
   *
   * @param blanket the blanket
   * @param looks the looks; the brief as it is comes first in any case, for the others are held
   *     against it
   * @param solving what solves
   * @param options seed and limits of each solve
   * @return the gallery
   */
  public static Gallery of(
      Blanket blanket, List<GalleryLook> looks, Solving solving, SolveOptions options) {
    List<GalleryLook> all = new ArrayList<>(List.of(GalleryLook.AS_ASKED));
    looks.stream().filter(look -> !all.contains(look)).forEach(all::add);
    List<Exhibit> exhibits = new ArrayList<>();
    for (GalleryLook look : all) {
      if (!options.stop().getAsBoolean()) {
        exhibits.add(exhibit(blanket, look, solving, options));
      }
    }
    return new Gallery(blanket, exhibits, all.subList(exhibits.size(), all.size()));
  }

  private static Exhibit exhibit(
      Blanket blanket, GalleryLook look, Solving solving, SolveOptions options) {
    Optional<Brief> brief = look.of(blanket);
    if (brief.isEmpty()) {
      return new Exhibit(look, Optional.empty(), List.of(), Optional.empty(), Optional.empty());
    }
    Blanket asked;
    try {
      asked = Blanket.of(brief.get());
    } catch (InputException e) {
      return new Exhibit(look, Optional.empty(), e.mistakes(), Optional.empty(), Optional.empty());
    }
    SolveResult result = solving.solve(asked, Optional.empty(), options);
    Optional<Score> score =
        result instanceof SolveResult.Found found
            ? Optional.of(Scorer.score(blanket, found.arrangement().sequences(), Optional.empty()))
            : Optional.empty();
    return new Exhibit(look, Optional.of(asked), List.of(), Optional.of(result), score);
  }

  /** {@return what was found as the brief asks, where something was} */
  public Optional<Exhibit> plain() {
    return exhibits.stream()
        .filter(each -> each.look() == GalleryLook.AS_ASKED && each.arrangement().isPresent())
        .findFirst();
  }
}
