/** What a check of an arrangement found, in words and for programs. */
package lozengy.report.check;
