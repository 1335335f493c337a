/**
 * What a finished arrangement is shown as: a summary for the terminal or for programs, and a chart.
 * Pure functions from an arrangement to text; nothing here reads, writes or prints, and nothing
 * knows the command line, so that any program can use them.
 *
 * <p>All formats that show the blanket draw from one {@link lozengy.report.chart.Drawing}.
 */
package lozengy.report;
