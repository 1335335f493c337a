/** How much yarn is needed and what to buy, in words and for programs. */
package lozengy.report.need;
