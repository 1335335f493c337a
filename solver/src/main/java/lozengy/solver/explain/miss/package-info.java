/** How near one can come where nothing fits: a plan that leaves few rounds open. */
package lozengy.solver.explain.miss;
