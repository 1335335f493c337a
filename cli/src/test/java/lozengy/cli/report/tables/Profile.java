package lozengy.cli.report.tables;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;

/** Holds a JSON document against a JSON Schema of draft 4. */
final class Profile {

  private Profile() {}

  static List<String> mistakes(String schema, String document) {
    Schema profile =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4)
            .getSchema(schema, InputFormat.JSON);
    return profile.validate(document, InputFormat.JSON).stream().map(Object::toString).toList();
  }
}
