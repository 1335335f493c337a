package lozengy.cli.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import lozengy.cli.Briefs;
import lozengy.cli.JsonSchemas;
import lozengy.cli.Run;
import lozengy.cli.process.Refusal;
import lozengy.model.brief.BriefWriter;
import lozengy.model.check.Fault;
import lozengy.model.check.RuleId;
import lozengy.model.input.SourceText;
import lozengy.model.reading.BriefReader;
import lozengy.report.batch.Line;
import lozengy.solver.SolveOptions;
import lozengy.solver.SolveResult;
import lozengy.solver.Solver;
import lozengy.solver.Solving;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BatchTest {

  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Solving NOTHING_FOUND =
      (blanket, earlier, options) ->
          new SolveResult.Unfinished(
              List.of(new Fault(RuleId.COMPLETE, List.of(0), List.of(0), List.of())));

  @TempDir Path folder;

  private String brief(String title) throws IOException {
    String yaml = Run.of("new", "--across", "2", "--down", "2", "-o", "-").out();
    String text = yaml.replaceAll("title: .*", "title: " + title);
    return oneLine(text);
  }

  /** A brief in YAML as JSON on one line. */
  private static String oneLine(String yaml) throws IOException {
    String json = BriefWriter.text(BriefReader.read(SourceText.of("brief", yaml)));
    return JSON.writeValueAsString(JSON.readTree(json));
  }

  private List<JsonNode> results(Run.Result run) throws IOException {
    List<JsonNode> results = new ArrayList<>();
    for (String line : run.out().split("\n")) {
      results.add(JSON.readTree(line));
    }
    return results;
  }

  private static List<String> schemaMistakes(JsonNode result) {
    return JsonSchemas.mistakes(
        SpecificationVersion.DRAFT_2020_12,
        Run.class,
        "batch-result-1.schema.json",
        result.toString());
  }

  private Run.Result run(String input, String... more) {
    List<String> arguments = new ArrayList<>(List.of("batch", "-"));
    if (!List.of(more).contains("--moves")) {
      arguments.addAll(List.of("--moves", "2000"));
    }
    arguments.addAll(Arrays.asList(more));
    return new Run()
        .input(input.getBytes(StandardCharsets.UTF_8))
        .run(arguments.toArray(String[]::new));
  }

  @Test
  void resultsComeInTheOrderOfTheLines() throws Exception {
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      lines.add(brief("Blanket " + i));
    }
    String input = String.join("\n", lines);
    Run.Result one = run(input, "--workers", "1");
    assertEquals(0, one.code(), one.err());
    List<JsonNode> results = results(one);
    assertEquals(12, results.size());
    for (int i = 0; i < 12; i++) {
      JsonNode result = results.get(i);
      assertEquals(List.of(), schemaMistakes(result));
      assertEquals(i + 1, result.get("line").asInt());
      assertEquals("found", result.get("outcome").asText());
      assertEquals("Blanket " + i, result.at("/arrangement/title").asText());
    }
    assertArrayEquals(one.bytes(), run(input, "--workers", "3").bytes());
  }

  @Test
  void theArrangementIsTheOneThatSolveWrites() throws Exception {
    String file = Briefs.write(folder);
    JsonNode found = results(run(oneLine(Briefs.text(file)))).get(0).get("arrangement");
    Run.Result solved = Run.of("solve", file, "--moves", "2000", "--threads", "1", "-o", "-");
    assertEquals(JSON.readTree(solved.out()), found);
  }

  @Test
  void wrongLinesAreErrorsAndStopNothing() throws Exception {
    String good = brief("Good");
    String many = "[".repeat(3000);
    String input =
        String.join(
            "\n",
            good,
            "",
            "{\"format\":\"lozengy-brief/1\"}",
            "not json",
            "title: yaml is not taken",
            good.replace("\"#", "\"x"),
            many,
            "  \t",
            good);
    Run.Result run = run(input, "--workers", "2");
    assertEquals(0, run.code());
    List<JsonNode> results = results(run);
    List<String> told =
        results.stream().map(r -> r.get("line") + " " + r.get("outcome").asText()).toList();
    assertEquals(
        List.of("1 found", "3 error", "4 error", "5 error", "6 error", "7 error", "9 found"), told);
    for (JsonNode result : results) {
      assertEquals(List.of(), schemaMistakes(result));
      if (result.has("error")) {
        assertEquals(2, result.at("/error/exit").asInt());
        assertTrue(result.at("/error/mistakes").size() >= 1);
      }
    }
    assertTrue(results.get(1).at("/error/mistakes").size() > 2, "all mistakes of the line");
  }

  @Test
  void whatIsNotFoundIsToldWithItsReasons() throws Exception {
    String line = brief("None");
    Run.Result run =
        new Run()
            .input(line.getBytes(StandardCharsets.UTF_8))
            .solving(NOTHING_FOUND)
            .run("batch", "-");
    JsonNode result = results(run).get(0);
    assertEquals("unfinished", result.get("outcome").asText());
    assertEquals("r1c1: round 1 has no yarn", result.get("reasons").get(0).asText());
    assertEquals(List.of(), schemaMistakes(result));
  }

  @Test
  void aFaultOfTheProgramIsAnErrorOfItsLine() throws Exception {
    AtomicInteger calls = new AtomicInteger();
    Solving broken =
        (blanket, earlier, options) -> {
          if (calls.incrementAndGet() == 2) {
            throw new IllegalStateException("broken");
          }
          return NOTHING_FOUND.solve(blanket, earlier, options);
        };
    String line = brief("One") + "\n";
    Run.Result run =
        new Run()
            .input((line + line + line).getBytes(StandardCharsets.UTF_8))
            .solving(broken)
            .run("batch", "-", "--workers", "1");
    assertEquals(0, run.code());
    List<JsonNode> results = results(run);
    assertEquals(1, results.get(1).at("/error/exit").asInt());
    assertEquals("unfinished", results.get(2).get("outcome").asText());
  }

  private static SolveOptions options(BooleanSupplier stop) {
    return SolveOptions.defaults().withMoves(1).withThreads(1).withStop(stop);
  }

  @Test
  void fewLinesAreUnderWayHoweverManyThereAre() throws Exception {
    byte[] line = (brief("Many") + "\n").getBytes(StandardCharsets.UTF_8);
    int count = 3000;
    AtomicInteger written = new AtomicInteger();
    AtomicInteger begun = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    InputStream lines =
        new InputStream() {
          private int at;
          private int left = count;

          @Override
          public int read() {
            throw new UnsupportedOperationException("read by blocks");
          }

          @Override
          public int read(byte[] bytes, int offset, int length) {
            if (left == 0) {
              return -1;
            }
            int read = Math.min(length, line.length - at);
            System.arraycopy(line, at, bytes, offset, read);
            at = (at + read) % line.length;
            left -= at == 0 ? 1 : 0;
            return read;
          }
        };
    Solving solving =
        (blanket, earlier, options) -> {
          most.accumulateAndGet(begun.incrementAndGet() - written.get(), Math::max);
          return NOTHING_FOUND.solve(blanket, earlier, options);
        };
    new Batch(
            lines, result -> written.incrementAndGet() > 0, solving, options(() -> false), 1, 0, 2)
        .run();
    assertEquals(count, written.get());
    assertEquals(count, begun.get());
    // Twice the workers, and one that is written but not yet counted.
    assertTrue(most.get() <= 2 * 2 + 1, most + " were under way");
  }

  @Test
  void aResultComesBeforeTheNextLineIsRead() throws Exception {
    byte[] line = (brief("Asked") + "\n").getBytes(StandardCharsets.UTF_8);
    PipedOutputStream questions = new PipedOutputStream();
    PipedInputStream in = new PipedInputStream(questions, line.length + 1);
    BlockingQueue<byte[]> answers = new LinkedBlockingQueue<>();
    Thread batch =
        new Thread(
            () -> new Batch(in, answers::add, NOTHING_FOUND, options(() -> false), 1, 0, 2).run());
    batch.start();
    for (int i = 0; i < 3; i++) {
      questions.write(line);
      questions.flush();
      assertTrue(answers.poll(60, TimeUnit.SECONDS) != null, "an answer while the pipe is open");
    }
    questions.close();
    batch.join(60_000);
    assertTrue(!batch.isAlive(), "it ends with its input");
  }

  @Test
  void stopsWhenItIsAskedToAndWhenNobodyReads() throws Exception {
    byte[] lines = (brief("Stop") + "\n").repeat(50).getBytes(StandardCharsets.UTF_8);
    AtomicBoolean stop = new AtomicBoolean();
    AtomicInteger written = new AtomicInteger();
    new Batch(
            new ByteArrayInputStream(lines),
            result -> {
              stop.set(written.incrementAndGet() >= 3);
              return true;
            },
            NOTHING_FOUND,
            options(stop::get),
            1,
            0,
            1)
        .run();
    assertTrue(written.get() < 50, written + " written");
    AtomicInteger read = new AtomicInteger();
    new Batch(
            new ByteArrayInputStream(lines),
            result -> read.incrementAndGet() < 4,
            NOTHING_FOUND,
            options(() -> false),
            1,
            0,
            1)
        .run();
    assertEquals(4, read.get());
  }

  @Test
  void inputThatCannotBeReadIsRefused() {
    InputStream broken =
        new InputStream() {
          @Override
          public int read() throws IOException {
            throw new IOException("unplugged");
          }
        };
    Batch batch = new Batch(broken, r -> true, NOTHING_FOUND, options(() -> false), 1, 0, 1);
    Refusal refusal = assertThrows(Refusal.class, batch::run);
    assertTrue(refusal.getMessage().contains("unplugged"));
    assertEquals(2, Run.of("batch", folder.resolve("none").toString()).code());
    assertEquals(2, Run.of("batch", "-", "--workers", "0").code());
  }

  @Test
  void anInputThatFailsOtherwiseEndsTheBatchToo() {
    for (Throwable failure :
        List.of(new IllegalStateException("odd"), new OutOfMemoryError("odd"))) {
      InputStream broken =
          new InputStream() {
            @Override
            public int read() {
              if (failure instanceof Error error) {
                throw error;
              }
              throw (IllegalStateException) failure;
            }
          };
      Batch batch = new Batch(broken, r -> true, NOTHING_FOUND, options(() -> false), 1, 0, 1);
      assertTrue(assertThrows(Throwable.class, batch::run).toString().contains("odd"));
    }
  }

  @Test
  void linesAreSplitAndTooLongOnesSkipped() throws Exception {
    byte[] bytes = new byte[Line.MOST_BYTES + 70_000];
    Arrays.fill(bytes, (byte) 'x');
    bytes[0] = '\n';
    bytes[5] = '\n';
    bytes[bytes.length - 10] = '\n';
    InputLines lines = new InputLines(new ByteArrayInputStream(bytes));
    assertTrue(lines.next().blank());
    assertEquals("xxxx", new String(lines.next().bytes(), StandardCharsets.UTF_8));
    Line longest = lines.next();
    assertTrue(longest.tooLong());
    assertTrue(longest.bytes().length <= Line.MOST_BYTES);
    assertEquals(4, lines.next().number());
    assertNull(lines.next());
  }

  private static String asked(String fields, String document) {
    return "{\"format\": \"lozengy-batch-line/1\", " + fields + "\"document\": " + document + "}";
  }

  @Test
  void aLineMayBringItsIdAndItsSeed() throws Exception {
    String brief = brief("Own");
    String input =
        String.join(
            "\n",
            asked("\"id\": \"A7\", \"seed\": 5, ", brief),
            asked("\"id\": 12, ", brief),
            brief,
            asked("\"id\": \"wrong\", ", "{\"format\": \"lozengy-brief/1\", \"title\": \"Bare\"}"),
            asked("\"id\": \"twice\", \"sede\": 1, ", brief));
    List<JsonNode> results = results(run(input, "--json"));
    assertEquals("A7", results.get(0).get("id").textValue());
    assertEquals(5, results.get(0).at("/arrangement/solved/seed").asInt());
    assertEquals(12, results.get(1).get("id").intValue());
    assertEquals(1, results.get(1).at("/arrangement/solved/seed").asInt());
    assertTrue(results.get(2).path("id").isMissingNode());
    assertEquals("wrong", results.get(3).get("id").textValue());
    assertEquals("Bare", results.get(3).get("title").textValue());
    assertEquals("error", results.get(3).get("outcome").textValue());
    assertEquals("Maybe seed is meant", results.get(4).at("/error/mistakes/0/remedy").textValue());
    for (JsonNode result : results) {
      assertEquals(List.of(), schemaMistakes(result));
    }
    for (String line : input.split("\n")) {
      if (!line.equals(brief)) {
        boolean right = !line.contains("sede") && !line.contains("Bare");
        assertEquals(
            right,
            JsonSchemas.mistakes(
                    SpecificationVersion.DRAFT_2020_12, Run.class, "batch-line-1.schema.json", line)
                .isEmpty());
      }
    }
  }

  @Test
  void theBestOfSeveralSeedsIsKept() throws Exception {
    String brief = brief("Best");
    JsonNode result =
        results(run(asked("\"seed\": 3, \"best-of\": 4, ", brief), "--moves", "200")).get(0);
    assertEquals(List.of(), schemaMistakes(result));
    double best = 0;
    List<Integer> seeds = new ArrayList<>();
    for (JsonNode each : result.get("seeds")) {
      seeds.add(each.get("seed").asInt());
      best = Math.max(best, each.get("objective").asDouble());
    }
    assertEquals(List.of(3, 4, 5, 6), seeds);
    assertEquals(best, result.at("/arrangement/score/objective").asDouble(), 1e-6);
    JsonNode all = results(run(brief, "--moves", "200", "--best-of", "2")).get(0);
    assertEquals(2, all.get("seeds").size());
    assertEquals(2, run(brief, "--best-of", "0").code());
  }

  @Test
  void skippedLinesKeepTheirNumbers() throws Exception {
    String input = String.join("\n", brief("One"), "", brief("Three"), brief("Four"));
    List<String> told =
        results(run(input, "--skip", "2")).stream()
            .map(each -> each.get("line") + " " + each.get("title").textValue())
            .toList();
    assertEquals(List.of("3 Three", "4 Four"), told);
    assertEquals(2, run(input, "--skip", "-1").code());
  }

  @Test
  void aStoppedBatchSaysHowFarItCame() throws Exception {
    AtomicBoolean stop = new AtomicBoolean();
    Solving solving =
        (blanket, earlier, options) -> {
          stop.set(stop.get() || blanket.brief().title().equals("Three"));
          return Solver.solve(blanket, earlier, options);
        };
    String input =
        String.join("\n", brief("One"), brief("Two"), brief("Three"), brief("Four"), brief("Five"));
    Run.Result run =
        new Run()
            .input(input.getBytes(StandardCharsets.UTF_8))
            .solving(solving)
            .stop(stop::get)
            .run("batch", "-", "--workers", "1", "--moves", "2000");
    assertEquals(6, run.code(), run.err());
    List<JsonNode> results = results(run);
    assertEquals(3, results.size());
    assertTrue(results.get(1).path("stopped").isMissingNode());
    assertTrue(results.get(2).get("stopped").booleanValue());
    assertEquals(List.of(), schemaMistakes(results.get(2)));
    assertEquals(
        "lozengy: Stopped. Lines up to 3 have results; of these, what was cut short bears"
            + " \"stopped\": true, from line 3 on. --skip 2 goes on",
        run.err().strip());
  }
}
