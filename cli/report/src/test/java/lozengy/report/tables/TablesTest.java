package lozengy.report.tables;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.score.Scorer;
import lozengy.report.Samples;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TablesTest {

  private static final ObjectMapper JSON = new ObjectMapper();

  private final Arrangement arrangement = Samples.saltmarshThrow();
  private final Map<String, byte[]> files = Tables.files(arrangement);

  @Test
  void theNamesAreKnownBeforehand() {
    assertEquals(Tables.NAMES, List.copyOf(files.keySet()));
  }

  private static String text(Map<String, byte[]> files, String name) {
    return new String(files.get(name), StandardCharsets.UTF_8);
  }

  private static List<NamedCsvRecord> rows(Map<String, byte[]> files, String name) {
    return CsvReader.builder().ofNamedCsvRecord(text(files, name)).stream().toList();
  }

  private static List<JsonNode> list(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).toList();
  }

  private static List<String> words(JsonNode array) {
    return list(array).stream().map(JsonNode::asText).toList();
  }

  private static List<String> mistakes(String descriptor) {
    try (InputStream profile = TablesTest.class.getResourceAsStream("tabular-data-package.json")) {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4)
          .getSchema(profile)
          .validate(descriptor, InputFormat.JSON)
          .stream()
          .map(Object::toString)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Test
  void descriptorFitsTheStandardsProfile() throws Exception {
    assertEquals(List.of(), mistakes(text(files, "datapackage.json")));
  }

  @Test
  void profileFindsMistakes() throws Exception {
    String descriptor = text(files, "datapackage.json");
    assertFalse(mistakes(descriptor.replace("\"integer\"", "\"whole\"")).isEmpty());
    assertFalse(mistakes(descriptor.replace("\"resources\"", "\"tables\"")).isEmpty());
  }

  @Test
  void everyCellIsWhatTheDescriptorSays() throws Exception {
    hold(files);
    hold(Tables.files(solvedAgain()));
  }

  /** Holds every cell, key and reference against the descriptor. */
  static void hold(Map<String, byte[]> files) throws IOException {
    JsonNode descriptor = JSON.readTree(files.get("datapackage.json"));
    Set<String> named = new HashSet<>(Set.of("datapackage.json"));
    for (JsonNode resource : descriptor.get("resources")) {
      String path = resource.get("path").asText();
      named.add(path);
      List<NamedCsvRecord> rows = rows(files, path);
      List<JsonNode> fields = list(resource.at("/schema/fields"));
      List<String> names = fields.stream().map(field -> field.get("name").asText()).toList();
      String header = String.join(",", names) + "\r\n";
      assertTrue(text(files, path).startsWith(header), path);
      Set<List<String>> keys = new HashSet<>();
      for (NamedCsvRecord row : rows) {
        assertEquals(names, row.getHeader());
        fields.forEach(field -> holdCell(path, field, row.getField(field.get("name").asText())));
        List<String> key =
            words(resource.at("/schema/primaryKey")).stream().map(row::getField).toList();
        assertTrue(keys.add(key), () -> path + " has two rows " + key);
      }
      for (JsonNode reference : resource.at("/schema/foreignKeys")) {
        holdReference(files, rows, reference);
      }
    }
    assertEquals(named, files.keySet());
  }

  private static void holdCell(String path, JsonNode field, String cell) {
    String where = path + " " + field.get("name").asText() + ": " + cell;
    JsonNode constraints = field.path("constraints");
    if (cell.isEmpty()) {
      assertFalse(constraints.path("required").asBoolean(), where);
      return;
    }
    switch (field.get("type").asText()) {
      case "integer" -> {
        assertTrue(cell.matches("-?[0-9]+"), where);
        assertTrue(
            Long.parseLong(cell) >= constraints.path("minimum").asLong(Long.MIN_VALUE), where);
      }
      case "number" -> assertTrue(cell.matches("-?[0-9]+(\\.[0-9]+)?"), where);
      case "boolean" -> assertTrue(Set.of("true", "false").contains(cell), where);
      default ->
          assertTrue(
              constraints.path("enum").isMissingNode()
                  || words(constraints.get("enum")).contains(cell),
              where);
    }
  }

  private static void holdReference(
      Map<String, byte[]> files, List<NamedCsvRecord> rows, JsonNode reference) {
    String there = reference.at("/reference/resource").asText() + ".csv";
    Set<List<String>> keys = new HashSet<>();
    for (NamedCsvRecord row : rows(files, there)) {
      keys.add(words(reference.at("/reference/fields")).stream().map(row::getField).toList());
    }
    for (NamedCsvRecord row : rows) {
      List<String> cells = words(reference.get("fields")).stream().map(row::getField).toList();
      boolean none = cells.stream().allMatch(String::isEmpty);
      assertTrue(none || keys.contains(cells), () -> cells + " is not in " + there);
    }
  }

  @Test
  void tablesSayWhatTheModelSays() {
    Blanket blanket = arrangement.blanket();
    List<NamedCsvRecord> pieces = rows(files, "pieces.csv");
    assertEquals(blanket.pieceCount(), pieces.size());
    NamedCsvRecord made =
        pieces.stream().filter(row -> row.getField("piece").equals("r4c3")).findFirst().get();
    assertEquals("made", made.getField("state"));
    assertEquals("SND HEA MIS RUS CRK", made.getField("sequence"));
    assertEquals("", made.getField("changed_rounds"));

    List<NamedCsvRecord> seams = rows(files, "seams.csv");
    assertEquals(4 * 6 * 8, seams.size());
    for (NamedCsvRecord seam : seams) {
      double stated = Double.parseDouble(seam.getField("colour_difference"));
      int first = blanket.yarnIndex(seam.getField("first_border"));
      int second = blanket.yarnIndex(seam.getField("second_border"));
      assertEquals(blanket.yarns().difference(first, second), stated, 0.00005);
    }

    long[] used = blanket.usedMillimetres(arrangement.sequences());
    List<NamedCsvRecord> yarns = rows(files, "yarns.csv");
    for (int yarn = 0; yarn < used.length; yarn++) {
      BigDecimal stated = new BigDecimal(yarns.get(yarn).getField("used_m"));
      assertEquals(BigDecimal.valueOf(used[yarn], 3), stated);
      long missing = used[yarn] - blanket.yarns().usableMillimetres(yarn);
      double kept = 1 - blanket.brief().rules().keepBackPercent() / 100;
      assertEquals(
          Math.max(0, missing) / kept / 1000,
          Double.parseDouble(yarns.get(yarn).getField("buy_m")),
          0.002);
    }
    BigDecimal inRounds =
        rows(files, "rounds.csv").stream()
            .map(row -> new BigDecimal(row.getField("length_m")))
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    long worked = 0;
    for (int yarn = 0; yarn < used.length; yarn++) {
      worked += used[yarn] - blanket.fixedUse().millimetres(yarn);
    }
    assertEquals(BigDecimal.valueOf(worked, 3), inRounds);
  }

  @Test
  void everySeamSaysWhetherItIsInAStrip() {
    List<NamedCsvRecord> strips = rows(files, "strips.csv");
    Map<String, String> stripOf =
        strips.stream()
            .collect(Collectors.toMap(r -> r.getField("piece"), r -> r.getField("strip")));
    long within = 0;
    for (NamedCsvRecord seam : rows(files, "seams.csv")) {
      boolean same =
          stripOf.get(seam.getField("first")).equals(stripOf.get(seam.getField("second")));
      assertEquals(same ? "within-strip" : "between-strips", seam.getField("seam"));
      within += same ? 1 : 0;
    }
    assertEquals(
        strips.size() - Set.copyOf(stripOf.values()).size(), within, "one less than its pieces");
  }

  @Test
  void makeListLeavesOutWhatIsWorked() {
    List<NamedCsvRecord> list = rows(files, "make-list.csv");
    Set<String> worked = Set.of("top-left", "r1c1", "r4c3");
    assertTrue(list.stream().noneMatch(row -> worked.contains(row.getField("piece"))));
    assertEquals(rows(files, "rounds.csv").size() - (3 + 5 + 5), list.size());
  }

  @Test
  void changesAreToldWhereThereIsAnEarlierArrangement() {
    Map<String, byte[]> again = Tables.files(solvedAgain());
    List<NamedCsvRecord> pieces = rows(again, "pieces.csv");
    assertEquals(
        List.of("r1c2"),
        pieces.stream()
            .filter(row -> !row.getField("changed_rounds").equals("0"))
            .map(row -> row.getField("piece"))
            .toList());
    List<NamedCsvRecord> changed =
        rows(again, "rounds.csv").stream()
            .filter(row -> !row.getField("earlier_yarn").equals(row.getField("yarn")))
            .toList();
    assertEquals(1, changed.size());
    assertEquals("3", changed.get(0).getField("round"));
  }

  private Arrangement solvedAgain() {
    Blanket blanket = arrangement.blanket();
    Sequences earlier = arrangement.sequences().copy();
    int piece = blanket.layout().find("r1c2").orElseThrow().index();
    earlier.set(piece, 2, (earlier.yarn(piece, 2) + 1) % blanket.yarnCount());
    return new Arrangement(
        blanket,
        arrangement.sequences(),
        Optional.of(earlier),
        Scorer.score(blanket, arrangement.sequences(), Optional.of(earlier)),
        Optional.empty(),
        Optional.empty());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+1",
        "-1+1",
        "-cmd|' /C calc'!A0",
        "@SUM(A1)",
        "\uff1dcmd",
        "'=1",
        "''-1+1"
      })
  void formulasAreShielded(String words) {
    String safe = Csv.safe(words);
    assertEquals("'" + words, safe);
  }

  @ParameterizedTest
  @CsvSource({"Reed", "'it''s'", "1-2", "'''tis'", "-MUD", "-1", "-é_9 -SND"})
  void otherTextStays(String words) {
    assertEquals(words, Csv.safe(words));
  }

  @Test
  void oddNamesKeepTheirColumns() throws Exception {
    List<String> names = List.of("=HYPERLINK(\"x\")", "a,\"b\"", "two\r\nlines", "\u202eback", "");
    Arrangement odd = Samples.named("-odd, \"title\"\n", names);
    Map<String, byte[]> package_ = Tables.files(odd);
    assertEquals(List.of(), mistakes(text(package_, "datapackage.json")));
    hold(package_);
    List<String> read = new ArrayList<>();
    rows(package_, "yarns.csv").forEach(row -> read.add(row.getField("name")));
    assertEquals(
        List.of("'=HYPERLINK(\"x\")", "a,\"b\"", "two  lines", "?back"), read.subList(0, 4));
  }

  @Test
  void tableRefusesWhatDoesNotFit() {
    Table table = new Table("t", "T", List.of("n"), Column.whole("n", "a number", 0));
    assertThrows(IllegalArgumentException.class, () -> table.row("one"));
    assertThrows(IllegalArgumentException.class, () -> table.row(1L, 2L));
    assertThrows(IllegalArgumentException.class, () -> table.row((Object) null));
  }
}
