package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.Optional;
import lozengy.model.colour.Srgb;
import lozengy.model.colour.Tone;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Nulls;
import lozengy.model.input.Words;
import lozengy.model.unit.Ratio;

/**
 * One shade, and what is at hand of it.
 *
 * @param code short name, unique in the brief
 * @param name full name; may equal the code
 * @param colour how it looks
 * @param ball its put-up, where stated
 * @param balls whole or part balls at hand, 0 or more
 * @param left loose yarn at hand beside the balls, where stated
 * @param share its wanted share against the other yarns, 0 or more; 1 is usual
 * @param statedTone its tone where the brief states it, to be used instead of the one by lightness
 * @param counted what was at hand when it was counted in the middle of the work, if it was; counts
 *     in place of {@code balls} and {@code left}
 * @param lotOf code of the yarn that it is another dye lot of, if it is one
 * @param gone whether it is there no more, whatever was counted: nothing is at hand, and no round
 *     that is still to be worked may take it
 * @param price what a ball of it costs, where stated
 */
public record Yarn(
    String code,
    String name,
    Srgb colour,
    Optional<Ball> ball,
    double balls,
    Optional<YarnAmount> left,
    double share,
    Optional<Tone> statedTone,
    Optional<Counted> counted,
    Optional<String> lotOf,
    boolean gone,
    Optional<Price> price) {

  /**
   * Checks the numbers.
   *
   * @param code short name, unique in the brief
   * @param name full name; may equal the code
   * @param colour how it looks
   * @param ball its put-up, where stated
   * @param balls whole or part balls at hand, 0 or more
   * @param left loose yarn at hand beside the balls, where stated
   * @param share its wanted share against the other yarns, 0 or more; 1 is usual
   * @param statedTone its tone where the brief states it, to be used instead of the one by
   *     lightness
   * @param counted what was at hand when it was counted in the middle of the work, if it was;
   *     counts in place of {@code balls} and {@code left}
   * @param lotOf code of the yarn that it is another dye lot of, if it is one
   * @param gone whether it is there no more, whatever was counted: nothing is at hand, and no round
   *     that is still to be worked may take it
   * @param price what a ball of it costs, where stated
   * @throws IllegalArgumentException if a number is negative or not finite, or if balls or a weight
   *     are at hand, or a price is stated, but no put-up is
   */
  public Yarn {
    Nulls.refuse(
        "code name colour ball left statedTone counted lotOf price",
        code,
        name,
        colour,
        ball,
        left,
        statedTone,
        counted,
        lotOf,
        price);
    if (!(balls >= 0 && Double.isFinite(balls)) || !(share >= 0 && Double.isFinite(share))) {
      throw new IllegalArgumentException("balls and share of " + code + " must be 0 or more");
    }
    boolean weighed =
        left.orElse(null) instanceof YarnAmount.Weight
            || counted.map(Counted::left).orElse(null) instanceof YarnAmount.Weight;
    if (ball.isEmpty() && (balls > 0 || weighed || price.isPresent())) {
      throw new IllegalArgumentException("yarn " + code + " needs its ball's grams and metres");
    }
  }

  /**
   * {@return a yarn of which nothing is at hand yet, with a share of 1}
   *
   * @param code short name, unique in the brief; its full name too until another is given
   * @param colour how it looks
   */
  public static Yarn of(String code, Srgb colour) {
    return new Yarn(
        code,
        code,
        colour,
        Optional.empty(),
        0,
        Optional.empty(),
        1,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty());
  }

  /**
   * {@return a mistake if a text is no code of a yarn}
   *
   * @param text the text
   * @param path where it stands
   */
  public static Optional<Mistake> notACode(String text, BriefPath path) {
    return YarnReader.isCode(text)
        ? Optional.empty()
        : Optional.of(
            new Mistake(
                path,
                0,
                MistakeCode.MALFORMED.about(text),
                Words.quoted(text) + " is not a yarn's code",
                YarnReader.CODE_REMEDY));
  }

  /**
   * {@return this yarn with another code}
   *
   * @param other short name, unique in the brief
   */
  public Yarn withCode(String other) {
    return new Yarn(
        other, name, colour, ball, balls, left, share, statedTone, counted, lotOf, gone, price);
  }

  /**
   * {@return this yarn in another colour}
   *
   * @param other how it looks
   */
  public Yarn withColour(Srgb other) {
    return new Yarn(
        code, name, other, ball, balls, left, share, statedTone, counted, lotOf, gone, price);
  }

  /**
   * {@return this yarn with another name}
   *
   * @param other its full name
   */
  public Yarn withName(String other) {
    return new Yarn(
        code, other, colour, ball, balls, left, share, statedTone, counted, lotOf, gone, price);
  }

  /**
   * {@return this yarn with another put-up}
   *
   * @param other its put-up; empty where none is stated
   */
  public Yarn withBall(Optional<Ball> other) {
    return new Yarn(
        code, name, colour, other, balls, left, share, statedTone, counted, lotOf, gone, price);
  }

  /**
   * {@return this yarn with other balls at hand}
   *
   * @param other whole or part balls, 0 or more; above 0 a put-up is needed
   */
  public Yarn withBalls(double other) {
    return new Yarn(
        code, name, colour, ball, other, left, share, statedTone, counted, lotOf, gone, price);
  }

  /**
   * {@return this yarn with other loose yarn at hand}
   *
   * @param other the loose yarn; empty for none
   */
  public Yarn withLeft(Optional<YarnAmount> other) {
    return new Yarn(
        code, name, colour, ball, balls, other, share, statedTone, counted, lotOf, gone, price);
  }

  /**
   * {@return this yarn with another share}
   *
   * @param other how much of it is wanted against the other yarns, 0 or more
   */
  public Yarn withShare(double other) {
    return new Yarn(
        code, name, colour, ball, balls, left, other, statedTone, counted, lotOf, gone, price);
  }

  /**
   * {@return this yarn as a dye lot}
   *
   * @param other code of the yarn that it is another dye lot of; empty for none
   */
  public Yarn withLotOf(Optional<String> other) {
    return new Yarn(
        code, name, colour, ball, balls, left, share, statedTone, counted, other, gone, price);
  }

  /**
   * {@return this yarn with another stated tone}
   *
   * @param other the tone; empty for the one by lightness
   */
  public Yarn withTone(Optional<Tone> other) {
    return new Yarn(
        code, name, colour, ball, balls, left, share, other, counted, lotOf, gone, price);
  }

  /**
   * {@return this yarn with another count}
   *
   * @param other what was counted; empty for nothing
   */
  public Yarn withCount(Optional<Counted> other) {
    return new Yarn(
        code, name, colour, ball, balls, left, share, statedTone, other, lotOf, gone, price);
  }

  /**
   * {@return this yarn, gone or there again}
   *
   * @param other whether it is gone
   */
  public Yarn withGone(boolean other) {
    return new Yarn(
        code, name, colour, ball, balls, left, share, statedTone, counted, lotOf, other, price);
  }

  /**
   * {@return this yarn at another price}
   *
   * @param other what a ball of it costs; empty where none is stated, else a put-up is needed
   */
  public Yarn withPrice(Optional<Price> other) {
    return new Yarn(
        code, name, colour, ball, balls, left, share, statedTone, counted, lotOf, gone, other);
  }

  /** {@return how much of it is wanted against the other yarns: its share, or 0 if it is gone} */
  public double wanted() {
    return gone ? 0 : share;
  }

  /**
   * {@return what is at hand, in mm: what was counted, or else balls and loose yarn; nothing if it
   * is gone}
   */
  public Ratio stock() {
    if (gone) {
      return Ratio.of(BigDecimal.ZERO);
    }
    Ball putUp = ball.orElse(null);
    if (counted.isPresent()) {
      return counted.get().left().millimetresIn(putUp);
    }
    Ratio loose = left.map(amount -> amount.millimetresIn(putUp)).orElse(Ratio.of(BigDecimal.ZERO));
    return putUp == null
        ? loose
        : loose.plus(Ratio.of(putUp.millimetres()).times(BigDecimal.valueOf(balls)));
  }

  /** {@return the same in whole millimetres, rounded up} */
  public long stockMillimetres() {
    return stock().up();
  }
}
