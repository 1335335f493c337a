package lozengy.report.page;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.report.BlanketWords;
import lozengy.report.Cautions;
import lozengy.report.Markup;
import lozengy.report.chart.Drawing;

/** Puts the page together. The same arrangement and file name give the same text. */
public final class Page {

  private final Arrangement arrangement;
  private final Blanket blanket;
  private final String file;

  private Page(Arrangement arrangement, String file) {
    this.arrangement = arrangement;
    this.blanket = arrangement.blanket();
    this.file = file;
  }

  /**
   * Writes an arrangement as a page.
   *
   * @param arrangement a complete arrangement
   * @param file the arrangement's file as a command names it, for the commands that the page makes
   * @return an HTML document
   */
  public static String html(Arrangement arrangement, String file) {
    return new Page(arrangement, file).write();
  }

  private String write() {
    String script = resource("page.js");
    Markup html = Markup.html("lang", "en");
    html.open("head");
    html.empty("meta", "charset", "utf-8");
    html.empty(
        "meta",
        "http-equiv",
        "Content-Security-Policy",
        "content",
        "default-src 'none'; base-uri 'none'; form-action 'none'; style-src 'unsafe-inline';"
            + " script-src 'sha256-"
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
    new ScoreSection(html, arrangement).write();
    new TakesSection(html, arrangement).write();
    new YarnSection(html, arrangement).write();
    new WorkSections(html, arrangement).write();
    new ChangeSection(html, arrangement).write();
    cautions(html);
    html.close();
    html.verbatim(
        "script", PageData.json(arrangement, file), "id", "data", "type", "application/json");
    html.verbatim("script", script);
    html.close();
    return html.finish();
  }

  private void head(Markup html) {
    html.open("header");
    html.text("h1", blanket.brief().title());
    html.text(
        "p",
        BlanketWords.size(blanket)
            + ", "
            + BlanketWords.setting(blanket)
            + ": "
            + BlanketWords.pieces(blanket));
    html.open("nav", "aria-label", "On this page");
    link(html, "plan", "Blanket");
    link(html, "score", "Score");
    if (blanket.brief().forSale().isPresent()) {
      link(html, "takes", "What it takes");
    }
    link(html, "yarns", "Yarns");
    if (!blanket.brief().pile().isEmpty()) {
      link(html, "pile", "Pile");
    }
    link(html, "make", "Make list");
    link(html, "strips", "Strips");
    if (arrangement.earlier().isPresent()) {
      link(html, "changes", "Changes");
    }
    html.close();
    html.close();
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

  private static String sha256(String text) {
    try {
      byte[] hash =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(hash);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
