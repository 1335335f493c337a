package lozengy.model.yarn;

import java.util.Set;
import lozengy.model.colour.Tone;

/**
 * Yarns that cannot fill the rounds which must be theirs.
 *
 * @param tones the tones of the yarns
 * @param neededMillimetres length in mm of the rounds that may take no other tone
 * @param usableMillimetres length in mm that these yarns have for them
 * @param purchase what must be bought of them
 */
public record ToneShortage(
    Set<Tone> tones, long neededMillimetres, long usableMillimetres, Purchase purchase) {}
