/** Changes that make a brief fit, each of them tried out, and the fewest balls to buy. */
package lozengy.solver.explain.remedy;
