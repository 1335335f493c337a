package lozengy.cli;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import lozengy.model.brief.Brief;

/** Holds JSON documents against schemas, with an independent validator. */
public final class JsonSchemas {

  private JsonSchemas() {}

  /** What a document breaks of a schema that lies beside a class; empty if the schema holds. */
  public static List<String> mistakes(
      SpecificationVersion version, Class<?> beside, String schema, String document) {
    return SchemaRegistry.withDefaultDialect(
            version,
            builder ->
                builder.schemas(
                    Map.of(
                        "urn:lozengy:brief:1",
                        text(Brief.class, "/lozengy/model/brief-1.schema.json"),
                        "urn:lozengy:arrangement:1",
                        text(Brief.class, "/lozengy/model/arrangement-1.schema.json"))))
        .getSchema(text(beside, schema), InputFormat.JSON)
        .validate(document, InputFormat.JSON)
        .stream()
        .map(Object::toString)
        .toList();
  }

  private static String text(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
