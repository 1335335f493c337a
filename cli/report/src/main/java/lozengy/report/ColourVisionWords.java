package lozengy.report;

import java.util.ArrayList;
import java.util.List;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.Part;
import lozengy.model.card.AlikeSeams;
import lozengy.model.card.ClosestSeam;
import lozengy.model.card.Seams;

/** Warns of seams that people who lack one kind of cone can hardly tell apart. */
public final class ColourVisionWords {

  private ColourVisionWords() {}

  /**
   * A sentence for each type of colour vision that it concerns, where the brief asks for it; open
   * borders are left out. The score card tells of it in any case.
   */
  public static List<String> of(Blanket blanket, Sequences sequences) {
    List<String> words = new ArrayList<>();
    if (blanket.brief().prefer().weight(Part.COLOUR_VISION) == 0) {
      return words;
    }
    for (AlikeSeams alike : Seams.alike(blanket, sequences)) {
      ClosestSeam seam = alike.closest();
      words.add(
          "With a "
              + alike.deficiency().word()
              + " deficiency of colour vision the borders of "
              + Figures.count(alike.seams(), "seam")
              + " are hard to tell apart, most of all "
              + blanket.yarn(sequences.border(seam.first())).code()
              + " beside "
              + blanket.yarn(sequences.border(seam.second())).code()
              + " ("
              + blanket.place(seam.first()).name()
              + ", "
              + blanket.place(seam.second()).name()
              + ").");
    }
    return words;
  }
}
