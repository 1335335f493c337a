/**
 * The blanket as drawn: one {@link lozengy.report.chart.Drawing} from which every format that shows
 * the blanket is made, the chart, the pictures in page and booklet, and that of the terminal.
 */
package lozengy.report.chart;
