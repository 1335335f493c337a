package lozengy.cli.command;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lozengy.cli.process.Refusal;
import lozengy.model.brief.Brief;
import lozengy.model.brief.BriefMistakes;
import lozengy.model.brief.Motif;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Yarn;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Words;
import lozengy.model.layout.PieceKind;

/**
 * Reads finished pieces from a table: a line each for pieces that are alike, with the columns
 * {@code kind} (square if there is none), {@code count} (1 if there is none) and {@code rounds},
 * the codes of the yarns from the centre, apart by blanks or in cells of their own.
 */
final class PileFile {

  private static final String KIND = "kind";
  private static final String COUNT = "count";
  private static final String ROUNDS = "rounds";
  private static final String EXAMPLE = "Begin with a line such as kind,count,rounds";
  private static final int MOST_DIGITS = 6;
  private static final Map<String, PieceKind> KINDS =
      Words.meanings(PieceKind.values(), PieceKind::word);

  private final Brief brief;
  private final List<String> codes;
  private final List<Mistake> mistakes = new ArrayList<>();
  private final List<PileEntry> entries = new ArrayList<>();
  private List<String> header;

  private PileFile(Brief brief) {
    this.brief = brief;
    this.codes = brief.yarns().stream().map(Yarn::code).toList();
  }

  /**
   * Reads a table.
   *
   * @param place what messages call it
   * @param text the table
   * @param brief the brief whose yarns and motifs it must fit
   * @throws Refusal with all its mistakes
   */
  static List<PileEntry> read(String place, String text, Brief brief) {
    PileFile file = new PileFile(brief);
    int number = 0;
    for (String line : text.replace("\uFEFF", "").split("\\R")) {
      number++;
      List<String> cells = PieceLists.cells(line);
      if (cells.stream().allMatch(String::isEmpty)) {
        continue;
      }
      if (file.header == null) {
        file.header = cells;
        if (!cells.contains(ROUNDS)) {
          file.wrong(
              number,
              ROUNDS,
              MistakeCode.FIELD_MISSING.about(ROUNDS),
              "There is no such column",
              EXAMPLE);
          break;
        }
      } else {
        file.line(number, cells);
      }
    }
    if (file.mistakes.isEmpty() && file.entries.isEmpty()) {
      file.wrong(
          0,
          ROUNDS,
          MistakeCode.WRONG_COUNT.about("pieces", 0, 1),
          "No piece is listed",
          EXAMPLE + ", and list at least one");
    }
    if (!file.mistakes.isEmpty()) {
      throw new Refusal(place, file.mistakes);
    }
    return file.entries;
  }

  private void wrong(int line, String column, Mistake.Sort sort, String found, String remedy) {
    mistakes.add(new Mistake(BriefPath.of(column), line, sort, found, remedy));
  }

  private void line(int number, List<String> cells) {
    Optional<PieceKind> kind = kind(number, cell(cells, KIND));
    Optional<Integer> count = count(number, cell(cells, COUNT));
    List<String> rounds = new ArrayList<>();
    int first = header.indexOf(ROUNDS);
    for (int i = first; i < cells.size(); i++) {
      // further columns that have a name of their own hold no rounds
      boolean named = i > first && i < header.size() && !header.get(i).isEmpty();
      if (!named) {
        Arrays.stream(cells.get(i).split("\\s+")).filter(c -> !c.isEmpty()).forEach(rounds::add);
      }
    }
    if (judge(number, kind, rounds) && kind.isPresent() && count.isPresent()) {
      entries.add(new PileEntry(kind.get(), rounds, count.get(), Set.of()));
    }
  }

  private String cell(List<String> cells, String column) {
    int at = header.indexOf(column);
    return at < 0 || at >= cells.size() ? "" : cells.get(at);
  }

  private Optional<PieceKind> kind(int line, String word) {
    if (word.isEmpty()) {
      return Optional.of(PieceKind.SQUARE);
    }
    PieceKind kind = KINDS.get(word);
    if (kind == null) {
      wrong(
          line,
          KIND,
          MistakeCode.UNKNOWN_WORD.about(word, KINDS.keySet()),
          Words.quoted(word) + " is no kind of piece",
          "Write " + Words.or(KINDS.keySet()));
    }
    return Optional.ofNullable(kind);
  }

  private Optional<Integer> count(int line, String number) {
    if (number.isEmpty()) {
      return Optional.of(1);
    }
    boolean whole = number.matches("0*[1-9][0-9]{0," + (MOST_DIGITS - 1) + "}");
    if (!whole) {
      wrong(
          line,
          COUNT,
          MistakeCode.OUT_OF_RANGE.about(number, 1),
          "The count is " + Words.quoted(number),
          "Give a whole number, 1 or more");
    }
    return whole ? Optional.of(Integer.parseInt(number)) : Optional.empty();
  }

  private boolean judge(int line, Optional<PieceKind> kind, List<String> rounds) {
    int before = mistakes.size();
    for (String code : rounds) {
      BriefPath at = BriefPath.of(ROUNDS);
      BriefMistakes.unknownCode(code, at, codes)
          .ifPresent(mistake -> mistakes.add(mistake.at(at, line)));
    }
    Optional<Motif> motif = kind.map(brief.motifs()::get);
    if (motif.isPresent() && motif.get().rounds().size() != rounds.size()) {
      wrong(
          line,
          ROUNDS,
          MistakeCode.WRONG_COUNT.about(
              "rounds",
              rounds.size(),
              motif.get().rounds().size(),
              motif.get().rounds().size(),
              kind.get().word()),
          Words.count(rounds.size(), "round") + (rounds.size() == 1 ? " is" : " are") + " given",
          "A "
              + kind.get().word()
              + " has "
              + Words.count(motif.get().rounds().size(), "round")
              + ", the centre first");
    } else if (kind.isPresent() && motif.isEmpty()) {
      wrong(
          line,
          KIND,
          MistakeCode.FIELD_MISSING.about(kind.get().word()),
          "The brief has no motif for a " + kind.get().word(),
          "Take it off the list, or add motifs." + kind.get().word());
    }
    return mistakes.size() == before;
  }
}
