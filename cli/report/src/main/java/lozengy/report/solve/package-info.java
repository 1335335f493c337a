/** How a solve has ended, and the arrangements to choose from where several were wanted. */
package lozengy.report.solve;
