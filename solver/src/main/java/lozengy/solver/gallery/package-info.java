/** One brief solved under several looks, to choose by eye. */
package lozengy.solver.gallery;
