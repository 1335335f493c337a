/**
 * Finds arrangements: the facade over the constraint model and the search. Never prints, never
 * exits.
 */
package lozengy.solver;
