package lozengy.model.brief;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Fields;
import lozengy.model.input.FormatVersion;
import lozengy.model.input.InputException;
import lozengy.model.input.Located;
import lozengy.model.input.Mistake;
import lozengy.model.input.MistakeCode;
import lozengy.model.input.Mistakes;
import lozengy.model.input.Node;
import lozengy.model.input.Quantity;
import lozengy.model.input.Range;
import lozengy.model.input.SourceText;
import lozengy.model.input.TreeReader;
import lozengy.model.input.Words;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;
import lozengy.model.stitch.Terms;

/** Reads briefs from the trees of YAML or JSON, and judges whether their parts fit together. */
public final class PartsReader {

  private static final int MOST_TITLE_CHARACTERS = 200;
  private static final int MOST_YARNS = 500;

  /** So large that {@link BriefMistakes} is the one to refuse it, with its reasons. */
  private static final Range SQUARES = Range.whole(1, 1_000_000_000, "squares");

  private static final Map<String, Range> LOOSER = Map.of("%", Range.of(0, 100, "%"));

  private static final Map<String, Setting> SETTINGS =
      Words.meanings(Setting.values(), Setting::word);

  private static final Map<String, Boolean> FILLINGS =
      Words.meanings(new Boolean[] {true, false}, filled -> filled ? "triangles" : "open");

  private PartsReader() {}

  /**
   * Reads a brief and judges whether its parts fit together, all but whether its locks break a
   * rule. Mistakes are collected; where there is one, the brief has stopgaps in it and must not be
   * used.
   *
   * @param root the tree of fields
   * @return the brief, to be used only where no mistake was collected
   * @throws InputException if there is no brief at all
   */
  public static Brief read(Located root) {
    return read(root, true);
  }

  /**
   * The same of a brief that may leave out what is at hand of all its yarns.
   *
   * @param root the tree of fields
   * @return the brief, to be used only where no mistake was collected; without stock where it
   *     states none
   * @throws InputException if there is no brief at all
   */
  public static Brief readWithoutStock(Located root) {
    return read(root, false);
  }

  private static Brief read(Located root, boolean stockWanted) {
    Mistakes mistakes = root.mistakes();
    Optional<Fields> fields = root.fields();
    if (fields.isEmpty()) {
      throw new InputException(mistakes.list());
    }
    Fields of = fields.get();
    int newer = checkFormat(of, mistakes);
    Look look = LookReader.read(of);
    Optional<Terms> terms = StitchingReader.terms(of);
    Brief brief =
        new Brief(
            of.need("title", "title: Saltmarsh throw")
                .flatMap(title -> title.text(MOST_TITLE_CHARACTERS))
                .orElse("?"),
            layout(of),
            motifs(of, new StitchReader(terms)),
            yarns(of, stockWanted),
            RulesReader.tones(of),
            UseReader.joining(of),
            UseReader.edging(of),
            RulesReader.rules(of),
            prefer(of, look),
            look,
            notes(of),
            PileReader.read(of),
            StitchingReader.read(of, terms),
            of.get("for-sale").map(PartsReader::forSale),
            Extras.NONE,
            Extras.NONE);
    of.tellUnknown();
    List<Mistake> misfits =
        BriefMistakes.ofParts(brief, path -> mistakes.doubt(path.in(root.path())));
    misfits.forEach(root::add);
    BriefPath at = root.path();
    brief = brief.withExtras(Extras.read(newer, mistakes, at, at, brief.itemNames()));
    Optional<Located> kept = RulesReader.keptForHand(of);
    return kept.isPresent() && mistakes.list().isEmpty() ? keptBack(brief, kept.get()) : brief;
  }

  /** The brief with as much kept back as the hand may take more. */
  private static Brief keptBack(Brief brief, Located kept) {
    Optional<HandRange> range = HandRange.of(brief);
    if (range.isEmpty()) {
      kept.wrong(
          MistakeCode.FIELD_MISSING.about("varies"),
          "Nothing tells how much more the hand may take",
          "Add stitches: { varies: 6 % }, or give two amounts or more of the same rounds; or keep back"
              + " a part, such as 5 %");
      return brief;
    }
    return brief.withRules(brief.rules().withKeepBack(range.get().keepBackPercent()));
  }

  private static ForSale forSale(Located said) {
    Optional<Fields> of = said.fields();
    Optional<BigDecimal> looser =
        of.flatMap(fields -> fields.get("looser"))
            .flatMap(percent -> percent.quantity(LOOSER, "10 %"))
            .map(Quantity::number);
    of.ifPresent(Fields::tellUnknown);
    return new ForSale(looser.orElse(BigDecimal.ZERO));
  }

  /** The weights; what the look asks for without one weighs as {@link Weight#NORMAL}. */
  private static Preferences prefer(Fields of, Look look) {
    Preferences asked = RulesReader.preferences(of);
    Map<Part, Double> weights = new EnumMap<>(asked.weights());
    for (Part part : Part.values()) {
      if (look.asksFor(part) && !weighed(of, part)) {
        weights.put(part, Weight.NORMAL.number());
      }
    }
    return new Preferences(weights, asked.words());
  }

  private static boolean weighed(Fields of, Part part) {
    return of.get("prefer")
        .filter(prefer -> prefer.node() instanceof Node.Mapping)
        .flatMap(Located::fields)
        .flatMap(fields -> fields.get(part.word()))
        .isPresent();
  }

  /** The second number of the form that the brief states. */
  private static int checkFormat(Fields of, Mistakes mistakes) {
    Optional<Located> format = of.need("format", "format: " + Brief.FORMAT);
    Optional<String> text = format.flatMap(f -> f.scalar("Write " + Brief.FORMAT));
    OptionalInt second =
        text.isEmpty() ? OptionalInt.of(0) : FormatVersion.second(Brief.FORMAT, text.get());
    if (second.isEmpty()) {
      format
          .get()
          .wrong(
              MistakeCode.WRONG_FORMAT.about(text.get(), Brief.FORMAT),
              Words.quoted(text.get()) + " is not a brief's format",
              formatRemedy(text.get()));
      throw new InputException(mistakes.list());
    }
    if (second.getAsInt() > 0) {
      mistakes.newer();
    }
    return second.getAsInt();
  }

  private static String formatRemedy(String format) {
    return format.startsWith("lozengy-brief/")
        ? "This program reads " + Brief.FORMAT
        : "A brief's format is " + Brief.FORMAT;
  }

  private static LayoutSize layout(Fields of) {
    LayoutSize stopgap = new LayoutSize(Setting.ON_POINT, 1, 1, false, false);
    Optional<Fields> found =
        of.need("layout", "layout: { setting: on-point, across: 6, down: 8 }")
            .flatMap(Located::fields);
    if (found.isEmpty()) {
      return stopgap;
    }
    Fields layout = found.get();
    Optional<Setting> setting =
        layout.need("setting", "setting: on-point").flatMap(s -> s.word(SETTINGS));
    Optional<Integer> across = squares(layout, "across");
    Optional<Integer> down = squares(layout, "down");
    boolean onPoint = setting.orElse(Setting.ON_POINT) == Setting.ON_POINT;
    boolean sides = triangles(layout, "sides", onPoint);
    boolean corners = triangles(layout, "corners", onPoint);
    layout.tellUnknown();
    return across.isEmpty() || down.isEmpty() || setting.isEmpty()
        ? stopgap
        : new LayoutSize(setting.get(), across.get(), down.get(), sides, corners);
  }

  private static Optional<Integer> squares(Fields layout, String name) {
    return layout
        .need(name, name + ": 6")
        .flatMap(
            field ->
                field.number(
                    SQUARES,
                    "Give a whole number, at least 1; at most "
                        + Words.number(LargeLayout.MOST_PIECES)
                        + " pieces are planned"))
        .map(BigDecimal::intValueExact);
  }

  private static boolean triangles(Fields layout, String name, boolean onPoint) {
    Optional<Located> field = layout.get(name);
    boolean triangles = field.flatMap(f -> f.word(FILLINGS)).orElse(onPoint);
    if (triangles && !onPoint) {
      field
          .get()
          .wrong(
              MistakeCode.CONTRADICTS.about("triangles", Setting.STRAIGHT.word()),
              "A straight setting has no triangles",
              "Leave " + name + " out, or write open");
      return false;
    }
    return triangles;
  }

  private static Map<PieceKind, Motif> motifs(Fields of, StitchReader stitches) {
    Map<PieceKind, Motif> motifs = new EnumMap<>(PieceKind.class);
    Optional<Fields> found =
        of.need("motifs", "motifs: { square: { side: 10 cm, rounds: [ { metres: 3 } ] } }")
            .flatMap(Located::fields);
    if (found.isPresent()) {
      for (PieceKind kind : PieceKind.values()) {
        found
            .get()
            .get(kind.word())
            .flatMap(motif -> MotifReader.read(kind, motif, stitches))
            .ifPresent(motif -> motifs.put(kind, motif));
      }
      found.get().tellUnknown();
    }
    return motifs;
  }

  private static List<Yarn> yarns(Fields of, boolean stockWanted) {
    Optional<Located> found =
        of.need("yarns", "yarns: [ { code: MUD, colour: \"#2c2a29\", left: 200 m } ]");
    List<Located> items = found.map(yarns -> yarns.items("yarns")).orElse(List.of());
    if (items.size() > MOST_YARNS) {
      found
          .get()
          .wrong(
              MistakeCode.WRONG_COUNT.about("yarns", items.size(), 1, MOST_YARNS),
              Words.count(items.size(), "yarn") + " are listed",
              "List at most " + MOST_YARNS + " yarns");
      return List.of();
    }
    boolean stocked = items.size() == 1 || items.stream().anyMatch(YarnReader::saysStock);
    if (stockWanted && !stocked && !items.isEmpty()) {
      found
          .get()
          .wrong(
              MistakeCode.FIELD_MISSING.about("balls"),
              "No yarn says what is at hand of it",
              "Add balls: 2, or left: 85 g, or both, to each");
    }
    List<Yarn> yarns = new ArrayList<>();
    for (Located item : items) {
      yarns.add(YarnReader.read(item, yarns.size(), stocked && (stockWanted || items.size() > 1)));
    }
    return yarns;
  }

  /**
   * {@return a note, as in a brief}
   *
   * @param located where it stands
   */
  public static PieceNote note(Located located) {
    return PieceNoteReader.read(located);
  }

  /**
   * {@return a yarn, as in a brief}
   *
   * @param located where it stands
   */
  public static Yarn yarn(Located located) {
    return YarnReader.read(located, 0, true);
  }

  /**
   * {@return a yarn, as in a brief, that need not say what there is of it; its put-up is judged
   * with it, as that of a brief's yarns is with the brief}
   *
   * @param located where it stands
   */
  public static Yarn shade(Located located) {
    Yarn shade = YarnReader.read(located, 0, false);
    shade
        .ball()
        .flatMap(ball -> PutUpMistake.of(ball, BriefPath.of("ball")))
        .ifPresent(located::add);
    return shade;
  }

  /**
   * {@return a yarn that stands by itself, as in a brief}
   *
   * @param source the yarn's fields and what messages call them
   * @throws InputException with all mistakes, if there is one
   */
  public static Yarn yarn(SourceText source) {
    Mistakes mistakes = new Mistakes();
    Yarn yarn = YarnReader.read(Located.root(TreeReader.read(source, mistakes), mistakes), 0, true);
    mistakes.throwIfAny();
    return yarn;
  }

  /**
   * {@return pieces of the pile, as in a brief}
   *
   * @param located where they stand
   */
  public static PileEntry pileEntry(Located located) {
    return PileReader.entry(located);
  }

  /**
   * {@return an amount of yarn, as in a brief}
   *
   * @param located where it stands
   */
  public static Optional<YarnAmount> amount(Located located) {
    return YarnReader.amount(located);
  }

  private static List<PieceNote> notes(Fields of) {
    List<PieceNote> notes = new ArrayList<>();
    List<Located> items = of.get("pieces").map(p -> p.items("pieces")).orElse(List.of());
    for (Located item : items) {
      notes.add(PieceNoteReader.read(item));
    }
    return notes;
  }
}
