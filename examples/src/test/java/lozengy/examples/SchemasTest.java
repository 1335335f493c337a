package lozengy.examples;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Map;
import lozengy.model.arrangement.ArrangementWriter;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefWriter;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The examples and their answers against the published JSON Schemas, with a validator and a YAML
 * reader that are not ours.
 */
class SchemasTest {

  private static final String BRIEF = "urn:lozengy:brief:1";
  private static final String ARRANGEMENT = "urn:lozengy:arrangement:1";

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          builder ->
              builder.schemas(
                  Map.of(
                      BRIEF, resource("brief-1.schema.json"),
                      ARRANGEMENT, resource("arrangement-1.schema.json"))));

  @ParameterizedTest
  @MethodSource("lozengy.examples.ExampleBriefs#names")
  void briefsHold(String name) throws IOException {
    JsonNode brief = yaml(name);

    assertEquals(List.of(), faults(BRIEF, brief));
  }

  @ParameterizedTest
  @MethodSource("lozengy.examples.ExampleBriefs#names")
  void briefsWrittenAgainHold(String name) throws IOException {
    String written = BriefWriter.text(ExampleBriefs.blanket(name).brief());

    assertEquals(List.of(), faults(BRIEF, new ObjectMapper().readTree(written)));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"saltmarsh-throw", "cushion", "stash-blanket", "locked-throw", "counted-throw"})
  void answersHold(String name) throws IOException {
    String written = ArrangementWriter.text(SolvedExamples.of(name));

    assertEquals(List.of(), faults(ARRANGEMENT, new ObjectMapper().readTree(written)));
  }

  @ParameterizedTest
  @ValueSource(strings = {"title", "layout", "motifs", "yarns"})
  void aBriefThatLacksAPartFails(String part) throws IOException {
    ObjectNode brief = (ObjectNode) yaml("cushion");
    brief.remove(part);

    assertFalse(faults(BRIEF, brief).isEmpty());
  }

  private static JsonNode yaml(String name) throws IOException {
    return new YAMLMapper().readTree(Files.readString(ExampleBriefs.file(name + ".yaml")));
  }

  private static List<String> faults(String schema, JsonNode document) {
    Schema against = REGISTRY.getSchema(SchemaLocation.of(schema));
    return against.validate(document).stream().map(Object::toString).toList();
  }

  private static String resource(String name) {
    try (InputStream in = Brief.class.getResourceAsStream("/lozengy/model/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
