package lozengy.model.yarn;

import java.util.Set;
import lozengy.model.colour.Tone;

/**
 * Yarns that cannot fill the rounds which must be theirs. Each shortage is told once: what other
 * shortages within its tones lack is no part of what is missing.
 *
 * @param tones the tones of the yarns
 * @param neededMillimetres length in mm of the rounds that may take no other tone
 * @param usableMillimetres length in mm that these yarns have for them
 * @param missingMillimetres length in mm that is missing beyond what the shortages of fewer of
 *     these tones lack, above 0; those of all shortages add up to what is missing in all
 * @param purchase what must be bought of them to make up for that
 */
public record ToneShortage(
    Set<Tone> tones,
    long neededMillimetres,
    long usableMillimetres,
    long missingMillimetres,
    Purchase purchase) {}
