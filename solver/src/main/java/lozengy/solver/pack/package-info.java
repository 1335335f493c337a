/**
 * Packs: whole balls of each shade from which a blanket can be worked, as few, as cheap or as light
 * as can be found.
 */
package lozengy.solver.pack;
