package lozengy.solver.gallery;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Fade;
import lozengy.model.brief.Look;
import lozengy.model.brief.Order;
import lozengy.model.brief.Part;
import lozengy.model.brief.Preferences;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;

/**
 * A look that a gallery shows. Each keeps all that a brief asks for and adds its own wish or puts
 * it in the place of another of its kind; where that is a part of the score, the part weighs as
 * much as all others together, for the look is to be seen.
 */
public enum GalleryLook {
  /** As the brief asks. */
  AS_ASKED,
  /** No border comes again regularly. */
  SCATTERED,
  /** Borders come again regularly. */
  ORDERED,
  /** Dark at the left, light at the right. */
  FADE_RIGHT,
  /** Dark at the top, light at the bottom. */
  FADE_DOWN,
  /** Dark at the top left, light at the bottom right. */
  FADE_DIAGONAL,
  /** Light in the middle, dark along the outline. */
  FROM_CENTRE,
  /** As little contrast as may be, between pieces and within. */
  CALM,
  /** As much contrast as may be, between pieces and within. */
  LIVELY,
  /** The left half is the right half in a mirror. */
  MIRRORED,
  /** The same when it is turned upside down. */
  HALF_TURN,
  /** The darker borders along the outline, the lighter ones within. */
  ZONES;

  /** {@return the word used by options and in file names: {@code fade-right}} */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * The brief that asks for this look.
   *
   * @param blanket a blanket of the brief
   * @return the brief; empty where the blanket has nothing that the look could tell apart
   */
  public Optional<Brief> of(Blanket blanket) {
    Brief brief = blanket.brief();
    Look look = brief.look();
    return switch (this) {
      case AS_ASKED -> Optional.of(brief);
      case SCATTERED -> with(brief, look.withOrder(Order.SCATTERED), Part.ORDER);
      case ORDERED -> with(brief, look.withOrder(Order.ORDERED), Part.ORDER);
      case FADE_RIGHT -> fade(brief, Fade.Towards.RIGHT, Fade.Order.DARK_TO_LIGHT);
      case FADE_DOWN -> fade(brief, Fade.Towards.BOTTOM, Fade.Order.DARK_TO_LIGHT);
      case FADE_DIAGONAL -> fade(brief, Fade.Towards.BOTTOM_RIGHT, Fade.Order.DARK_TO_LIGHT);
      case FROM_CENTRE -> fade(brief, Fade.Towards.OUTLINE, Fade.Order.LIGHT_TO_DARK);
      case CALM -> with(brief, look.withContrast(Look.CALM, Look.CALM), Part.CONTRAST);
      case LIVELY -> with(brief, look.withContrast(Look.LIVELY, Look.LIVELY), Part.CONTRAST);
      case MIRRORED -> Optional.of(brief.withLook(look.withSymmetry(Symmetry.LEFT_RIGHT)));
      case HALF_TURN -> Optional.of(brief.withLook(look.withSymmetry(Symmetry.HALF_TURN)));
      case ZONES -> ToneZones.of(blanket).map(zones -> brief.withLook(look.withZones(zones)));
    };
  }

  private static Optional<Brief> fade(Brief brief, Fade.Towards towards, Fade.Order order) {
    // not the borders alone: in many blankets all of these are of one tone
    Fade fade = new Fade(towards, order, List.of(), Where.EVERYWHERE);
    return with(brief, brief.look().withFade(fade), Part.FADE);
  }

  private static Optional<Brief> with(Brief brief, Look look, Part part) {
    Map<Part, Double> weights = new EnumMap<>(brief.prefer().weights());
    boolean contrast = part == Part.CONTRAST;
    if (contrast) {
      weights.put(Part.CONTRAST_BETWEEN, 0.0);
      weights.put(Part.CONTRAST_WITHIN, 0.0);
    }
    weights.put(part, 0.0);
    double others = Part.OF_TOTAL.stream().mapToDouble(weights::get).sum();
    weights.put(part, Math.max(1, others));
    return Optional.of(brief.withLook(look).withPrefer(new Preferences(weights)));
  }
}
