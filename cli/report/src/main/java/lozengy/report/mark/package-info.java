/** What a mark has changed. */
package lozengy.report.mark;
