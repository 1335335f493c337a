package lozengy.solver.gallery;

import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.input.Mistake;
import lozengy.model.score.Score;
import lozengy.solver.SolveResult;

/**
 * What came of one look.
 *
 * @param look the look
 * @param blanket the blanket that asks for it; empty where the brief leaves the look no room
 * @param mistakes why the brief cannot even ask for the look
 * @param result how solving ended; empty where there was nothing to solve
 * @param asAsked the score of what was found by the brief as it is, without the look
 */
public record Exhibit(
    GalleryLook look,
    Optional<Blanket> blanket,
    List<Mistake> mistakes,
    Optional<SolveResult> result,
    Optional<Score> asAsked) {

  /**
   * Copies the mistakes.
   *
   * @param look the look
   * @param blanket the blanket that asks for it
   * @param mistakes why the brief cannot even ask for the look
   * @param result how solving ended
   * @param asAsked the score of what was found by the brief as it is
   */
  public Exhibit {
    mistakes = List.copyOf(mistakes);
  }

  /** {@return the arrangement, where one was found} */
  public Optional<Arrangement> arrangement() {
    return result
        .filter(SolveResult.Found.class::isInstance)
        .map(found -> ((SolveResult.Found) found).arrangement());
  }

  /**
   * What the look costs a part, by the brief as it is.
   *
   * @param part a part that weighs there
   * @param plain what was found without the look
   * @return figure of the part without the look less that with it, -100 to 100; above 0 where the
   *     look costs something
   */
  public double cost(Part part, Score plain) {
    return plain.parts().get(part) - asAsked.orElseThrow().parts().get(part);
  }
}
