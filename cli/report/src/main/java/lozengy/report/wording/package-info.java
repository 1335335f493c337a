/**
 * The words for what the solver finds out: why nothing fits, which lines of a brief cannot hold
 * together, what would help. It alone knows English, and the names of options; the solver hands out
 * values. {@link lozengy.report.wording.Wording} is the way in.
 */
package lozengy.report.wording;
