package lozengy.model.arrangement;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import lozengy.model.brief.PartWorked;
import lozengy.model.brief.PartsReader;
import lozengy.model.brief.PieceNoteReader;
import lozengy.model.brief.StitchingReader;
import lozengy.model.input.Fields;
import lozengy.model.input.Located;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Range;
import lozengy.model.input.Words;

/** Reads a diary. */
final class DiaryReader {

  private static final int MOST_CHARACTERS = 100;
  private static final Range COUNTS = Range.whole(-1_000_000_000, 1_000_000_000, "");
  private static final Range MINUTES = Range.of(-1_000_000_000, 1_000_000_000, "minutes");
  private static final Range GONE = Range.whole(-1_000_000_000_000L, 1_000_000_000_000L, "mm");
  private static final Range RECKONED = Range.whole(1, 1_000_000_000_000L, "mm");
  private static final Range PLACES = Range.whole(0, 1_000_000_000, "");
  private static final Map<String, Diary.YarnEvent.What> EVENTS =
      Words.meanings(Diary.YarnEvent.What.values(), Diary.YarnEvent.What::word);

  private Optional<LocalDate> last = Optional.empty();

  private DiaryReader() {}

  static Diary read(Located located) {
    return located.fields().map(of -> new DiaryReader().read(of)).orElse(Diary.EMPTY);
  }

  private Diary read(Fields of) {
    List<PartWorked> worked = items(of, "worked_when_planned", DiaryReader::part);
    List<Diary.Entry> entries = items(of, "entries", this::entry);
    of.tellUnknown();
    return new Diary(worked, entries);
  }

  private Optional<Diary.Entry> entry(Located located) {
    return located.fields().map(this::entry);
  }

  private Diary.Entry entry(Fields of) {
    Diary.Entry entry =
        new Diary.Entry(
            of.get("on").flatMap(this::day),
            names(of, "planned"),
            items(of, "part_worked", DiaryReader::part),
            names(of, "made"),
            names(of, "joined"),
            names(of, "otherwise"),
            items(of, "yarns", DiaryReader::yarnEvent),
            number(of, "pieces", COUNTS),
            number(of, "rounds", COUNTS),
            of.get("minutes").flatMap(m -> m.number(MINUTES)),
            of.get("hand").flatMap(StitchingReader::hand),
            of.get("before").flatMap(Located::fields).map(DiaryReader::before));
    of.tellUnknown();
    return entry;
  }

  private Optional<LocalDate> day(Located located) {
    Optional<String> text = located.text(MOST_CHARACTERS);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      LocalDate day = LocalDate.parse(text.get());
      if (last.isPresent() && day.isBefore(last.get())) {
        located.wrong(
            MistakeCode.OUT_OF_RANGE.about(day, last.get()),
            day + " is before the mark before it, of " + last.get(),
            "Put the marks in the order of their days");
      }
      last = Optional.of(day);
      return last;
    } catch (DateTimeParseException e) {
      located.wrong(
          MistakeCode.MALFORMED.about(text.get()),
          Words.quoted(text.get()) + " is no day",
          "Write year, month and day, as in 2026-11-20");
      return Optional.empty();
    }
  }

  private static Optional<Diary.YarnEvent> yarnEvent(Located located) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    Optional<Diary.YarnEvent.What> what =
        of.need("what", "\"what\": \"counted\"").flatMap(w -> w.word(EVENTS));
    Optional<String> code =
        of.need("code", "\"code\": \"MUD\"").flatMap(c -> c.text(MOST_CHARACTERS));
    var amount = of.get("amount").flatMap(PartsReader::amount);
    var weighed = weighed(of);
    of.tellUnknown();
    return what.flatMap(w -> code.map(c -> new Diary.YarnEvent(w, c, amount, weighed)));
  }

  private static Optional<Diary.YarnEvent.Weighed> weighed(Fields of) {
    Optional<Long> gone = of.get("gone_mm").flatMap(g -> millimetres(g, GONE));
    Optional<Long> reckoned = of.get("reckoned_mm").flatMap(r -> millimetres(r, RECKONED));
    return gone.flatMap(g -> reckoned.map(r -> new Diary.YarnEvent.Weighed(g, r)));
  }

  private static Optional<Long> millimetres(Located located, Range range) {
    return located.number(range).map(BigDecimal::longValueExact);
  }

  private static Optional<Reversal.HandEdit> handEdit(Located located) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    Optional<BigDecimal> out = of.need("out", "\"out\": \"104 %\"").flatMap(StitchingReader::hand);
    Optional<BigDecimal> in = of.need("in", "\"in\": \"100 %\"").flatMap(StitchingReader::hand);
    of.tellUnknown();
    return out.flatMap(o -> in.map(i -> new Reversal.HandEdit(o, i)));
  }

  private static Reversal before(Fields of) {
    Reversal before =
        new Reversal(
            items(of, "pieces", DiaryReader::piece),
            edits(of, "notes", at -> Optional.of(PartsReader.note(at))),
            edits(of, "yarns", at -> Optional.of(PartsReader.yarn(at))),
            edits(of, "pile", at -> Optional.of(PartsReader.pileEntry(at))),
            of.get("hand").flatMap(DiaryReader::handEdit),
            StatedFigures.bound(of),
            of.get("solved").flatMap(Located::fields).flatMap(StatedFigures::solved));
    of.tellUnknown();
    return before;
  }

  private static Optional<Reversal.Piece> piece(Located located) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    Optional<String> at = of.need("at", "\"at\": \"r3c2\"").flatMap(PieceNoteReader::name);
    List<String> rounds = names(of, "rounds");
    of.tellUnknown();
    return at.map(name -> new Reversal.Piece(name, rounds));
  }

  private static <T> List<Edit<T>> edits(
      Fields of, String field, Function<Located, Optional<T>> item) {
    return items(
        of,
        field,
        located ->
            located
                .fields()
                .map(
                    each -> {
                      Edit<T> edit =
                          new Edit<>(
                              number(each, "from", PLACES),
                              items(each, "out", item),
                              items(each, "in", item));
                      each.tellUnknown();
                      return edit;
                    }));
  }

  private static Optional<PartWorked> part(Located located) {
    Optional<Fields> found = located.fields();
    if (found.isEmpty()) {
      return Optional.empty();
    }
    Fields of = found.get();
    Optional<Integer> rounds =
        of.need("rounds_worked", "\"rounds_worked\": 2").flatMap(PieceNoteReader::someRoundsWorked);
    List<String> at = names(of, "at");
    of.tellUnknown();
    return rounds.map(r -> new PartWorked(r, at));
  }

  private static int number(Fields of, String field, Range range) {
    return of.need(field, "\"" + field + "\": 0")
        .flatMap(n -> n.number(range))
        .map(BigDecimal::intValueExact)
        .orElse(0);
  }

  private static List<String> names(Fields of, String field) {
    return items(of, field, name -> name.text(MOST_CHARACTERS));
  }

  private static <T> List<T> items(Fields of, String field, Function<Located, Optional<T>> item) {
    List<T> all = new ArrayList<>();
    for (Located each : of.get(field).map(list -> list.items("values")).orElse(List.of())) {
      item.apply(each).ifPresent(all::add);
    }
    return all;
  }
}
