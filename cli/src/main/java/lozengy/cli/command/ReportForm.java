package lozengy.cli.command;

import java.util.Locale;

/** A form in which an arrangement can be shown, beside the summary. */
enum ReportForm {
  /** The chart as a vector drawing. */
  SVG;

  /** The word on the command line. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
