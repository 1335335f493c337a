package lozengy.cli.command;

import java.util.Locale;

/** A form in which an arrangement can be shown, beside the summary. */
enum ReportForm {
  /** The chart as a vector drawing. */
  SVG(".svg"),
  /** The chart as a picture of dots. */
  PNG(".png"),
  /** A booklet to print. */
  PDF(".pdf"),
  /** The chart over several sheets of paper. */
  SHEETS("-sheets.pdf"),
  /** A page for a browser. */
  HTML(".html"),
  /** CSV files with a descriptor, in a folder. */
  TABLES("-tables"),
  /** Pieces and how they meet, as a graph. */
  GRAPHML(".graphml"),
  /** The score card. */
  CARD(".card.txt");

  private final String ending;

  ReportForm(String ending) {
    this.ending = ending;
  }

  /** The word on the command line. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether it is bytes that no terminal shows; the tables are, as an archive. */
  boolean binary() {
    return this == PNG || this == PDF || this == SHEETS || this == TABLES;
  }

  /** What its file's name ends in, where the user names none. */
  String ending() {
    return ending;
  }
}
