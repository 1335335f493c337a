package lozengy.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.PieceState;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkSteps;
import lozengy.report.BlanketWords;
import lozengy.report.Cautions;
import lozengy.report.Markup;
import lozengy.report.chart.Drawing;

/** Puts the page together. The same arrangement and file name give the same text. */
public final class Page {

  private final Arrangement arrangement;
  private final Blanket blanket;
  private final Home home;
  private final Map<WorkOrder, WorkSteps> steps = new EnumMap<>(WorkOrder.class);

  /** What the script is made of, in this order; each part is handed what it knows by the last. */
  private static final List<String> SCRIPTS =
      List.of("source", "keep", "blanket", "card", "work", "lists", "main");

  /**
   * Where an arrangement's file lies, for the commands that the page makes.
   *
   * @param file the file as a command names it
   * @param beside the file as seen from the page's folder, with {@code /} between folders, where
   *     the page knows; opened from a disk it can then name the file from any folder
   */
  public record Home(String file, Optional<String> beside) {}

  private Page(Arrangement arrangement, Home home) {
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.home = home;
    for (WorkOrder order : WorkOrder.values()) {
      steps.put(order, WorkSteps.of(arrangement, order));
    }
  }

  /**
   * Writes an arrangement as a page.
   *
   * @param arrangement a complete arrangement
   * @param file the arrangement's file as a command names it, for the commands that the page makes
   * @return an HTML document
   */
  public static String html(Arrangement arrangement, String file) {
    return html(arrangement, new Home(file, Optional.empty()));
  }

  /**
   * Writes an arrangement as a page that may know where its file lies.
   *
   * @param arrangement a complete arrangement
   * @param home where the arrangement's file lies
   * @return an HTML document
   */
  public static String html(Arrangement arrangement, Home home) {
    return new Page(arrangement, home).write();
  }

  private String write() {
    String script =
        SCRIPTS.stream()
            .map(part -> resource(part + ".js"))
            .collect(Collectors.joining("\n", "'use strict';\n(() => {\n", "})();\n"));
    Markup html = Markup.html("lang", "en");
    html.open("head");
    html.empty("meta", "charset", "utf-8");
    html.empty(
        "meta",
        "http-equiv",
        "Content-Security-Policy",
        "content",
        "default-src 'none'; base-uri 'none'; form-action 'none'; style-src 'unsafe-inline';"
            + " img-src data:; script-src 'sha256-"
            + sha256(script)
            + "'");
    html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    html.empty("meta", "name", "color-scheme", "content", "light dark");
    html.text("title", blanket.brief().title());
    html.verbatim("style", resource("page.css") + YarnStyle.css(blanket));
    html.close();
    html.open("body");
    head(html);
    html.open("main");
    Drawing drawing = Drawing.of(blanket, arrangement.sequences());
    new PlanSection(html, arrangement, drawing).write();
    html.open("div", "class", "rest");
    new WorkView(html).write();
    WorkSections work = new WorkSections(html, arrangement, steps.get(WorkOrder.BALL));
    work.makeList();
    work.strips();
    new YarnSection(html, arrangement).write();
    new TakesSection(html, arrangement).write();
    work.pile();
    new ChangeSection(html, arrangement).write();
    new TickSection(html).write();
    new ScoreSection(html, arrangement).write();
    cautions(html);
    html.close();
    html.close();
    html.verbatim(
        "script",
        PageData.json(arrangement, home, steps),
        "id",
        "data",
        "type",
        "application/json");
    html.verbatim("script", script);
    html.close();
    return html.finish();
  }

  private void head(Markup html) {
    html.open("header");
    html.open("div", "class", "top");
    html.text("h1", blanket.brief().title());
    html.text("button", "Undo", "type", "button", "class", "undo", "disabled", "disabled");
    html.close();
    html.text("p", BlanketWords.size(blanket), "class", "hint");
    progress(html);
    html.open("nav", "aria-label", "On this page");
    link(html, "plan", "Blanket");
    link(html, "work", "At work");
    link(html, "make", "Make list");
    link(html, "strips", "Strips");
    link(html, "yarns", "Yarns");
    if (blanket.brief().forSale().isPresent()) {
      link(html, "takes", "What it takes");
    }
    if (!blanket.brief().pile().isEmpty()) {
      link(html, "pile", "Pile");
    }
    if (arrangement.earlier().isPresent()) {
      link(html, "changes", "Changes");
    }
    link(html, "picks", "To the file");
    link(html, "score", "Score");
    html.close();
    html.close();
  }

  /** How far it has come; the script goes on counting with what is ticked. */
  private void progress(Markup html) {
    long finished =
        BlanketWords.inState(arrangement, PieceState.MADE)
            + BlanketWords.inState(arrangement, PieceState.JOINED);
    html.open("div", "class", "progress");
    html.text("p", finished + " of " + blanket.pieceCount() + " made", "id", "progress-told");
    html.text(
        "progress",
        "",
        "id",
        "progress",
        "max",
        blanket.pieceCount(),
        "value",
        finished,
        "aria-labelledby",
        "progress-told");
    html.close();
    html.text(
        "p",
        "This browser keeps nothing of this page: save what you tick before you close it.",
        "id",
        "unkept",
        "class",
        "notice",
        "hidden",
        "hidden");
    html.text("div", "", "id", "others");
  }

  private static void link(Markup html, String id, String words) {
    html.text("a", words, "href", "#" + id);
  }

  private void cautions(Markup html) {
    html.open("section", "id", "care", "aria-labelledby", "care-head");
    html.text("h2", "Take care", "id", "care-head");
    html.open("ul");
    Cautions.of(arrangement).forEach(caution -> html.text("li", caution));
    html.close();
    html.close();
  }

  private static String resource(String name) {
    try (InputStream in = Page.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }

  /** A text's digest in Base64. */
  static String sha256(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
