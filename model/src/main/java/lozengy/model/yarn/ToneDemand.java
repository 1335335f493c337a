package lozengy.model.yarn;

import java.util.Set;
import lozengy.model.colour.Tone;

/**
 * Rounds without a yarn yet that may take the same tones.
 *
 * @param tones the tones
 * @param rounds how many rounds of all pieces
 * @param leastMillimetres length in mm that they take at least; exactly, unless a round is given by
 *     weight, which is a different length in each yarn
 * @param usableMillimetres length in mm that the yarns of these tones have for rounds without a
 *     yarn yet
 */
public record ToneDemand(
    Set<Tone> tones, long rounds, long leastMillimetres, long usableMillimetres) {}
