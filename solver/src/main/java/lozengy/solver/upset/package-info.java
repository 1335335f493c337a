/** How little of a plan has to change. */
package lozengy.solver.upset;
