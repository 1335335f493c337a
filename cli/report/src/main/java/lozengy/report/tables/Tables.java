package lozengy.report.tables;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lozengy.model.arrangement.Arrangement;

/** An arrangement as a Data Package: a descriptor and a CSV file for each table. */
public final class Tables {

  /** The names of the files. */
  public static final List<String> NAMES =
      List.of(
          Descriptor.FILE,
          "pieces.csv",
          "rounds.csv",
          "seams.csv",
          "yarns.csv",
          "make-list.csv",
          "strips.csv",
          "pile.csv",
          "pile-out.csv",
          "progress.csv");

  private Tables() {}

  /**
   * The files of the package, by name. The same arrangement gives the same bytes.
   *
   * @param arrangement a complete arrangement
   */
  public static Map<String, byte[]> files(Arrangement arrangement) {
    List<Table> tables =
        List.of(
            PieceTables.pieces(arrangement),
            PieceTables.rounds(arrangement),
            SeamTable.of(arrangement),
            YarnTable.of(arrangement),
            WorkTables.makeList(arrangement),
            WorkTables.strips(arrangement),
            WorkTables.pile(arrangement),
            WorkTables.pileOut(arrangement),
            ProgressTable.of(arrangement));
    Map<String, byte[]> files = new LinkedHashMap<>();
    String title = arrangement.blanket().brief().title();
    files.put(Descriptor.FILE, bytes(Descriptor.text(title, tables)));
    tables.forEach(table -> files.put(table.file(), bytes(Csv.text(table))));
    return files;
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
