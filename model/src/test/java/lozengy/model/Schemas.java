package lozengy.model;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import lozengy.model.brief.Brief;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Node;
import lozengy.model.input.SourceText;
import lozengy.model.input.TreeReader;

/** Holds texts against the published schemas, with an independent validator. */
public final class Schemas {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12,
          builder ->
              builder.schemas(
                  Map.of(
                      "urn:lozengy:brief:1", resource("brief-1.schema.json"),
                      "urn:lozengy:arrangement:1", resource("arrangement-1.schema.json"))));

  private Schemas() {}

  /** The faults of a brief, in YAML or JSON; empty if the schema holds. */
  public static List<String> briefFaults(SourceText brief) {
    return faults("urn:lozengy:brief:1", brief);
  }

  /** The faults of an arrangement; empty if the schema holds. */
  public static List<String> arrangementFaults(SourceText arrangement) {
    return faults("urn:lozengy:arrangement:1", arrangement);
  }

  private static List<String> faults(String schema, SourceText text) {
    Schema against = REGISTRY.getSchema(SchemaLocation.of(schema));
    return against.validate(json(tree(text))).stream().map(Object::toString).toList();
  }

  private static Node tree(SourceText text) {
    Mistakes mistakes = new Mistakes();
    Node root = TreeReader.read(text, mistakes);
    mistakes.throwIfAny();
    return root;
  }

  /** What JSON would say: an unquoted scalar is a number, a truth value or null if it looks so. */
  private static JsonNode json(Node node) {
    if (node instanceof Node.Mapping mapping) {
      ObjectNode object = NODES.objectNode();
      mapping.fields().forEach(field -> object.set(field.name(), json(field.value())));
      return object;
    }
    if (node instanceof Node.Items list) {
      ArrayNode array = NODES.arrayNode();
      list.items().forEach(item -> array.add(json(item)));
      return array;
    }
    Node.Scalar scalar = (Node.Scalar) node;
    if (scalar.empty()) {
      return NODES.nullNode();
    }
    if (!scalar.quoted() && scalar.text().matches("-?\\d+(\\.\\d+)?([eE][-+]?\\d{1,3})?")) {
      return NODES.numberNode(new BigDecimal(scalar.text()));
    }
    if (!scalar.quoted() && scalar.text().matches("true|false")) {
      return NODES.booleanNode(scalar.text().equals("true"));
    }
    return NODES.textNode(scalar.text());
  }

  /** The text of a schema. */
  static String resource(String name) {
    try (InputStream in = Brief.class.getResourceAsStream("/lozengy/model/" + name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
