package lozengy.solver.explain.argument;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.layout.PieceKind;

/** There is too little yarn. */
public sealed interface StockReason extends Reason {

  /**
   * All is kept back.
   *
   * @param percent the part of each yarn that is kept back
   */
  record AllKeptBack(double percent) implements StockReason {
    @Override
    public String code() {
      return "all-kept-back";
    }

    @Override
    public Object matter() {
      return code();
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.allKeptBack(this);
    }
  }

  /**
   * Joining, edging and rounds that can take nothing else take more of a yarn than there is.
   *
   * @param yarn the yarn
   * @param fixed what joining and edging take
   * @param roundCount how many rounds can take nothing else
   * @param inRounds what these take
   * @param settled what was worked before the yarn was counted
   * @param usable what there is to use
   * @param missing what is missing
   */
  record YarnOverdrawn(
      int yarn, long fixed, int roundCount, long inRounds, long settled, long usable, long missing)
      implements StockReason {
    @Override
    public String code() {
      return "yarn-overdrawn";
    }

    @Override
    public List<Integer> yarns() {
      return List.of(yarn);
    }

    @Override
    public Map<String, Long> lengths() {
      return Map.of("fixed", fixed, "rounds", inRounds, "usable", usable, "short", missing);
    }

    @Override
    public Map<String, Integer> counts() {
      return Map.of("rounds", roundCount);
    }

    @Override
    public Object matter() {
      return List.of(code(), yarn);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.yarnOverdrawn(this);
    }
  }

  /**
   * A round takes more than any yarn that it may have has left.
   *
   * @param pieces the pieces
   * @param round the round
   * @param yarns the yarns that it may have
   * @param least the least that it takes
   */
  record RoundTooLong(List<Integer> pieces, int round, List<Integer> yarns, long least)
      implements StockReason {
    @Override
    public String code() {
      return "round-too-long";
    }

    @Override
    public List<Integer> rounds() {
      return List.of(round);
    }

    @Override
    public Map<String, Long> lengths() {
      return Map.of("needed", least);
    }

    @Override
    public Object matter() {
      return List.of(code(), Matter.of(pieces), yarns);
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.roundTooLong(this);
    }
  }

  /**
   * Rounds that only some yarns can serve take more than these can give.
   *
   * @param served the pieces by kind and round
   * @param whole yarns whose whole supply counts
   * @param bordersOnly yarns that can serve borders alone of these
   * @param inWholeRounds whether it counts that rounds are whole
   * @param amounts how much, where all lengths are those of any yarn; empty where rounds are
   *     weighed
   * @param percentNeeded what is needed of what the yarns can give, in percent, where rounds are
   *     weighed; infinite where they can give nothing
   */
  record YarnShort(
      Map<PieceKind, Map<Integer, List<Integer>>> served,
      List<Integer> whole,
      List<Integer> bordersOnly,
      boolean inWholeRounds,
      Optional<Amounts> amounts,
      double percentNeeded)
      implements StockReason {

    /**
     * Lengths in mm.
     *
     * @param needed what the rounds take
     * @param held what the yarns can give whose whole supply counts
     * @param asBorders what the others can give
     * @param missing what is missing
     */
    public record Amounts(long needed, long held, long asBorders, long missing) {}

    @Override
    public String code() {
      return "yarn-short";
    }

    @Override
    public List<Integer> pieces() {
      return served.values().stream()
          .flatMap(byRound -> byRound.values().stream().flatMap(List::stream))
          .distinct()
          .sorted()
          .toList();
    }

    @Override
    public List<Integer> rounds() {
      return served.values().stream()
          .flatMap(byRound -> byRound.keySet().stream())
          .distinct()
          .sorted()
          .toList();
    }

    @Override
    public List<Integer> yarns() {
      List<Integer> yarns = new ArrayList<>(whole);
      yarns.addAll(bordersOnly);
      return yarns.stream().sorted().toList();
    }

    @Override
    public Map<String, Long> lengths() {
      Map<String, Long> lengths = new LinkedHashMap<>();
      amounts.ifPresent(
          each -> {
            lengths.put("needed", each.needed());
            lengths.put("usable", each.held() + each.asBorders());
            lengths.put("short", each.missing());
          });
      return lengths;
    }

    @Override
    public Object matter() {
      return List.of(code(), served.keySet(), yarns());
    }

    @Override
    public <T> T in(Cases<T> cases) {
      return cases.yarnShort(this);
    }
  }
}
