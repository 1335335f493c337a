package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Nearest;
import lozengy.model.input.Node;
import lozengy.model.input.Range;
import lozengy.model.input.Words;
import lozengy.model.stitch.Stitch;
import lozengy.model.stitch.Terms;

/** Reads stitches by their names, in the terms that a brief says, or in either. */
final class StitchReader {

  static final Map<String, Terms> TERMS = Words.meanings(Terms.values(), Terms::word);

  private static final Range COUNTS = Range.whole(1, 10_000, "stitches");

  private final Optional<Terms> terms;

  /**
   * A reader.
   *
   * @param terms the terms that the brief says, if it does
   */
  StitchReader(Optional<Terms> terms) {
    this.terms = terms;
  }

  /** How many there are of each stitch; empty where a mistake leaves none. */
  Optional<StitchCounts> counts(Located located) {
    Map<Stitch, Integer> counts =
        each(located, field -> field.number(COUNTS).map(BigDecimal::intValueExact));
    return counts.isEmpty() ? Optional.empty() : Optional.of(new StitchCounts(counts));
  }

  /** What is said of each stitch. */
  <T> Map<Stitch, T> each(Located located, Function<Located, Optional<T>> value) {
    Map<Stitch, T> values = new EnumMap<>(Stitch.class);
    Optional<Fields> fields = located.fields();
    if (fields.isEmpty()) {
      return values;
    }
    Map<Stitch, String> names = new EnumMap<>(Stitch.class);
    List<Node.Field> all = ((Node.Mapping) located.node()).fields();
    for (Node.Field field : all) {
      Optional<Located> found = fields.get().get(field.name());
      if (found.isEmpty()) {
        fields.get().need(field.name(), field.name() + ": 12");
        continue;
      }
      Optional<Stitch> stitch = stitch(found.get(), field.name());
      Optional<T> read = value.apply(found.get());
      if (stitch.isEmpty() || read.isEmpty()) {
        continue;
      }
      String earlier = names.putIfAbsent(stitch.get(), field.name());
      if (earlier == null) {
        values.put(stitch.get(), read.get());
      } else {
        found
            .get()
            .wrong(
                MistakeCode.NAMED_TWICE.about(field.name(), earlier),
                Words.quoted(field.name()) + " is the same stitch as " + Words.quoted(earlier),
                "Say it once");
      }
    }
    if (all.isEmpty()) {
      located.wrong(
          MistakeCode.WRONG_COUNT.about("stitches", 0, 1),
          "There is no stitch",
          "Name at least one, such as { dc: 12 }");
    }
    return values;
  }

  private Optional<Stitch> stitch(Located located, String name) {
    Map<Terms, Stitch> meanings = Stitch.meanings(name);
    if (meanings.isEmpty()) {
      Collection<String> known = known();
      String all = "Stitches are " + Words.or(known);
      located.wrong(
          MistakeCode.UNKNOWN_STITCH.about(name),
          Words.quoted(name) + " is no stitch that is known here",
          Nearest.to(name, known).map(near -> "Maybe " + near + " is meant").orElse(all));
      return Optional.empty();
    }
    if (terms.isPresent()) {
      return inTerms(located, name, meanings, terms.get());
    }
    if (Set.copyOf(meanings.values()).size() > 1) {
      Stitch us = meanings.get(Terms.US);
      Stitch uk = meanings.get(Terms.UK);
      located.wrong(
          MistakeCode.AMBIGUOUS_STITCH.about(name, us.fullName(Terms.US), uk.fullName(Terms.US)),
          Words.quoted(name)
              + " means two things: in US terms a "
              + us.fullName(Terms.US)
              + ", in UK terms what the US call a "
              + uk.fullName(Terms.US),
          "Say which, with stitches: { terms: US } or { terms: UK } at the top of the brief");
      return Optional.empty();
    }
    return meanings.values().stream().findFirst();
  }

  private static Optional<Stitch> inTerms(
      Located located, String name, Map<Terms, Stitch> meanings, Terms terms) {
    Stitch stitch = meanings.get(terms);
    if (stitch == null) {
      Stitch other = meanings.get(terms.other());
      located.wrong(
          MistakeCode.UNKNOWN_STITCH.about(name),
          Words.quoted(name)
              + " is a name in "
              + terms.other().word()
              + " terms, and the brief's are "
              + terms.word(),
          "In " + terms.word() + " terms that stitch is " + other.abbreviation(terms));
    }
    return Optional.ofNullable(stitch);
  }

  /** All abbreviations and names that may be meant. */
  private Collection<String> known() {
    Set<String> known = new LinkedHashSet<>();
    for (Terms each : terms.map(List::of).orElse(List.of(Terms.values()))) {
      known.addAll(Stitch.names(each).keySet());
    }
    return known;
  }
}
