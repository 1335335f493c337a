/**
 * What a blanket is: its layout, motifs, yarns and rules, the brief that asks for an arrangement,
 * the arrangement that answers, and the checks and score that judge it. Knows no solver and no
 * command line.
 */
package lozengy.model;
