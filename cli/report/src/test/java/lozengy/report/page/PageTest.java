package lozengy.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.brief.Part;
import lozengy.model.card.LayerCard;
import lozengy.model.card.ScoreCard;
import lozengy.model.layout.Strips;
import lozengy.model.making.MakeList;
import lozengy.model.making.WorkOrder;
import lozengy.model.making.WorkStep;
import lozengy.model.making.WorkSteps;
import lozengy.model.progress.Mark;
import lozengy.model.progress.MarkedArrangement;
import lozengy.report.Figures;
import lozengy.report.Markup;
import lozengy.report.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PageTest {

  private static final int MOST_BYTES = 500_000;

  private final Arrangement arrangement = Samples.saltmarshThrow();
  private final String page = Page.html(arrangement, "throw.arrangement.json");

  private static int count(String text, String part) {
    return text.split(Pattern.quote(part), -1).length - 1;
  }

  private static JsonNode data(String page) throws Exception {
    Matcher data =
        Pattern.compile(
                "<script id=\"data\" type=\"application/json\">(.*?)</script>", Pattern.DOTALL)
            .matcher(page);
    assertTrue(data.find());
    return new ObjectMapper().readTree(data.group(1));
  }

  @Test
  void everyPieceRoundYarnAndStripIsThere() {
    Blanket blanket = arrangement.blanket();
    assertEquals(blanket.pieceCount(), count(page, "role=\"option\""));
    int rounds = 0;
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      rounds += blanket.roundCount(piece);
    }
    assertEquals(rounds, count(page, "<polygon "));
    assertEquals(Strips.of(blanket.layout()).size(), count(page, "<li id=\"strip-"));
    for (int yarn = 0; yarn < blanket.yarnCount(); yarn++) {
      assertTrue(page.contains(".y" + yarn + "{--y:" + blanket.yarn(yarn).colour().hex() + ";"));
    }
  }

  @Test
  void dataSaysWhatTheArrangementSays() throws Exception {
    JsonNode data = data(page);
    Blanket blanket = arrangement.blanket();
    assertEquals("throw.arrangement.json", data.get("file").asText());
    assertEquals(blanket.pieceCount(), data.get("pieces").size());
    for (int piece = 0; piece < blanket.pieceCount(); piece++) {
      JsonNode each = data.get("pieces").get(piece);
      assertEquals(blanket.place(piece).name(), each.get(0).asText());
      assertEquals(blanket.state(piece).ordinal(), each.get(2).asInt());
      for (int round = 0; round < blanket.roundCount(piece); round++) {
        assertEquals(arrangement.sequences().yarn(piece, round), each.get(7).get(round).asInt());
      }
    }
    assertEquals(3 * blanket.layout().seams().size(), data.get("seams").size());
    assertFalse(data.has("earlier"));
  }

  /** Page, terminal and booklet go by one order: that of the model. */
  @ParameterizedTest
  @EnumSource
  void dataBearsTheOrderOfTheWork(WorkOrder order) throws Exception {
    WorkSteps steps = WorkSteps.of(arrangement, order);
    JsonNode told = data(page).get("steps").get(order.word());
    assertEquals(steps.count(), told.get("count").asInt());
    assertEquals(steps.left().size(), told.get("left").size());
    for (int i = 0; i < steps.left().size(); i++) {
      JsonNode each = told.get("left").get(i);
      assertEquals(steps.left().get(i).number(), each.get(0).asInt());
      if (steps.left().get(i) instanceof WorkStep.Work work) {
        List<Integer> pieces = new ArrayList<>();
        if (each.get(2).isInt()) {
          work.tasks().forEach(task -> pieces.add(each.get(2).asInt()));
        }
        for (JsonNode round : each.get(2)) {
          for (int k = 1; k < round.size(); k++) {
            pieces.add(round.get(k).asInt());
          }
        }
        assertEquals(work.tasks().stream().map(MakeList.Task::piece).toList(), pieces);
      }
    }
  }

  /** Ticks outlast what is marked, and are never taken for those of another plan. */
  @Test
  void aPlanIsKnownHoweverFarItHasCome() throws Exception {
    Mark made = Mark.NONE.withSteps(List.of(new Mark.Step("--step", 1, 3, List.of())));
    Arrangement later = MarkedArrangement.of(arrangement, made);
    JsonNode plan = data(page).get("plan");
    assertEquals(plan, data(Page.html(later, "x")).get("plan"));
    Arrangement one =
        Samples.filled(Samples.brief("A", Samples.onPoint(2, 2), Samples.yarns(), List.of()), 3);
    Arrangement other =
        Samples.filled(Samples.brief("A", Samples.onPoint(2, 2), Samples.yarns(), List.of()), 4);
    assertNotEquals(data(Page.html(one, "x")).get("plan"), data(Page.html(other, "x")).get("plan"));
  }

  @Test
  void everyIdIsThereOnce() {
    List<String> ids =
        Pattern.compile(" id=\"([^\"]+)\"").matcher(page).results().map(m -> m.group(1)).toList();
    assertEquals(ids.size(), Set.copyOf(ids).size(), "an id is there twice");
  }

  @Test
  void theScoreSectionBearsTheCardsFigures() {
    ScoreCard card =
        ScoreCard.of(arrangement.blanket(), arrangement.sequences(), arrangement.earlier());
    String section = page.substring(page.indexOf("id=\"score\""), page.indexOf("Moran's I:"));
    assertTrue(section.contains(">" + Figures.fixed(card.repeats().z(), 1) + "<"), section);
    for (LayerCard layer : card.layers()) {
      assertTrue(section.contains(">" + Figures.fixed(layer.repeats().expected(), 0) + "<"));
      assertTrue(section.contains(">" + Figures.fixed(layer.lightness().observed(), 2) + "<"));
    }
    String spread = Figures.fixed(card.chance().get(Part.SPREAD).mean(), 1);
    assertTrue(section.contains(">" + spread + "<"), spread);
    assertTrue(page.contains("Closest borders on a seam: "));
  }

  @Test
  void needsNothingBesideItAndRunsItsOwnScriptAlone() throws Exception {
    Matcher policy = Pattern.compile("script-src 'sha256-([^']+)'").matcher(page);
    assertTrue(policy.find());
    String script = page.substring(page.lastIndexOf("<script>") + 8, page.lastIndexOf("</script>"));
    byte[] hash =
        MessageDigest.getInstance("SHA-256").digest(script.getBytes(StandardCharsets.UTF_8));
    assertEquals(Base64.getEncoder().encodeToString(hash), policy.group(1));
    assertTrue(page.contains("default-src 'none'"));
    assertEquals(0, count(page, " src="));
    assertEquals(0, count(page, "<link"));
    assertEquals(0, count(page, "url("));
    assertEquals(1, count(page, "://"), "the namespace of SVG alone");
  }

  @Test
  void weighsLittle() {
    Arrangement large =
        Samples.filled(
            Samples.brief("Large", Samples.onPoint(8, 9), Samples.yarns(), List.of()), 3);
    assertTrue(large.blanket().pieceCount() >= 143);
    int bytes = Page.html(large, "x").getBytes(StandardCharsets.UTF_8).length;
    assertTrue(bytes < MOST_BYTES, bytes + " bytes");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "</script><script>hacked()</script>",
        "<img src=x onerror=hacked()>",
        "\"><svg onload='hacked()'>",
        "<!--",
        "]]>&lt;b&gt;",
      })
  void namesCannotInjectMarkup(String words) throws Exception {
    List<String> names = Collections.nCopies(Samples.yarns().size(), words);
    String odd = Page.html(Samples.named(words, names), words);
    String tame = Page.html(Samples.named("x", Collections.nCopies(names.size(), "x")), "x");
    assertEquals(count(tame, "<script"), count(odd, "<script"));
    assertEquals(count(tame, "</script"), count(odd, "</script"));
    assertEquals(count(tame, "<svg"), count(odd, "<svg"));
    assertEquals(count(tame, "<!--"), count(odd, "<!--"));
    assertEquals(0, count(odd, "<img"));
    assertEquals(words, data(odd).get("yarns").get(0).get(1).asText());
    assertEquals(words, data(odd).get("file").asText());
  }

  @Test
  void controlCharactersAndDirectionMarksAreNotPassedOn() {
    List<String> names = Collections.nCopies(Samples.yarns().size(), "a\u0000b\u202ec\u001b[31m");
    String odd = Page.html(Samples.named("a\u0000b\u202ec", names), "a\u0000b");
    assertTrue(
        odd.chars().noneMatch(c -> c < ' ' && c != '\n' || c == 0x202e || c == 0x7f),
        "none is left");
  }

  @Test
  void sameArrangementGivesTheSameText() {
    assertEquals(page, Page.html(Samples.saltmarshThrow(), "throw.arrangement.json"));
  }

  @Test
  void verbatimTextCannotEndItsElement() {
    Markup html = Markup.html();
    assertThrows(IllegalArgumentException.class, () -> html.verbatim("script", "x </script> y"));
  }
}
