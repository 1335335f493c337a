package lozengy.model.brief;

/** How a round says what yarn it takes: in an amount, or in stitches. */
public sealed interface RoundYarn permits YarnAmount, StitchCounts {}
