package lozengy.model.arrangement;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.PilePlacement;
import lozengy.model.blanket.Sequences;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.YarnAmount;
import lozengy.model.layout.GroupedNames;
import lozengy.model.layout.Place;

/**
 * What has come about with a blanket, mark by mark. It tells of the work and takes no part in any
 * plan: brief and plan are the truth about how things stand.
 *
 * @param workedWhenPlanned pieces of which rounds were worked already when the plan was made;
 *     finished ones have all of theirs
 * @param entries the marks, oldest first
 */
public record Diary(List<PartWorked> workedWhenPlanned, List<Entry> entries) {

  /** A diary of a plan made when nothing was worked, with no mark. */
  public static final Diary EMPTY = new Diary(List.of(), List.of());

  /** So many of the newest marks can be taken back; what leads back from older ones is let go. */
  public static final int MOST_TAKEN_BACK = 20;

  /**
   * Copies the lists.
   *
   * @param workedWhenPlanned pieces of which rounds were worked already when the plan was made;
   *     finished ones have all of theirs
   * @param entries the marks, oldest first
   */
  public Diary {
    workedWhenPlanned = List.copyOf(workedWhenPlanned);
    entries = List.copyOf(entries);
  }

  /**
   * One mark.
   *
   * @param on when it was made, where that is known
   * @param planned selectors of pieces that were given up
   * @param partWorked pieces that have so many rounds worked since
   * @param made selectors of pieces that are made since
   * @param joined selectors of pieces that are joined since
   * @param otherwise selectors of pieces that came out in other yarns than planned
   * @param yarns what came about with yarns
   * @param pieces how many pieces were finished, less those given up
   * @param rounds how many rounds were worked, less those given up
   * @param minutes how long that took by what the brief tells, joining and edging included, less
   *     what was given up; empty where it tells nothing, or nothing was worked
   * @param handPercent what the hand is taken to take of what is reckoned from then on, in per
   *     cent, where that changed
   * @param before what takes it back, as long as it can be
   */
  public record Entry(
      Optional<LocalDate> on,
      List<String> planned,
      List<PartWorked> partWorked,
      List<String> made,
      List<String> joined,
      List<String> otherwise,
      List<YarnEvent> yarns,
      int pieces,
      int rounds,
      Optional<BigDecimal> minutes,
      Optional<BigDecimal> handPercent,
      Optional<Reversal> before) {

    /**
     * Copies the lists.
     *
     * @param on when it was made, where that is known
     * @param planned selectors of pieces that were given up
     * @param partWorked pieces that have so many rounds worked since
     * @param made selectors of pieces that are made since
     * @param joined selectors of pieces that are joined since
     * @param otherwise selectors of pieces that came out in other yarns than planned
     * @param yarns what came about with yarns
     * @param pieces how many pieces were finished, less those given up
     * @param rounds how many rounds were worked, less those given up
     * @param minutes how long that took by what the brief tells, joining and edging included, less
     *     what was given up; empty where it tells nothing, or nothing was worked
     * @param handPercent what the hand is taken to take of what is reckoned from then on, in per
     *     cent, where that changed
     * @param before what takes it back, as long as it can be
     */
    public Entry {
      planned = List.copyOf(planned);
      partWorked = List.copyOf(partWorked);
      made = List.copyOf(made);
      joined = List.copyOf(joined);
      otherwise = List.copyOf(otherwise);
      yarns = List.copyOf(yarns);
      minutes = minutes.map(BigDecimal::stripTrailingZeros);
    }

    /** {@return whether it tells of pieces, and not of yarns alone} */
    public boolean ofWork() {
      return Stream.of(planned, partWorked, made, joined, otherwise)
          .anyMatch(list -> !list.isEmpty());
    }

    Entry withBefore(Optional<Reversal> other) {
      return new Entry(
          on,
          planned,
          partWorked,
          made,
          joined,
          otherwise,
          yarns,
          pieces,
          rounds,
          minutes,
          handPercent,
          other);
    }
  }

  /**
   * Something that came about with a yarn.
   *
   * @param what what it was
   * @param code the yarn
   * @param amount how much, where that is part of it
   * @param weighed what a count tells of the hand, where it tells anything
   */
  public record YarnEvent(
      What what, String code, Optional<YarnAmount> amount, Optional<Weighed> weighed) {

    /**
     * An event that tells nothing of the hand.
     *
     * @param what what it was
     * @param code the yarn
     * @param amount how much, where that is part of it
     */
    public YarnEvent(What what, String code, Optional<YarnAmount> amount) {
      this(what, code, amount, Optional.empty());
    }

    /**
     * What was gone of a yarn when it was counted, since its stock was told before.
     *
     * @param goneMillimetres length in mm that was gone; below 0 where more was there than before
     * @param reckonedMillimetres length in mm of what was worked of it by then, in a hand that
     *     takes what is reckoned, above 0
     */
    public record Weighed(long goneMillimetres, long reckonedMillimetres) {}

    /** Its kinds. */
    public enum What {
      /** It was counted, and so much was at hand. */
      COUNTED,
      /** A count of it was a mistake. */
      UNCOUNTED,
      /** So much was bought of it. */
      BOUGHT,
      /** It came, as a new shade or as another dye lot of one. */
      ADDED,
      /** It went for good. */
      GONE;

      /** {@return the word used in files} */
      public String word() {
        return name().toLowerCase(Locale.ROOT);
      }
    }
  }

  /**
   * {@return the diary of a plan that has just been made}
   *
   * @param blanket its blanket
   * @param sequences its pieces' yarns
   */
  public static Diary begun(Blanket blanket, Sequences sequences) {
    return new Diary(worked(blanket, sequences), List.of());
  }

  /**
   * {@return the same diary with another plan: marks from before it can no longer be taken back}
   *
   * @param blanket the blanket as it is planned now
   * @param sequences its pieces' yarns
   */
  public Diary plannedAgain(Blanket blanket, Sequences sequences) {
    return new Diary(
        worked(blanket, sequences),
        entries.stream().map(entry -> entry.withBefore(Optional.empty())).toList());
  }

  private static List<PartWorked> worked(Blanket blanket, Sequences sequences) {
    PilePlacement laid = PilePlacement.of(blanket, sequences);
    Map<Integer, List<Place>> worked = new TreeMap<>();
    for (Place place : blanket.layout().places()) {
      int rounds = laid.roundsWorked(place.index());
      if (rounds > 0) {
        worked.computeIfAbsent(rounds, r -> new ArrayList<>()).add(place);
      }
    }
    return worked.entrySet().stream()
        .map(
            part ->
                new PartWorked(part.getKey(), GroupedNames.of(blanket.layout(), part.getValue())))
        .toList();
  }

  /**
   * {@return the diary with one more mark}
   *
   * @param entry the mark
   */
  public Diary with(Entry entry) {
    List<Entry> all = new ArrayList<>(entries);
    all.add(entry);
    int old = all.size() - 1 - MOST_TAKEN_BACK;
    if (old >= 0) {
      all.set(old, all.get(old).withBefore(Optional.empty()));
    }
    return new Diary(workedWhenPlanned, all);
  }

  /** {@return the diary without its last mark} */
  public Diary withoutLast() {
    return new Diary(workedWhenPlanned, entries.subList(0, entries.size() - 1));
  }

  /** {@return what takes the last mark back, if it can be} */
  public Optional<Reversal> reversal() {
    return entries.isEmpty() ? Optional.empty() : entries.get(entries.size() - 1).before();
  }

  /** {@return codes of the yarns with which something has come about} */
  public Set<String> yarns() {
    return entries.stream()
        .flatMap(entry -> entry.yarns().stream())
        .map(YarnEvent::code)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** {@return the day of the last mark of which it is known} */
  public Optional<LocalDate> lastDay() {
    return entries.stream().flatMap(entry -> entry.on().stream()).reduce((first, last) -> last);
  }

  /** The same with nothing proved of what stood before. */
  Diary unproved() {
    return new Diary(
        workedWhenPlanned,
        entries.stream()
            .map(entry -> entry.withBefore(entry.before().map(Reversal::unproved)))
            .toList());
  }
}
