package lozengy.model.arrangement;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.arrangement.StatedArrangement.StatedYarn;
import lozengy.model.brief.Part;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.Range;
import lozengy.model.input.Words;
import lozengy.model.score.Score;

/**
 * The figures that an arrangement file states.
 *
 * @param yarns yarn totals
 * @param score the score
 * @param formerTotal the total by formulas of an earlier version, in place of the score
 * @param bound a bound on the score
 * @param solved how the arrangement was found
 */
record StatedFigures(
    List<StatedYarn> yarns,
    Optional<Score> score,
    Optional<Double> formerTotal,
    Optional<Arrangement.Bound> bound,
    Optional<Arrangement.Solved> solved) {

  private static final int MOST_TEXT_CHARACTERS = 1000;
  private static final Range SCORES = Range.of(0, 100, "");
  private static final Range METRES =
      new Range(
          BigDecimal.valueOf(-1_000_000_000_000L),
          true,
          BigDecimal.valueOf(1_000_000_000_000L),
          false,
          "metres");
  private static final Range SEEDS = Range.whole(Long.MIN_VALUE, Long.MAX_VALUE, "");
  private static final Range WALKERS = Range.whole(1, Integer.MAX_VALUE, "walkers");
  private static final Range CHOICES = Range.whole(2, 1000, "arrangements");
  private static final Map<String, String> PROOFS =
      Words.meanings(
          new String[] {Arrangement.Solved.OPTIMAL, Arrangement.Solved.UNPROVED}, word -> word);
  private static final Range COUNTS = Range.whole(0, Long.MAX_VALUE, "");

  static StatedFigures read(Fields of) {
    List<StatedYarn> yarns = new ArrayList<>();
    for (Located item : of.get("yarns").map(y -> y.items("yarns")).orElse(List.of())) {
      item.fields().flatMap(StatedFigures::yarn).ifPresent(yarns::add);
    }
    Optional<Fields> score = of.get("score").flatMap(Located::fields);
    Optional<Fields> solved = of.get("solved").flatMap(Located::fields);
    Optional<Double> objective = score.flatMap(fields -> number(fields, "objective", SCORES));
    Optional<Score> total = score.flatMap(fields -> score(fields, objective));
    Optional<Arrangement.Bound> bound = score.flatMap(StatedFigures::bound);
    score.ifPresent(Fields::tellUnknown);
    Optional<Arrangement.Solved> how = solved.flatMap(StatedFigures::solved);
    return total.isPresent() && objective.isEmpty()
        ? former(yarns, total.get().total(), how)
        : new StatedFigures(yarns, total, Optional.empty(), bound, how);
  }

  /** Files from before the objective was told apart: other formulas, of which nothing is proved. */
  private static StatedFigures former(
      List<StatedYarn> yarns, double total, Optional<Arrangement.Solved> solved) {
    return new StatedFigures(
        yarns,
        Optional.empty(),
        Optional.of(total),
        Optional.empty(),
        solved.map(Arrangement.Solved::unproved));
  }

  private static Optional<StatedYarn> yarn(Fields of) {
    Optional<String> code = of.need("code", "\"code\": \"MUD\"").flatMap(c -> text(c));
    Optional<String> name = of.get("name").flatMap(StatedFigures::text);
    Optional<StatedYarn> yarn =
        Optional.of(
            new StatedYarn(
                code.orElse(""),
                name,
                number(of, "available_m", METRES),
                number(of, "used_m", METRES),
                number(of, "left_m", METRES)));
    of.tellUnknown();
    return yarn;
  }

  private static Optional<Score> score(Fields of, Optional<Double> objective) {
    Optional<Double> total = number(of, "total", SCORES);
    Map<Part, Double> parts = new EnumMap<>(Part.class);
    Optional<Fields> found = of.get("parts").flatMap(Located::fields);
    for (Part part : Part.values()) {
      found
          .flatMap(fields -> number(fields, part.word(), SCORES))
          .ifPresent(figure -> parts.put(part, figure));
    }
    found.ifPresent(Fields::tellUnknown);
    number(of, "keep", SCORES).ifPresent(figure -> parts.put(Part.KEEP, figure));
    return total.map(figure -> new Score(figure, objective.orElse(figure), parts));
  }

  /** A bound, from fields that may state one. */
  static Optional<Arrangement.Bound> bound(Fields of) {
    Optional<Located> bound = of.get("bound");
    Optional<Located> proof = of.get("bound_proof");
    if (bound.isPresent() != proof.isPresent()) {
      of.lacks(
          bound.isPresent() ? "bound_proof" : "bound",
          "A bound stands without its proof, or a proof without its bound",
          "Give both, or none where none is proved");
    }
    Optional<Double> total = bound.flatMap(b -> b.number(SCORES)).map(BigDecimal::doubleValue);
    Optional<String> name = proof.flatMap(StatedFigures::text);
    Optional<Double> objective = number(of, "objective_bound", SCORES);
    return total.flatMap(
        figure -> name.map(words -> new Arrangement.Bound(figure, words, objective)));
  }

  /** How an arrangement was found. */
  static Optional<Arrangement.Solved> solved(Fields of) {
    Optional<Long> seed = of.need("seed", "\"seed\": 1").flatMap(s -> whole(s, SEEDS));
    Optional<Long> moves = of.need("moves", "\"moves\": 500000").flatMap(m -> whole(m, COUNTS));
    Optional<Long> walkers = of.get("walkers").flatMap(w -> whole(w, WALKERS));
    Optional<Double> seconds = number(of, "seconds", Range.of(0, 1_000_000_000, "seconds"));
    Optional<String> version =
        of.need("version", "\"version\": \"0.1.0\"").flatMap(StatedFigures::text);
    Optional<String> proof =
        of.need("proof", "\"proof\": \"none\"").flatMap(word -> word.word(PROOFS));
    Optional<Arrangement.Choice> choice =
        of.get("choice").flatMap(Located::fields).flatMap(StatedFigures::choice);
    of.tellUnknown();
    return Optional.of(
        new Arrangement.Solved(
            seed.orElse(0L),
            moves.orElse(0L),
            walkers.map(Long::intValue).orElse(Arrangement.Solved.USUAL_WALKERS),
            seconds,
            version.orElse(""),
            proof.orElse(""),
            choice));
  }

  private static Optional<Arrangement.Choice> choice(Fields of) {
    Optional<Long> count = of.need("count", "\"count\": 5").flatMap(c -> whole(c, CHOICES));
    Optional<Double> within =
        of.need("within_points", "\"within_points\": 1")
            .flatMap(w -> w.number(SCORES))
            .map(BigDecimal::doubleValue);
    of.tellUnknown();
    return count.flatMap(
        wanted -> within.map(points -> new Arrangement.Choice(wanted.intValue(), points)));
  }

  private static Optional<String> text(Located located) {
    return located.text(MOST_TEXT_CHARACTERS);
  }

  private static Optional<Double> number(Fields of, String name, Range range) {
    return of.get(name).flatMap(n -> n.number(range)).map(BigDecimal::doubleValue);
  }

  private static Optional<Long> whole(Located located, Range range) {
    return located.number(range).map(BigDecimal::longValueExact);
  }
}
