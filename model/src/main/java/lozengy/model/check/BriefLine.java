package lozengy.model.check;

import java.util.List;
import java.util.stream.Stream;
import lozengy.model.input.BriefPath;

/**
 * A line of a brief that asks for something. Lines can be left out one by one, so that those that
 * cannot hold together can be found.
 *
 * @param rule the rule that it belongs to
 * @param path where it stands in the brief, such as {@code yarns[3]} or {@code pieces[2] r3c2};
 *     lines of one rule have different ones
 * @param subject what it speaks of
 * @param grounds what it comes down to
 */
public record BriefLine(RuleId rule, BriefPath path, Subject subject, List<Ground> grounds) {

  /**
   * Copies the list.
   *
   * @param rule the rule that it belongs to
   * @param path where it stands in the brief
   * @param subject what it speaks of
   * @param grounds what it comes down to
   */
  public BriefLine {
    grounds = List.copyOf(grounds);
  }

  /**
   * {@return what it comes down to of one kind}
   *
   * @param kind the kind
   * @param <G> the kind
   */
  public <G extends Ground> Stream<G> grounds(Class<G> kind) {
    return grounds.stream().filter(kind::isInstance).map(kind::cast);
  }
}
