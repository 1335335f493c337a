package lozengy.report.tables;

import java.time.LocalDate;
import java.util.List;
import lozengy.model.arrangement.Arrangement;
import lozengy.model.arrangement.Diary;

/** The table of what was marked, mark by mark. */
final class ProgressTable {

  private ProgressTable() {}

  /** A row for every mark, the oldest first. */
  static Table of(Arrangement arrangement) {
    Table table =
        new Table(
            "progress",
            "Every mark: what came about since the plan was made",
            List.of("mark"),
            Column.whole("mark", "Number of the mark, from 1", 1),
            Column.text("day", "When it was made, such as 2026-01-31; empty if not known")
                .optional(),
            Column.integer("pieces", "How many pieces were finished, less those given up"),
            Column.integer("rounds", "How many rounds were worked, less those given up"),
            Column.integer("pieces_so_far", "The same since the first mark"),
            Column.integer("rounds_so_far", "The same since the first mark"),
            Column.whole("yarns", "How many yarns were counted, bought, added or gone", 0));
    long pieces = 0;
    long rounds = 0;
    long mark = 0;
    for (Diary.Entry entry : arrangement.diary().entries()) {
      pieces += entry.pieces();
      rounds += entry.rounds();
      table.row(
          ++mark,
          entry.on().map(LocalDate::toString).orElse(null),
          Long.valueOf(entry.pieces()),
          Long.valueOf(entry.rounds()),
          pieces,
          rounds,
          Long.valueOf(entry.yarns().size()));
    }
    return table;
  }
}
