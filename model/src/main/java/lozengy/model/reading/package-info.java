/**
 * Reads briefs and judges them whole: whether their parts fit together, and whether what they hold
 * of single pieces breaks a rule. All mistakes are told at once.
 */
package lozengy.model.reading;
