package lozengy.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.colour.Tone;
import lozengy.model.layout.Pairs;

/**
 * A few words of care. Infants under 12 months sleep without blankets (American Academy of
 * Pediatrics, policy of 2022); those on colour vision follow from the colours; the others are
 * common practice, no source. Local rules and qualified advice come first.
 */
public final class Cautions {

  private static final String ENDS_AND_COTS =
      "Work in every loose end. Keep blankets out of the cot of an infant under 12 months:"
          + " follow your local safe-sleep advice.";
  private static final String HANDS =
      "Give your hands breaks; ask a doctor about pain or numbness.";

  private final Blanket blanket;
  private int dark;
  private int light;
  private double widestGap;

  private Cautions(Blanket blanket) {
    this.blanket = blanket;
  }

  /** The cautions for an arrangement, each a sentence or two. */
  public static List<String> of(Arrangement arrangement) {
    List<String> cautions = new ArrayList<>();
    cautions.add(ENDS_AND_COTS);
    new Cautions(arrangement.blanket()).wash(arrangement.sequences()).ifPresent(cautions::add);
    cautions.add(HANDS);
    cautions.addAll(ColourVisionWords.of(arrangement.blanket(), arrangement.sequences()));
    return cautions;
  }

  /**
   * To wash first, where a dark lies beside a light; names the pair farthest apart in lightness.
   */
  private Optional<String> wash(Sequences sequences) {
    for (int piece = 0; piece < sequences.pieces(); piece++) {
      for (int round = 1; round < sequences.rounds(piece); round++) {
        meet(sequences.yarn(piece, round - 1), sequences.yarn(piece, round));
      }
    }
    Pairs seams = blanket.layout().seams();
    for (int seam = 0; seam < seams.size(); seam++) {
      meet(sequences.border(seams.first()[seam]), sequences.border(seams.second()[seam]));
    }
    return widestGap > 0
        ? Optional.of(
            "Darks lie beside lights ("
                + blanket.yarn(dark).code()
                + " beside "
                + blanket.yarn(light).code()
                + "): wash a swatch of both together before you start.")
        : Optional.empty();
  }

  private void meet(int first, int second) {
    if (first == Sequences.OPEN || second == Sequences.OPEN) {
      return;
    }
    boolean firstIsDark = blanket.yarns().tone(first) == Tone.DARK;
    int darker = firstIsDark ? first : second;
    int lighter = firstIsDark ? second : first;
    double gap = blanket.yarns().lab(lighter).lightness() - blanket.yarns().lab(darker).lightness();
    boolean matters =
        blanket.yarns().tone(darker) == Tone.DARK && blanket.yarns().tone(lighter) == Tone.LIGHT;
    if (matters && gap > widestGap) {
      dark = darker;
      light = lighter;
      widestGap = gap;
    }
  }
}
