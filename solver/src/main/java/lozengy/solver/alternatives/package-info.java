/**
 * Several arrangements of near-best score that really differ: copies turned, mirrored or with their
 * yarns' names exchanged do not count as different.
 */
package lozengy.solver.alternatives;
