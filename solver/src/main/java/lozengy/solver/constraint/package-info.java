/**
 * The rules as a constraint model in Choco: the meaning of a brief. It filters what each round may
 * take, finds a first arrangement, settles small briefs exactly and proves that nothing fits. Each
 * kind of {@link lozengy.model.check.Ground} is posted by one class, whichever rule it comes from;
 * the model is made of the brief's own lines, so that a conflict can be told in the brief's words.
 */
package lozengy.solver.constraint;
