/** Why nothing fits and what would help, with the lines of the file, in words and for programs. */
package lozengy.report.explain;
