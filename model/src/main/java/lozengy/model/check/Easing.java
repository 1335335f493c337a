package lozengy.model.check;

import java.util.Optional;
import java.util.function.UnaryOperator;
import lozengy.model.brief.Brief;

/**
 * How a line of a brief is given up.
 *
 * @param value what to write in its place; empty where it is left out
 * @param upset how much that upsets a maker, in points: the scale is in the guide for developers
 * @param change the brief without it, all else as it is
 */
public record Easing(Optional<String> value, int upset, UnaryOperator<Brief> change) {}
