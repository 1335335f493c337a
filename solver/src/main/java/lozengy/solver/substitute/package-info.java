/** Which shades may stand in for those that are gone, each of them tried by solving. */
package lozengy.solver.substitute;
