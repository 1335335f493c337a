/** What may stand in for shades that are gone, in words and as JSON. */
package lozengy.report.substitute;
