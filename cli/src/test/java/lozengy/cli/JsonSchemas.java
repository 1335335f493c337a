package lozengy.cli;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Holds JSON documents against schemas, with an independent validator. */
public final class JsonSchemas {

  private JsonSchemas() {}

  /** What a document breaks of a schema that lies beside a class; empty if the schema holds. */
  public static List<String> mistakes(
      SpecificationVersion version, Class<?> beside, String schema, String document) {
    try (InputStream in = beside.getResourceAsStream(schema)) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      return SchemaRegistry.withDefaultDialect(version)
          .getSchema(text, InputFormat.JSON)
          .validate(document, InputFormat.JSON)
          .stream()
          .map(Object::toString)
          .toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
