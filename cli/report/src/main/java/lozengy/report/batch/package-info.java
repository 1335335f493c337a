/** A line with a brief or an arrangement in, a line with the result out: for any program. */
package lozengy.report.batch;
