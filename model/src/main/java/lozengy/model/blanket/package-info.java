/**
 * A brief made ready to judge by: places, yarns and rounds as dense ints, with what each may take
 * and needs.
 */
package lozengy.model.blanket;
