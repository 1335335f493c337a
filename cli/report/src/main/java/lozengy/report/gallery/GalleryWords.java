package lozengy.report.gallery;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lozengy.model.brief.Part;
import lozengy.model.input.Mistake;
import lozengy.model.score.Score;
import lozengy.report.Figures;
import lozengy.report.wording.Wording;
import lozengy.solver.SolveResult;
import lozengy.solver.gallery.Exhibit;
import lozengy.solver.gallery.Gallery;
import lozengy.solver.gallery.GalleryLook;

/** Words of a gallery, the same on its page and on a terminal. */
final class GalleryWords {

  private final Gallery gallery;

  GalleryWords(Gallery gallery) {
    this.gallery = gallery;
  }

  /** What to call a look. */
  static String name(GalleryLook look) {
    return switch (look) {
      case AS_ASKED -> "As the brief asks";
      case SCATTERED -> "Scattered";
      case ORDERED -> "Ordered";
      case FADE_RIGHT -> "Fade to the right";
      case FADE_DOWN -> "Fade downwards";
      case FADE_DIAGONAL -> "Fade from corner to corner";
      case FROM_CENTRE -> "From the centre out";
      case CALM -> "Calm";
      case LIVELY -> "Lively";
      case MIRRORED -> "Mirrored";
      case HALF_TURN -> "Half turn";
      case ZONES -> "Zones by tone";
    };
  }

  /** What a look means, in a sentence. */
  static String meaning(GalleryLook look) {
    return switch (look) {
      case AS_ASKED -> "No look is added.";
      case SCATTERED -> "No border comes again regularly.";
      case ORDERED -> "Borders come again at equal distances, like a woven pattern.";
      case FADE_RIGHT -> "Dark at the left, light at the right.";
      case FADE_DOWN -> "Dark at the top, light at the bottom.";
      case FADE_DIAGONAL -> "Dark at the top left, light at the bottom right.";
      case FROM_CENTRE -> "Light in the middle, dark along the outline.";
      case CALM -> "Neighbours and rounds differ as little as may be.";
      case LIVELY -> "Neighbours and rounds differ as much as may be.";
      case MIRRORED -> "The left half is the right half in a mirror.";
      case HALF_TURN -> "The same when it is turned upside down.";
      case ZONES -> "The darker borders along the outline, the lighter ones within.";
    };
  }

  /** Parts of the score that weigh in the brief as it is. */
  List<Part> parts() {
    return Part.OF_TOTAL.stream()
        .filter(part -> gallery.blanket().brief().prefer().weight(part) > 0)
        .toList();
  }

  /** The score by the brief as it is, and what the look costs of it. */
  String score(Exhibit exhibit) {
    double total = exhibit.asAsked().orElseThrow().total();
    String score = "Score " + Figures.fixed(total, 1) + " of 100";
    Optional<Exhibit> plain = gallery.plain();
    if (plain.isEmpty() || exhibit.look() == GalleryLook.AS_ASKED) {
      return score;
    }
    double less = plain.get().asAsked().orElseThrow().total() - total;
    return score
        + (Math.abs(less) < 0.05
            ? ", the same as without the look"
            : ", "
                + Figures.fixed(Math.abs(less), 1)
                + (less > 0 ? " less" : " more")
                + " than without the look");
  }

  /** What the look costs the parts: {@code spread 12.3 less, variety 2.0 more}. */
  String costs(Exhibit exhibit) {
    Optional<Score> plain = gallery.plain().flatMap(Exhibit::asAsked);
    if (plain.isEmpty() || exhibit.look() == GalleryLook.AS_ASKED) {
      return "";
    }
    List<String> costs = new ArrayList<>();
    for (Part part : parts()) {
      double cost = exhibit.cost(part, plain.get());
      if (Math.abs(cost) >= 0.05) {
        costs.add(
            part.word() + " " + Figures.fixed(Math.abs(cost), 1) + (cost > 0 ? " less" : " more"));
      }
    }
    return costs.isEmpty() ? "no part changes" : String.join(", ", costs);
  }

  /** Why nothing was found, in sentences. */
  List<String> missing(Exhibit exhibit) {
    if (!exhibit.mistakes().isEmpty()) {
      return exhibit.mistakes().stream().map(Mistake::words).toList();
    }
    if (exhibit.blanket().isEmpty()) {
      return List.of("The brief leaves it no room: there is nothing that it could tell apart.");
    }
    Wording wording = new Wording(exhibit.blanket().get());
    SolveResult result = exhibit.result().orElseThrow();
    return result instanceof SolveResult.Impossible impossible
        ? with("Proved: no arrangement of the brief has this look.", wording.of(impossible))
        : with(
            "None was found, and nothing is proved. In the way stood:",
            wording.of((SolveResult.Unfinished) result));
  }

  /** The looks before which the search was stopped, in a sentence. */
  Optional<String> stopped() {
    return gallery.notReached().isEmpty()
        ? Optional.empty()
        : Optional.of(
            "Stopped before: "
                + gallery.notReached().stream()
                    .map(GalleryWords::name)
                    .collect(Collectors.joining(", ")));
  }

  private static List<String> with(String first, List<String> others) {
    List<String> all = new ArrayList<>(List.of(first));
    all.addAll(others.stream().map(String::strip).limit(4).collect(Collectors.toList()));
    return all;
  }
}
