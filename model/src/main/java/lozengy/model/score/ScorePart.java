package lozengy.model.score;

import java.util.List;
import lozengy.model.brief.Part;

/** A part's figure for complete sequences, and what it loses where. */
interface ScorePart {

  /** Which part it is. */
  Part part();

  /** The figure, 0 to 100. */
  double score();

  /** The losses, each above 0; their points add up to 100 less the figure. */
  List<Loss> losses();
}
