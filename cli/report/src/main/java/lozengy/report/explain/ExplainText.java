package lozengy.report.explain;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.report.Figures;
import lozengy.report.Paragraph;
import lozengy.report.ShellWord;
import lozengy.report.wording.Wording;
import lozengy.solver.explain.Explanation;
import lozengy.solver.explain.miss.NearestMiss;
import lozengy.solver.explain.remedy.Cause;
import lozengy.solver.explain.remedy.Remedy;

/** An explanation in a maker's words. */
public final class ExplainText {

  private static final String INDENT = "  ";
  private static final String DEEPER = "    ";
  private static final String DEEPEST = "       ";

  private final Blanket blanket;
  private final Wording wording;
  private final FileLines places;
  private final String input;
  private final List<String> options;
  private final int notes;
  private final List<String> text = new ArrayList<>();

  /**
   * Makes a text.
   *
   * @param places where the brief's lines stand
   * @param input what the file is called
   * @param options options that changed what is asked for
   * @param notes how many notes on pieces there are without the options
   */
  public ExplainText(
      Blanket blanket, FileLines places, String input, List<String> options, int notes) {
    this.blanket = blanket;
    this.wording = new Wording(blanket);
    this.places = places;
    this.input = input;
    this.options = options;
    this.notes = notes;
  }

  /**
   * The lines.
   *
   * @param written where an arrangement went
   */
  public List<String> lines(Explanation explanation, Optional<Path> written) {
    String title = blanket.brief().title();
    if (explanation instanceof Explanation.Fits) {
      paragraph("", "", title + ": an arrangement fits. 'lozengy solve' plans a good one.");
    } else if (explanation instanceof Explanation.Impossible impossible) {
      paragraph("", "", title + ": no arrangement fits. That is proved.");
      causes("Why", impossible.causes());
      causes("What is still in the way when that is mended", impossible.beside());
      remedies(impossible.remedies(), impossible.remediesComplete());
    } else {
      paragraph(
          "",
          "",
          title
              + ": no arrangement was found, and it is not proved that there is none. 'lozengy"
              + " solve' with more --moves or --seconds may find one.");
    }
    if (explanation.nearest().isPresent()) {
      nearest(explanation.nearest().get());
    } else if (!(explanation instanceof Explanation.Fits)) {
      noNearest();
    }
    written.ifPresent(path -> text.add("Wrote " + path));
    return text;
  }

  private void paragraph(String first, String others, String words) {
    text.addAll(Paragraph.lines(first, others, words));
  }

  private void causes(String title, List<Cause> causes) {
    if (causes.isEmpty()) {
      return;
    }
    text.add("");
    text.add(title);
    for (Cause cause : causes) {
      cause.reason().ifPresent(reason -> paragraph(INDENT, DEEPER, wording.of(reason)));
      String head = wording.head(cause.conflict());
      paragraph(cause.reason().isPresent() ? DEEPER : INDENT, DEEPER, head);
      wording
          .lines(cause.conflict().lines(), places)
          .forEach(line -> paragraph(DEEPER, DEEPEST, line));
      if (cause.more() > 0) {
        paragraph(INDENT, DEEPER, "and " + cause.more() + " more like it");
      }
    }
  }

  private void remedies(List<Remedy> remedies, boolean complete) {
    text.add("");
    if (remedies.isEmpty()) {
      paragraph("", INDENT, "What would help: nothing that was tried makes it fit.");
      return;
    }
    paragraph(
        "", INDENT, "What would help, the least upset first; each was tried, and something fits");
    for (int i = 0; i < remedies.size(); i++) {
      remedy(i + 1, remedies.get(i));
    }
    if (!complete) {
      paragraph(INDENT, DEEPER, "Not all was tried within the limit.");
    }
  }

  private void remedy(int number, Remedy remedy) {
    paragraph(INDENT + number + ". ", DEEPEST, wording.of(remedy));
    for (Remedy.Step step : remedy.steps()) {
      paragraph(DEEPEST, DEEPEST + INDENT, how(step));
    }
  }

  private String how(Remedy.Step step) {
    String change = wording.value(step).orElse("leave it out");
    if (places.wish(step.path()).isPresent()) {
      return places.path(step.path()) + ": " + change;
    }
    if (step.path().inItem("pieces") && step.path().index().getAsInt() >= notes) {
      return "the options given: " + change;
    }
    List<String> same = wording.options(step.change());
    if (!same.isEmpty() && !places.notes()) {
      return "lozengy solve "
          + ShellWord.of(input)
          + options.stream().map(each -> " " + ShellWord.of(each)).reduce("", String::concat)
          + " "
          + String.join(" ", same);
    }
    return places.place(step.path()) + ": " + change;
  }

  private void nearest(NearestMiss miss) {
    text.add("");
    text.add("To start anyway");
    paragraph(
        INDENT,
        DEEPER,
        "%s can be left open, %s of yarn in %s, and all else be worked by every rule; %s"
            .formatted(
                Figures.count(miss.rounds(), "round"),
                Words.metres(miss.millimetres()),
                Figures.count(miss.pieces(), "piece"),
                miss.fewest() ? "with fewer open it is proved impossible" : "fewer may do"));
    OpenRounds.of(blanket, miss.sequences())
        .forEach(open -> paragraph(INDENT, DEEPER, open.words(blanket)));
  }

  private void noNearest() {
    text.add("");
    text.add("To start anyway");
    paragraph(
        INDENT,
        DEEPER,
        "No partial plan is shown: even with rounds left open, a rule, the look, the yarn or the"
            + " pile would not be met.");
  }
}
