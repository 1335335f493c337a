package lozengy.model.layout;

/**
 * One place of a layout, for one piece.
 *
 * <p>Lattice coordinates: on point the unit is half a diagonal of the square, straight it is half a
 * side; x runs right and y down from the top left of the outline. A triangle has the coordinates of
 * the centre of the square it is cut from, which lies on the outline.
 *
 * @param index position in {@link Layout#places()}, from 0
 * @param name the piece's name, such as {@code r3c2} or {@code top1}
 * @param kind what lies there
 * @param x lattice coordinate, from 0
 * @param y lattice coordinate, from 0
 */
public record Place(int index, String name, PieceKind kind, int x, int y) {}
