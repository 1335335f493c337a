package lozengy.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import lozengy.cli.Run;
import lozengy.cli.process.Refusal;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.ArrangementReader;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.arrangement.StatedArrangement;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Yarn;
import lozengy.model.input.InputException;
import lozengy.model.input.Mistake;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Node;
import lozengy.model.input.SourceText;
import lozengy.model.input.TreeReader;
import lozengy.model.reading.BriefReader;
import lozengy.report.batch.Line;
import lozengy.report.batch.LineSolver;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.substitute.Listed;

/**
 * What must hold of every reader, whatever bytes it is given: it refuses with mistakes that name a
 * line of the input, or what it reads is written and read again as the same. A reader tells which
 * of the two it did.
 */
public final class FuzzedReaders {

  /** Most yarns that a brief is given by a table of shades. */
  private static final int MOST_SHADES = 100;

  private static final Brief BRIEF =
      BriefReader.read(
          SourceText.of("brief.yaml", Run.of("new", "--across", "2", "--down", "2").out()));

  private FuzzedReaders() {}

  /** The readers by the name of what they read. */
  public static Map<String, Predicate<byte[]>> byName() {
    Map<String, Predicate<byte[]>> readers = new LinkedHashMap<>();
    readers.put("brief-yaml", bytes -> brief(bytes, false));
    readers.put("brief-json", bytes -> brief(bytes, true));
    readers.put("arrangement", FuzzedReaders::arrangement);
    readers.put("pieces", FuzzedReaders::pieces);
    readers.put("shades", FuzzedReaders::shades);
    readers.put("pile", FuzzedReaders::pile);
    readers.put("batch", FuzzedReaders::batchLine);
    return readers;
  }

  private static boolean brief(byte[] bytes, boolean json) {
    Brief brief;
    try {
      brief = BriefReader.read(source(bytes, json));
    } catch (InputException refused) {
      return refusedWell(refused.mistakes(), bytes);
    }
    assertReadsBack(brief);
    return true;
  }

  private static void assertReadsBack(Brief brief) {
    String written = BriefWriter.text(brief);
    Brief again = BriefReader.read(SourceText.of("brief.json", written));
    assertEquals(brief, again);
    assertEquals(written, BriefWriter.text(again));
  }

  private static boolean arrangement(byte[] bytes) {
    StatedArrangement stated;
    try {
      stated = ArrangementReader.read(source(bytes, true));
    } catch (InputException refused) {
      return refusedWell(refused.mistakes(), bytes);
    }
    if (stated.sequences().complete()) {
      Arrangement arrangement = stated.scored();
      String written = ArrangementWriter.text(arrangement);
      Arrangement again =
          ArrangementReader.read(SourceText.of("arrangement.json", written)).scored();
      assertEquals(arrangement.blanket().brief(), again.blanket().brief());
      assertEquals(arrangement.sequences(), again.sequences());
      assertEquals(written, ArrangementWriter.text(again));
    }
    return true;
  }

  private static boolean pieces(byte[] bytes) {
    List<String> read = PieceLists.csv(new String(bytes, StandardCharsets.UTF_8));
    String written =
        "at\n" + read.stream().map(each -> '"' + each + "\"\n").collect(Collectors.joining());
    assertEquals(read, PieceLists.csv(written));
    read.forEach(each -> assertFalse(each.isEmpty()));
    return !read.isEmpty();
  }

  private static boolean shades(byte[] bytes) {
    ShadeFile.Shades shades;
    try {
      shades = ShadeFile.read("shades.csv", new String(bytes, StandardCharsets.UTF_8), BRIEF);
    } catch (Refusal refused) {
      return refusedWell(refused.mistakes(), bytes);
    }
    assertTrue(shades.shades().size() + shades.known().size() > 0);
    if (shades.shades().size() <= MOST_SHADES) {
      List<Yarn> yarns = new ArrayList<>(BRIEF.yarns());
      shades.shades().stream().map(Listed::yarn).forEach(yarns::add);
      assertReadsBack(BRIEF.withYarns(yarns));
    }
    return true;
  }

  private static boolean pile(byte[] bytes) {
    List<PileEntry> entries;
    try {
      entries = PileFile.read("pile.csv", new String(bytes, StandardCharsets.UTF_8), BRIEF);
    } catch (Refusal refused) {
      return refusedWell(refused.mistakes(), bytes);
    }
    String written =
        "kind,count,rounds\n"
            + entries.stream()
                .map(
                    entry ->
                        entry.kind().word()
                            + ","
                            + entry.count()
                            + ","
                            + String.join(" ", entry.rounds())
                            + "\n")
                .collect(Collectors.joining());
    assertEquals(entries, PileFile.read("pile.csv", written, BRIEF));
    return true;
  }

  /** Whatever a line holds, one line of JSON answers it, in which no fault of the program is. */
  private static boolean batchLine(byte[] bytes) {
    LineSolver solver =
        new LineSolver(
            (blanket, earlier, options) -> new SolveResult.Unfinished(List.of()),
            SolveOptions.defaults(),
            1);
    byte[] answer = solver.solve(new Line(1, bytes, false)).bytes().orElseThrow();
    String text = new String(answer, StandardCharsets.UTF_8);
    assertEquals(text.length() - 1, text.indexOf('\n'), text);
    Mistakes none = new Mistakes();
    Node.Mapping result =
        (Node.Mapping) TreeReader.read(new SourceText("result", text, true), none);
    assertTrue(none.none(), text);
    if (result.get("error") instanceof Node.Mapping error) {
      assertEquals("2", ((Node.Scalar) error.get("exit")).text(), text);
      return false;
    }
    return true;
  }

  private static SourceText source(byte[] bytes, boolean json) {
    try {
      SourceText sniffed = SourceText.read("input", new ByteArrayInputStream(bytes));
      return new SourceText(sniffed.name(), sniffed.text(), json);
    } catch (IOException e) {
      throw new UncheckedIOException("memory gives everything", e);
    }
  }

  private static boolean refusedWell(List<Mistake> mistakes, byte[] bytes) {
    assertNotEquals(List.of(), mistakes);
    long lines = 1 + new String(bytes, StandardCharsets.UTF_8).split("\\R", -1).length;
    for (Mistake mistake : mistakes) {
      assertFalse(mistake.found().isBlank(), mistake::words);
      assertFalse(mistake.remedy().isBlank(), mistake::words);
      assertTrue(mistake.line() >= 0 && mistake.line() <= lines, mistake::words);
    }
    return false;
  }
}
