/** The score of an arrangement, exact and from scratch. */
package lozengy.model.score;
