package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lozengy.model.brief.Symmetry;
import lozengy.model.check.Subject.SeamPart;

/** What may not meet on a seam has to. */
public sealed interface SeamReason extends Reason {

  /**
   * The yarns that two rounds of pieces on a seam may have, no two of which may meet.
   *
   * @param part whether it is their borders or their centres
   * @param first yarns of the first
   * @param second yarns of the second
   * @param alike whether some look too much alike
   * @param apart whether some are to be kept apart
   */
  record Clash(
      SeamPart part, List<Integer> first, List<Integer> second, boolean alike, boolean apart) {}

  /**
   * Borders or centres on a seam clash whatever they take.
   *
   * @param pieces the pieces on such seams, which all have the same clash
   * @param seams how many seams
   * @param clash what clashes
   */
  record SeamStuck(List<Integer> pieces, int seams, Clash clash) implements SeamReason {
    @Override
    public String code() {
      return "seam-stuck";
    }

    @Override
    public List<Integer> yarns() {
      List<Integer> yarns = new ArrayList<>(clash.first());
      clash.second().stream().filter(yarn -> !yarns.contains(yarn)).forEach(yarns::add);
      return yarns;
    }

    @Override
    public Map<String, Integer> counts() {
      return Map.of("seams", seams);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.seamStuck(this);
    }
  }

  /**
   * Two pieces on a seam are each other's images.
   *
   * @param pieces the two
   * @param symmetry the symmetry
   * @param part whether their borders or their centres would be the same
   */
  record ImagesJoined(List<Integer> pieces, Symmetry symmetry, SeamPart part)
      implements SeamReason {
    @Override
    public String code() {
      return "images-joined";
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.imagesJoined(this);
    }
  }
}
