package lozengy.model.progress;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lozengy.model.arrangement.Diary;
import lozengy.model.arrangement.Diary.YarnEvent;
import lozengy.model.arrangement.Diary.YarnEvent.What;

/**
 * What the hand takes of what is reckoned, by what balls weighed in mid-work have told: all that
 * was gone by all that was worked. Tails, joining and edging are in both.
 *
 * @param counts what tells it, the oldest count first; at least one
 */
public record LearnedHand(List<Told> counts) {

  /**
   * A count tells nothing of less work in mm: a kitchen scale shows whole grams, which are 2 or 3 m
   * of yarn, some tenth of this; our own choice.
   */
  public static final long LEAST_MILLIMETRES = 20_000;

  /** Counts contradict each other where one is so many per cent from all; our own choice. */
  private static final double FAR_PERCENT = 15;

  private static final double LEAST_PERCENT = 50;
  private static final double MOST_PERCENT = 200;

  /**
   * What a count tells.
   *
   * @param code the yarn
   * @param goneMillimetres length in mm that was gone
   * @param reckonedMillimetres length in mm that was worked, in a hand that takes what is reckoned
   */
  public record Told(String code, long goneMillimetres, long reckonedMillimetres) {

    /** {@return per cent of what is reckoned that was gone} */
    public double percent() {
      return 100.0 * goneMillimetres / reckonedMillimetres;
    }
  }

  /**
   * Copies the list.
   *
   * @param counts what tells it, the oldest count first; at least one
   */
  public LearnedHand {
    counts = List.copyOf(counts);
  }

  /**
   * What a diary tells.
   *
   * @param diary the diary
   * @return the hand; empty where no count tells of enough work
   */
  public static Optional<LearnedHand> of(Diary diary) {
    return of(diary.entries().stream().flatMap(entry -> entry.yarns().stream()).toList());
  }

  /**
   * What a diary's events tell.
   *
   * @param events what came about with yarns, the oldest first
   * @return the hand; empty where no count tells of enough work
   */
  public static Optional<LearnedHand> of(List<YarnEvent> events) {
    List<Told> counts = new ArrayList<>();
    for (YarnEvent event : events) {
      if (event.what() == What.UNCOUNTED) {
        counts.removeIf(count -> count.code().equals(event.code()));
      }
      event
          .weighed()
          .filter(weighed -> weighed.reckonedMillimetres() >= LEAST_MILLIMETRES)
          .map(w -> new Told(event.code(), w.goneMillimetres(), w.reckonedMillimetres()))
          .ifPresent(counts::add);
    }
    return counts.isEmpty() ? Optional.empty() : Optional.of(new LearnedHand(counts));
  }

  /** {@return per cent of what is reckoned that the hand takes, to a tenth} */
  public BigDecimal percent() {
    long gone = counts.stream().mapToLong(Told::goneMillimetres).sum();
    long reckoned = counts.stream().mapToLong(Told::reckonedMillimetres).sum();
    return BigDecimal.valueOf(gone)
        .movePointRight(2)
        .divide(BigDecimal.valueOf(reckoned), 1, RoundingMode.HALF_UP)
        .stripTrailingZeros();
  }

  /** {@return counts that are far from what all of them tell; where there are any, all are told} */
  public List<Told> contradicting() {
    double all = percent().doubleValue();
    boolean apart =
        counts.stream()
            .anyMatch(count -> Math.abs(count.percent() - all) > FAR_PERCENT * all / 100);
    return apart ? counts : List.of();
  }

  /** {@return whether it is a hand that may be: 50 % to 200 % of what is reckoned} */
  public boolean possible() {
    double all = percent().doubleValue();
    return all >= LEAST_PERCENT && all <= MOST_PERCENT;
  }
}
