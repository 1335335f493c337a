package lozengy.report.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Pile.Stack;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Brief;
import lozengy.model.colour.Tone;
import lozengy.model.layout.GroupedNames;
import lozengy.model.layout.PieceKind;

/** Phrases that several sentences share. */
public final class Phrases {

  /** Fewer yarns than this are told by name. */
  private static final int FEW_YARNS = 4;

  /** Pieces are told by rows and runs where there are no more of these. */
  private static final int MOST_GROUPS = 4;

  private Phrases() {}

  /** Yarns by name, as a list. */
  static String yarns(Blanket blanket, Collection<Integer> yarns) {
    return Words.list(yarns.stream().map(yarn -> Words.yarn(blanket, yarn)).toList());
  }

  /** What takes of a yarn beside the rounds: {@code joining and edging take}. */
  static String fixedUse(Blanket blanket, int yarn) {
    List<String> uses = uses(blanket, List.of(yarn));
    return String.join(" and ", uses) + (uses.size() == 1 ? " takes" : " take");
  }

  /** What takes of some yarns beside the rounds: joining, edging, finished pieces left out. */
  static List<String> uses(Blanket blanket, Collection<Integer> yarns) {
    List<String> uses = new ArrayList<>();
    Brief brief = blanket.brief();
    boolean joins =
        brief
            .joiningInOneYarn()
            .filter(use -> yarns.contains(blanket.yarnIndex(use.yarn())))
            .isPresent();
    if (joins && blanket.fixedUse().joiningMillimetres() > 0) {
      uses.add("joining");
    }
    boolean edges = yarns.stream().anyMatch(yarn -> blanket.fixedUse().edgingMillimetres(yarn) > 0);
    if (edges) {
      uses.add("edging");
    }
    if (yarns.stream().anyMatch(yarn -> blanket.fixedUse().pileOutMillimetres(yarn) > 0)) {
      uses.add("what stays out of the pile");
    }
    return uses;
  }

  /**
   * Yarns by name; or where they are all the yarns of their tones, and not few, {@code the 8 dark
   * yarns}.
   */
  static String yarnsOrTones(Blanket blanket, Collection<Integer> yarns) {
    Set<Tone> tones = EnumSet.noneOf(Tone.class);
    yarns.forEach(yarn -> tones.add(blanket.yarns().tone(yarn)));
    long ofTones =
        IntStream.range(0, blanket.yarnCount())
            .filter(y -> tones.contains(blanket.yarns().tone(y)))
            .count();
    if (yarns.size() < FEW_YARNS || ofTones != yarns.size()) {
      return yarns(blanket, yarns);
    }
    String words = String.join(" and ", tones.stream().map(Tone::word).toList());
    return tones.size() == Tone.values().length
        ? "all " + yarns.size() + " yarns"
        : "the " + yarns.size() + " " + words + " yarns";
  }

  /** A round of a piece by name: {@code r3c2's border}, {@code r3c2's round 2}. */
  static String round(Blanket blanket, int piece, int round) {
    return Words.round(blanket, piece, round) + " of " + Words.piece(blanket, piece);
  }

  /** A count of pieces: {@code 83 squares}, or the names where they are few. */
  static String pieces(Blanket blanket, List<Integer> pieces) {
    if (pieces.size() <= 3) {
      return Words.pieces(blanket, pieces);
    }
    Map<PieceKind, Integer> counts = new TreeMap<>();
    pieces.forEach(piece -> counts.merge(blanket.kind(piece), 1, Integer::sum));
    return Words.list(
        counts.entrySet().stream().map(e -> count(e.getValue(), e.getKey())).toList());
  }

  /** Pieces by rows and runs, or as a count where these are many. */
  static String grouped(Blanket blanket, List<Integer> pieces) {
    List<String> names = groups(blanket, pieces);
    return names.size() <= MOST_GROUPS ? Words.list(names) : pieces(blanket, pieces);
  }

  /** The same with what they are to follow: {@code row1 is}, {@code row4 and row5 are}. */
  static String groupedAre(Blanket blanket, List<Integer> pieces) {
    return grouped(blanket, pieces) + (groups(blanket, pieces).size() == 1 ? " is" : " are");
  }

  private static List<String> groups(Blanket blanket, List<Integer> pieces) {
    return GroupedNames.of(blanket.layout(), pieces.stream().map(blanket::place).toList());
  }

  /**
   * Rounds of pieces: {@code rounds 1 and 3 of 83 squares, round 4 of r1c1}.
   *
   * @param rounds the pieces by round, for each kind of piece
   */
  static String rounds(Blanket blanket, Map<PieceKind, Map<Integer, List<Integer>>> rounds) {
    List<String> parts = new ArrayList<>();
    for (Map<Integer, List<Integer>> ofKind : rounds.values()) {
      Map<List<Integer>, TreeSet<Integer>> byPieces = new LinkedHashMap<>();
      ofKind.forEach(
          (round, pieces) -> byPieces.computeIfAbsent(pieces, p -> new TreeSet<>()).add(round));
      byPieces.forEach(
          (pieces, numbers) -> parts.add(Words.rounds(numbers) + " of " + pieces(blanket, pieces)));
    }
    return String.join(", ", parts);
  }

  /** With a capital first letter: for words that begin with no name. */
  public static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** Yarns by name, any of them: {@code Reed (REE) or Foam (FOA)}. */
  static String either(Blanket blanket, Collection<Integer> yarns) {
    List<String> names = yarns.stream().map(yarn -> Words.yarn(blanket, yarn)).toList();
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
  }

  /** Tones, any of them: {@code dark or mid}. */
  static String tones(Collection<Tone> tones) {
    return String.join(" or ", tones.stream().sorted().map(Tone::word).toList());
  }

  /** Yarns by code: {@code SND, REE, MUD}. */
  static String codes(Blanket blanket, Collection<Integer> yarns) {
    return String.join(", ", yarns.stream().map(yarn -> blanket.yarn(yarn).code()).toList());
  }

  /** A stack of the pile by its count and yarns: {@code 2 squares in SND, REE, MUD}. */
  static String stack(Blanket blanket, int index) {
    Stack stack = blanket.pile().stacks().get(index);
    List<Integer> yarns = Arrays.stream(stack.yarns()).boxed().toList();
    return count(stack.count(), stack.kind()) + " in " + codes(blanket, yarns);
  }

  /** Counts by kind: {@code 62 squares and 8 triangles}. */
  static String counts(Map<PieceKind, Integer> counts) {
    return Words.list(
        new TreeMap<>(counts)
            .entrySet().stream().map(each -> count(each.getValue(), each.getKey())).toList());
  }

  /** A count of pieces of a kind: {@code 62 squares}. */
  static String count(int count, PieceKind kind) {
    return lozengy.model.input.Words.count(count, kind.word());
  }
}
