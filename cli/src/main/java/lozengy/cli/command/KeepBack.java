package lozengy.cli.command;

import java.util.List;
import java.util.Optional;
import lozengy.cli.file.Source;
import lozengy.cli.process.Refusal;
import lozengy.model.brief.Brief;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;

/** What a brief keeps back, where balls are to be counted. */
final class KeepBack {

  private static final double ALL = 100;

  private KeepBack() {}

  /** That all is kept back: no number of balls suffices then. */
  static Optional<Mistake> mistake(Brief brief) {
    return brief.rules().keepBackPercent() < ALL
        ? Optional.empty()
        : Optional.of(
            Mistake.ofWhole(
                MistakeCode.OUT_OF_RANGE.about(100, null, null, "%"),
                "keep-back is 100 %: no yarn may be used at all",
                "Keep back less"));
  }

  /**
   * Goes on where something may be used.
   *
   * @throws Refusal where all is kept back
   */
  static void expectSome(Brief brief, Source source) {
    Optional<Mistake> mistake = mistake(brief);
    if (mistake.isPresent()) {
      throw new Refusal(source.label(), List.of(mistake.get()));
    }
  }
}
