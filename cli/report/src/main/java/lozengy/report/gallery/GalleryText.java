package lozengy.report.gallery;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.brief.Part;
import lozengy.model.score.Score;
import lozengy.report.Json;
import lozengy.report.Paragraph;
import lozengy.report.PlainText;
import lozengy.solver.SolveResult;
import lozengy.solver.gallery.Exhibit;
import lozengy.solver.gallery.Gallery;
import lozengy.solver.gallery.GalleryLook;

/** Tells of a gallery on a terminal and to programs. */
public final class GalleryText {

  private static final String INDENT = "  ";

  private final Gallery gallery;
  private final Map<GalleryLook, String> files;
  private final GalleryWords words;

  /**
   * Words for a gallery.
   *
   * @param files the file of each arrangement that was found, as a command names it
   */
  public GalleryText(Gallery gallery, Map<GalleryLook, String> files) {
    this.gallery = gallery;
    this.files = files;
    this.words = new GalleryWords(gallery);
  }

  /** The looks, a paragraph each. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Exhibit exhibit : gallery.exhibits()) {
      String name = GalleryWords.name(exhibit.look());
      if (exhibit.arrangement().isEmpty()) {
        lines.add(name);
        words
            .missing(exhibit)
            .forEach(each -> lines.addAll(Paragraph.lines(INDENT, INDENT + INDENT, each)));
        continue;
      }
      lines.addAll(Paragraph.lines("", INDENT, name + ": " + words.score(exhibit)));
      String costs = words.costs(exhibit);
      if (!costs.isEmpty()) {
        lines.addAll(Paragraph.lines(INDENT, INDENT + INDENT, costs));
      }
      // in one piece, to be copied
      lines.add(INDENT + PlainText.oneLine(files.get(exhibit.look())));
    }
    words.stopped().ifPresent(each -> lines.addAll(Paragraph.lines("", INDENT, each)));
    return lines;
  }

  /** The same for programs. */
  public Map<String, Object> data() {
    List<Object> looks = new ArrayList<>();
    for (Exhibit exhibit : gallery.exhibits()) {
      Map<String, Object> look = new LinkedHashMap<>();
      look.put("look", exhibit.look().word());
      look.put("outcome", outcome(exhibit));
      if (exhibit.arrangement().isPresent()) {
        look.put("file", files.get(exhibit.look()));
        look.put("score", score(exhibit.asAsked().orElseThrow()));
      } else {
        look.put("reasons", words.missing(exhibit));
      }
      looks.add(look);
    }
    return Json.object(
        "looks",
        looks,
        "not_reached",
        gallery.notReached().stream().map(GalleryLook::word).toList());
  }

  private static String outcome(Exhibit exhibit) {
    if (exhibit.arrangement().isPresent()) {
      return "found";
    }
    Optional<SolveResult> result = exhibit.result();
    boolean refuted = result.isEmpty() || result.get() instanceof SolveResult.Impossible;
    return refuted ? "impossible" : "unfinished";
  }

  private Map<String, Object> score(Score score) {
    Map<String, Object> parts = new LinkedHashMap<>();
    for (Part part : words.parts()) {
      parts.put(part.word(), score.parts().get(part));
    }
    return Json.object("total", score.total(), "parts", parts);
  }
}
