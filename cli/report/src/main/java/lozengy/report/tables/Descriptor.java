package lozengy.report.tables;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lozengy.report.Json;
import lozengy.report.PlainText;

/** Describes tables as a Tabular Data Package of the Frictionless standard, version 1. */
final class Descriptor {

  static final String FILE = "datapackage.json";

  private static final String DESCRIPTION =
      "The plan of a blanket joined from motifs worked in rounds. A name that begins with one of"
          + " = + - @, where a spreadsheet would take it for a formula, stands behind an"
          + " apostrophe; codes, which are keys, stand as they are.";

  private Descriptor() {}

  static String text(String title, List<Table> tables) {
    return Json.text(
            Json.object(
                "profile", "tabular-data-package",
                "name", name(title),
                "title", PlainText.oneLine(title),
                "description", DESCRIPTION,
                "resources", tables.stream().map(Descriptor::resource).toList()))
        + "\n";
  }

  /** A name as the standard takes it: lower case letters, digits and hyphens. */
  private static String name(String title) {
    String plain = Normalizer.normalize(title, Normalizer.Form.NFD).toLowerCase(Locale.ROOT);
    String name = plain.replaceAll("\\p{M}", "").replaceAll("[^a-z0-9]+", "-");
    name = name.replaceAll("^-|-$", "");
    return name.isEmpty() ? "blanket" : name;
  }

  private static Map<String, Object> resource(Table table) {
    return Json.object(
        "profile", "tabular-data-resource",
        "name", table.name(),
        "path", table.file(),
        "title", table.title(),
        "format", "csv",
        "mediatype", "text/csv",
        "encoding", "utf-8",
        "dialect", Json.object("delimiter", ",", "lineTerminator", "\r\n", "doubleQuote", true),
        "schema", schema(table));
  }

  private static Map<String, Object> schema(Table table) {
    List<Map<String, Object>> references =
        table.references().stream().map(Descriptor::reference).toList();
    return Json.object(
        "fields", table.columns().stream().map(Descriptor::field).toList(),
        "primaryKey", table.key(),
        "foreignKeys", Optional.of(references).filter(list -> !list.isEmpty()),
        "missingValues", List.of(""));
  }

  private static Map<String, Object> field(Column column) {
    return Json.object(
        "name", column.name(),
        "type", column.type().word(),
        "description", column.description(),
        "constraints", Optional.of(column.constraints()).filter(map -> !map.isEmpty()));
  }

  private static Map<String, Object> reference(Table.Reference reference) {
    return Json.object(
        "fields",
        reference.columns(),
        "reference",
        Json.object("resource", reference.table(), "fields", reference.columnsThere()));
  }
}
