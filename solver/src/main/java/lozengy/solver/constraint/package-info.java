/**
 * The rules as a constraint model in Choco: the meaning of a brief. It filters what each round may
 * take, finds a first arrangement, settles small briefs exactly and proves that nothing fits. One
 * rule is one {@link lozengy.solver.constraint.RulePosting}, made of the brief's own lines, so that
 * a conflict can be told in the brief's words.
 */
package lozengy.solver.constraint;
