/** More finished pieces on the pile than places: which of them may stay out of the blanket. */
package lozengy.solver.surplus;
