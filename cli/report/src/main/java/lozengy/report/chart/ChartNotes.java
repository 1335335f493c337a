package lozengy.report.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.report.PlainText;
import lozengy.report.TextWidth;

/** What is said below the legend, in lines that fit the page. */
final class ChartNotes {

  private static final double EMS = 1.07 * ChartPage.CONTENT_WIDTH / ChartFurniture.SMALL_FONT;

  private ChartNotes() {}

  static List<String> of(
      Blanket blanket, Drawing drawing, Legend legend, long withoutLetters, boolean letters) {
    String uses =
        blanket.brief().joining().isPresent() || !blanket.brief().edging().isEmpty()
            ? ", joining and edging included"
            : "";
    StringBuilder notes = new StringBuilder("Metres: what the blanket takes" + uses + ".");
    notes.append(" Colours are only roughly the yarns'.");
    notes.append(
        MarginNumbers.aligned(drawing)
            ? " Numbers: rows at the sides, squares above and below."
            : " Numbers: rows at the sides, squares of odd rows above, of even rows below.");
    if (letters && withoutLetters > 0) {
      long pieces = drawing.pieces().size();
      notes.append(
          withoutLetters == pieces
              ? " No letters: too small to read here;"
              : " No letters on " + withoutLetters + " pieces: too small to read here;");
      notes.append(" see the chart on sheets, the page or the booklet.");
    }
    if (!legend.unused().isEmpty()) {
      notes.append(
          legend.unused().stream()
              .map(yarn -> PlainText.oneLine(blanket.yarn(yarn).name()))
              .collect(Collectors.joining(", ", " Not used: ", ".")));
    }
    return wrapped(notes.toString());
  }

  private static List<String> wrapped(String text) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && TextWidth.ems(longer) > EMS) {
        lines.add(line.toString());
        line.setLength(0);
        longer = word;
      }
      line.setLength(0);
      line.append(TextWidth.fit(longer, EMS));
    }
    lines.add(line.toString());
    return lines;
  }
}
