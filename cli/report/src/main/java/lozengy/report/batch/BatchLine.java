package lozengy.report.batch;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import lozengy.model.input.Fields;
import lozengy.model.input.InputException;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Node;
import lozengy.model.input.Range;

/**
 * What a line asks for: a brief or an arrangement by itself, or with an id, a seed and a number of
 * seeds of its own around it.
 *
 * @param id what its sender calls it, a text or a number, where it says so
 * @param seed the first seed, where it says so
 * @param bestOf of how many seeds the best is wanted, where it says so
 * @param document the brief or the arrangement; missing where there is none
 */
record BatchLine(
    Optional<Object> id, OptionalLong seed, OptionalInt bestOf, Optional<Node> document) {

  /** The format of a line with more than a document. */
  static final String FORMAT = "lozengy-batch-line/1";

  /** Most seeds of which the best is taken. */
  static final int MOST_SEEDS = 1_000;

  /** Whole numbers that every program reads exactly. */
  private static final Range SEEDS = Range.whole(-(1L << 53), 1L << 53, "");

  private static final Range BEST_OF = Range.whole(1, MOST_SEEDS, "seeds");

  /**
   * Reads a line.
   *
   * @param root what stands on it
   * @param mistakes takes what is wrong around the document
   */
  static BatchLine read(Node root, Mistakes mistakes) {
    if (!FORMAT.equals(text(root, "format").orElse(""))) {
      return new BatchLine(
          Optional.empty(), OptionalLong.empty(), OptionalInt.empty(), Optional.of(root));
    }
    Fields of = Located.root(root, mistakes).fields().orElseThrow();
    of.get("format");
    Optional<Object> id = of.get("id").flatMap(BatchLine::id);
    Optional<BigDecimal> seed = of.get("seed").flatMap(each -> each.number(SEEDS));
    Optional<BigDecimal> bestOf = of.get("best-of").flatMap(each -> each.number(BEST_OF));
    Optional<Located> document =
        of.need("document", "\"document\": { ... }, a brief or an arrangement");
    of.tellUnknown();
    return new BatchLine(
        id,
        seed.map(each -> OptionalLong.of(each.longValueExact())).orElse(OptionalLong.empty()),
        bestOf.map(each -> OptionalInt.of(each.intValueExact())).orElse(OptionalInt.empty()),
        document.map(Located::node));
  }

  /** As it stands there, so that whoever sent it finds it again. */
  private static Optional<Object> id(Located located) {
    if (located.node() instanceof Node.Scalar scalar) {
      if (scalar.quoted()) {
        return Optional.of(scalar.text());
      }
      try {
        return Optional.of(new BigDecimal(scalar.text()));
      } catch (NumberFormatException e) {
        // told below
      }
    }
    located.wrong(
        MistakeCode.WRONG_TYPE.about(located.shown()),
        located.shown() + " is no id",
        "Give a text or a number");
    return Optional.empty();
  }

  /** The title of its document as it stands there, right or wrong. */
  Optional<String> title() {
    return document.flatMap(each -> text(each, "title"));
  }

  /**
   * The document.
   *
   * @throws InputException where there is none
   */
  Located document(Mistakes mistakes) {
    mistakes.throwIfAny();
    return Located.root(document.orElseThrow(), mistakes);
  }

  private static Optional<String> text(Node node, String field) {
    return node instanceof Node.Mapping mapping
            && mapping.get(field) instanceof Node.Scalar scalar
            && !scalar.empty()
        ? Optional.of(scalar.text())
        : Optional.empty();
  }
}
