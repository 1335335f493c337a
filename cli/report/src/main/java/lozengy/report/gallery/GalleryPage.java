package lozengy.report.gallery;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.brief.Part;
import lozengy.report.BlanketWords;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.ShellWord;
import lozengy.report.chart.InlinePicture;
import lozengy.solver.gallery.Exhibit;
import lozengy.solver.gallery.Gallery;
import lozengy.solver.gallery.GalleryLook;

/** A gallery as one page for a browser that needs nothing beside it: pictures first. */
public final class GalleryPage {

  private static final double PICTURE_MM = 120;

  private final Gallery gallery;
  private final Map<GalleryLook, String> files;
  private final GalleryWords words;
  private final Markup html = Markup.html("lang", "en");

  private GalleryPage(Gallery gallery, Map<GalleryLook, String> files) {
    this.gallery = gallery;
    this.files = files;
    this.words = new GalleryWords(gallery);
  }

  /**
   * Writes a gallery as a page.
   *
   * @param files the file of each arrangement that was found, as a command names it
   * @return an HTML document
   */
  public static String html(Gallery gallery, Map<GalleryLook, String> files) {
    return new GalleryPage(gallery, files).write();
  }

  private String write() {
    html.open("head");
    html.empty("meta", "charset", "utf-8");
    html.empty(
        "meta",
        "http-equiv",
        "Content-Security-Policy",
        "content",
        "default-src 'none'; base-uri 'none'; form-action 'none'; style-src 'unsafe-inline';"
            + " img-src data:");
    html.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
    html.empty("meta", "name", "color-scheme", "content", "light dark");
    html.text("title", gallery.blanket().brief().title() + ": looks to choose from");
    html.verbatim("style", resource("gallery.css"));
    html.close();
    html.open("body");
    html.open("header");
    html.text("h1", gallery.blanket().brief().title());
    html.text("p", "Looks to choose from: " + BlanketWords.pieces(gallery.blanket()) + ".");
    html.close();
    html.open("main");
    html.open("div", "class", "looks");
    found().forEach(this::figure);
    html.close();
    costs();
    goOn();
    missing();
    html.close();
    html.close();
    return html.finish();
  }

  private List<Exhibit> found() {
    return gallery.exhibits().stream().filter(each -> each.arrangement().isPresent()).toList();
  }

  private void figure(Exhibit exhibit) {
    Arrangement arrangement = exhibit.arrangement().orElseThrow();
    String name = GalleryWords.name(exhibit.look());
    html.open("figure");
    InlinePicture.write(
        html, arrangement, PICTURE_MM, "The blanket, " + name.toLowerCase(Locale.ROOT));
    html.open("figcaption");
    html.text("h2", name);
    html.text("p", GalleryWords.meaning(exhibit.look()));
    html.text("p", words.score(exhibit) + ".");
    html.text("code", files.get(exhibit.look()));
    html.close();
    html.close();
  }

  /** What each look costs the other parts, by the brief as it is. */
  private void costs() {
    if (found().isEmpty()) {
      return;
    }
    html.open("section");
    html.text("h2", "What each look costs");
    html.text(
        "p",
        "By what the brief asks for without the look, each part of 100; in brackets what is won or"
            + " lost against the first row.");
    html.open("div", "class", "scroll", "tabindex", "0");
    html.open("table");
    html.open("thead");
    html.open("tr");
    html.text("th", "Look", "scope", "col");
    html.text("th", "Score", "scope", "col");
    words.parts().forEach(part -> html.text("th", part.word(), "scope", "col"));
    html.close();
    html.close();
    html.open("tbody");
    for (Exhibit exhibit : found()) {
      html.open("tr");
      html.text("th", GalleryWords.name(exhibit.look()), "scope", "row");
      html.text("td", Figures.fixed(exhibit.asAsked().orElseThrow().total(), 1));
      words.parts().forEach(part -> html.text("td", cell(exhibit, part)));
      html.close();
    }
    html.close();
    html.close();
    html.close();
    html.close();
  }

  private String cell(Exhibit exhibit, Part part) {
    String here = Figures.fixed(exhibit.asAsked().orElseThrow().parts().get(part), 1);
    if (exhibit.look() == GalleryLook.AS_ASKED || gallery.plain().isEmpty()) {
      return here;
    }
    double won = -exhibit.cost(part, gallery.plain().get().asAsked().orElseThrow());
    String figure = Figures.fixed(won, 1);
    return Math.abs(won) < 0.05 ? here : here + " (" + (won > 0 ? "+" : "") + figure + ")";
  }

  private void goOn() {
    if (found().isEmpty()) {
      return;
    }
    String file = ShellWord.of(files.get(found().get(found().size() - 1).look()));
    html.open("section");
    html.text("h2", "Take one and go on");
    html.text(
        "p",
        "Each look is an arrangement in a file of its own, with its brief in it. All commands go on"
            + " from there, such as");
    html.open("ul");
    for (String command :
        List.of(
            "lozengy solve " + file + " --seconds 60",
            "lozengy report " + file + " --as pdf",
            "lozengy mark " + file + " --made strip1")) {
      html.open("li");
      html.text("code", command);
      html.close();
    }
    html.close();
    html.close();
  }

  private void missing() {
    List<Exhibit> missing =
        gallery.exhibits().stream().filter(each -> each.arrangement().isEmpty()).toList();
    words.stopped().ifPresent(each -> html.text("p", each + "."));
    if (missing.isEmpty()) {
      return;
    }
    html.open("section");
    html.text("h2", "Looks that this brief does not hold");
    for (Exhibit exhibit : missing) {
      html.text("h3", GalleryWords.name(exhibit.look()));
      html.text("p", GalleryWords.meaning(exhibit.look()));
      words.missing(exhibit).forEach(each -> html.text("p", each));
    }
    html.close();
  }

  private static String resource(String name) {
    try (InputStream in = GalleryPage.class.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(name, e);
    }
  }
}
