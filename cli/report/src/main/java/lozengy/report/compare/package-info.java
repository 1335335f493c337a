/** Arrangements side by side, as tables and for programs. */
package lozengy.report.compare;
