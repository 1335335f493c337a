package lozengy.solver.bound;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import lozengy.model.arrangement.Arrangement.Bound;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Preferences;
import lozengy.model.score.Part;

/**
 * For each part of the score alone a figure that no valid arrangement exceeds: the bound of the
 * same brief with no other part weighing.
 */
public final class PartBounds {

  private PartBounds() {}

  /**
   * Bounds parts one by one.
   *
   * @param blanket the blanket
   * @param earlier the sequences that would be solved from
   * @param parts the parts
   * @param limits how much effort to spend on each
   * @param stop asked now and then; once true, what is proved so far is given
   * @return a bound for each of the parts
   */
  public static Map<Part, Bound> of(
      Blanket blanket,
      Optional<Sequences> earlier,
      Set<Part> parts,
      BoundLimits limits,
      BooleanSupplier stop) {
    Map<Part, Bound> bounds = new EnumMap<>(Part.class);
    for (Part part : parts) {
      Map<Part, Double> weights = new EnumMap<>(Part.class);
      for (Part each : Part.values()) {
        weights.put(each, each == part ? 1.0 : 0.0);
      }
      Blanket alone = Blanket.ofUnjudged(blanket.brief().withPrefer(new Preferences(weights)));
      bounds.put(part, Bounds.of(alone, earlier, limits, stop));
    }
    return bounds;
  }
}
