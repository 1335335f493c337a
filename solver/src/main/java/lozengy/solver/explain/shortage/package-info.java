/** Sets of rounds that take more than the yarns that may serve them can give. */
package lozengy.solver.explain.shortage;
