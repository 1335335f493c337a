/** Writes score cards, for a person and for programs. */
package lozengy.report.card;
