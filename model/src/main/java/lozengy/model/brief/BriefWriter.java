package lozengy.model.brief;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lozengy.model.colour.Tone;
import lozengy.model.input.BriefPath;
import lozengy.model.input.FormatVersion;
import lozengy.model.input.JsonText;
import lozengy.model.layout.Layout;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;
import lozengy.model.layout.Setting;

/**
 * Writes briefs as JSON, with everything said that was left to its default. What is written reads
 * back equal.
 */
public final class BriefWriter {

  private static final BriefPath LOOK = BriefPath.of("look");

  private final JsonText json;

  private BriefWriter(JsonText json) {
    this.json = json;
  }

  /**
   * {@return the brief as a file's text}
   *
   * @param brief the brief
   */
  public static String text(Brief brief) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try {
      JsonText.write(bytes, json -> write(json, brief));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toString(StandardCharsets.UTF_8);
  }

  /**
   * Writes the brief as the next value.
   *
   * @param json where it is written
   * @param brief the brief
   * @throws IOException if the stream fails
   */
  public static void write(JsonText json, Brief brief) throws IOException {
    Brief whole = withNotesOfExtras(brief);
    new BriefWriter(json.with(whole.extras().placed(whole.itemNames()))).brief(whole);
  }

  /**
   * The brief with a note that says nothing for fields of others whose own note is there no more:
   * what is known of its pieces has been put together otherwise. Of pieces that are gone too,
   * nothing is left.
   */
  private static Brief withNotesOfExtras(Brief brief) {
    Set<String> missing = new LinkedHashSet<>();
    for (BriefPath at : brief.extras().fields().keySet()) {
      if (at.steps().size() > 1
          && at.first().filter("pieces"::equals).isPresent()
          && at.steps().get(1) instanceof BriefPath.Name name) {
        missing.add(name.name());
      }
    }
    missing.removeAll(brief.itemNames().get("pieces"));
    if (missing.isEmpty()) {
      return brief;
    }
    Layout layout = Layout.of(brief.layout());
    List<PieceNote> notes = new ArrayList<>(brief.pieces());
    for (String at : missing) {
      List<String> pieces = List.of(at.split(","));
      if (pieces.stream().allMatch(each -> !layout.select(each).isEmpty())) {
        notes.add(new PieceNote(pieces, List.of(), PieceState.PLANNED, Set.of()));
      }
    }
    return brief.withPieces(notes);
  }

  private void brief(Brief brief) throws IOException {
    json.tallMapping();
    json.field("format").text(FormatVersion.text(Brief.FORMAT, brief.extras().newer()));
    json.field("title").text(brief.title());
    layout(brief.layout());
    json.field("motifs").tallMapping();
    for (PieceKind kind : PieceKind.values()) {
      if (brief.motifs().containsKey(kind)) {
        motif(kind, brief.motifs().get(kind), brief.stitching());
      }
    }
    json.endMapping();
    StitchingWriter.write(json, brief.stitching());
    json.field("yarns").tallList();
    for (Yarn yarn : brief.yarns()) {
      yarn(json, yarn);
    }
    json.endList();
    json.field("tones").mapping();
    json.field("dark-below").number(brief.tones().darkBelow());
    json.field("light-from").number(brief.tones().lightFrom());
    json.endMapping();
    if (brief.joining().isPresent()) {
      json.field("joining").mapping();
      joining(brief.joining().get());
      json.endMapping();
    }
    if (brief.edging().size() == 1) {
      json.field("edging").mapping();
      use(brief.edging().get(0));
      json.endMapping();
    } else if (!brief.edging().isEmpty()) {
      json.field("edging").tallList();
      for (YarnUse use : brief.edging()) {
        json.mapping();
        use(use);
        json.endMapping();
      }
      json.endList();
    }
    rules(brief.rules());
    json.field("prefer").mapping();
    for (Part part : Part.values()) {
      prefer(part, brief);
    }
    json.endMapping();
    LookWriter.write(json, brief.look(), brief.extras().fields().containsKey(LOOK));
    json.field("pieces").tallList();
    for (PieceNote note : brief.pieces()) {
      note(json, note);
    }
    json.endList();
    pile(brief.pile());
    if (brief.forSale().isPresent()) {
      json.field("for-sale").mapping();
      json.field("looser").text(JsonText.shortest(brief.forSale().get().looserPercent()) + " %");
      json.endMapping();
    }
    json.endMapping();
  }

  private void pile(List<PileEntry> pile) throws IOException {
    if (pile.isEmpty()) {
      return;
    }
    json.field("pile").tallList();
    for (PileEntry entry : pile) {
      pileEntry(json, entry);
    }
    json.endList();
  }

  /**
   * Writes pieces of the pile as the next value.
   *
   * @param json where they are written
   * @param entry the pieces
   * @throws IOException if the stream fails
   */
  public static void pileEntry(JsonText json, PileEntry entry) throws IOException {
    new BriefWriter(json).write(entry);
  }

  private void write(PileEntry entry) throws IOException {
    json.mapping();
    json.field("kind").text(entry.kind().word());
    json.field("rounds");
    codes(json, entry.rounds());
    json.field("count").number(entry.count());
    if (!entry.counted().isEmpty()) {
      json.field("counted");
      codes(json, List.copyOf(entry.counted()));
    }
    if (entry.out() > 0) {
      json.field("out").number(entry.out());
    }
    json.endMapping();
  }

  /**
   * A part that is scored only if asked for is written only then, or where it or what it scores was
   * named: what the look asks for weighs something if nothing is said.
   */
  private void prefer(Part part, Brief brief) throws IOException {
    Preferences prefer = brief.prefer();
    if (prefer.words().containsKey(part)) {
      json.field(part.word()).text(prefer.words().get(part).word());
    } else if (!part.onlyIfAsked() || prefer.weight(part) > 0 || brief.look().asksFor(part)) {
      json.field(part.word()).number(prefer.weight(part));
    }
  }

  private void layout(LayoutSize size) throws IOException {
    json.field("layout").mapping();
    json.field("setting").text(size.setting().word());
    json.field("across").number(size.across());
    json.field("down").number(size.down());
    if (size.setting() == Setting.ON_POINT) {
      json.field("sides").text(size.sideTriangles() ? "triangles" : "open");
      json.field("corners").text(size.cornerTriangles() ? "triangles" : "open");
    }
    json.endMapping();
  }

  private void motif(PieceKind kind, Motif motif, Stitching stitching) throws IOException {
    json.field(kind.word()).tallMapping();
    if (motif.edgeCm().isPresent()) {
      String cm = JsonText.shortest(BigDecimal.valueOf(motif.edgeCm().getAsDouble())) + " cm";
      json.field(kind == PieceKind.SQUARE ? "side" : "base").text(cm);
    }
    json.field("rounds").tallList();
    for (Round round : motif.rounds()) {
      json.mapping().field("tone").list();
      for (Tone tone : Tone.values()) {
        if (round.tones().contains(tone)) {
          json.text(tone.word());
        }
      }
      json.endList();
      if (round.amount() instanceof YarnAmount.Length length) {
        json.field("metres").number(thousandths(length.millimetres()));
      } else if (round.amount() instanceof YarnAmount.Weight weight) {
        json.field("grams").number(thousandths(weight.milligrams()));
      } else if (round.amount() instanceof StitchCounts stitches) {
        StitchingWriter.counts(json, stitches, stitching.terms());
      }
      if (round.minutes().isPresent()) {
        json.field("minutes").number(round.minutes().get());
      }
      json.endMapping();
    }
    json.endList().endMapping();
  }

  /**
   * Writes a yarn as the next value.
   *
   * @param json where it is written
   * @param yarn the yarn
   * @throws IOException if the stream fails
   */
  public static void yarn(JsonText json, Yarn yarn) throws IOException {
    new YarnWriter(json).write(yarn);
  }

  static String percent(double percent) {
    return JsonText.shortest(BigDecimal.valueOf(percent)) + " %";
  }

  /**
   * {@return an amount of yarn as files state it, in m or g}
   *
   * @param amount the amount
   */
  public static String amount(YarnAmount amount) {
    if (amount instanceof YarnAmount.Length length) {
      return JsonText.shortest(thousandths(length.millimetres())) + " m";
    }
    return JsonText.shortest(thousandths(((YarnAmount.Weight) amount).milligrams())) + " g";
  }

  static BigDecimal thousandths(BigDecimal count) {
    return count.movePointLeft(3);
  }

  private void joining(Joining joining) throws IOException {
    if (joining instanceof YarnUse use) {
      use(use);
    } else if (joining instanceof BorderJoining borders) {
      json.field("yarns").text("borders");
      rate(borders.rate(), borders.minutesPerMetre());
    }
  }

  private void use(YarnUse use) throws IOException {
    json.field("yarn").text(use.yarn());
    if (use.rounds() > 1) {
      json.field("rounds").number(use.rounds());
    }
    rate(use.rate(), use.minutesPerMetre());
  }

  private void rate(YarnRate rate, Optional<BigDecimal> minutesPerMetre) throws IOException {
    if (rate instanceof YarnRate.PerMetre each) {
      json.field("metres-per-metre").number(each.metresPerMetre());
    } else if (rate instanceof YarnRate.Strip strip) {
      json.field("sample").mapping();
      json.field("length").text(StitchingWriter.cm(strip.millimetres()));
      if (strip.rounds() > 1) {
        json.field("rounds").number(strip.rounds());
      }
      json.field("takes").text(amount(strip.takes()));
      json.endMapping();
    }
    if (minutesPerMetre.isPresent()) {
      json.field("minutes-per-metre").number(minutesPerMetre.get());
    }
  }

  private void rules(Rules rules) throws IOException {
    json.field("rules").mapping();
    json.field("neighbour-borders").text("differ");
    json.field("min-contrast").number(rules.minContrast());
    json.field("within-piece").text(rules.withinPiece().word());
    if (rules.centresDiffer()) {
      json.field("neighbour-centres").text("differ");
    }
    if (!rules.lotsApart()) {
      json.field("lots").text("free");
    }
    json.field("copies");
    if (rules.copies().isPresent()) {
      json.number(rules.copies().getAsInt());
    } else {
      json.text("free");
    }
    json.field("keep-back").text(percent(rules.keepBackPercent()));
    json.endMapping();
  }

  /**
   * Writes a note as the next value.
   *
   * @param json where it is written
   * @param note the note
   * @throws IOException if the stream fails
   */
  public static void note(JsonText json, PieceNote note) throws IOException {
    new BriefWriter(json).write(note);
  }

  private void write(PieceNote note) throws IOException {
    json.mapping().field("at");
    codes(json, note.at());
    if (!note.rounds().isEmpty()) {
      json.field("rounds").list();
      if (note.fromBorder()) {
        json.text(PieceNote.ROUNDS_BEFORE);
      }
      for (Optional<String> code : note.rounds()) {
        json.text(code);
      }
      json.endList();
    }
    json.field("state").text(note.state().word());
    if (note.roundsWorked() > 0) {
      json.field("rounds-worked").number(note.roundsWorked());
    }
    if (!note.not().isEmpty()) {
      json.field("not");
      codes(json, List.copyOf(note.not()));
    }
    json.endMapping();
  }

  static void codes(JsonText json, List<String> codes) throws IOException {
    json.list();
    for (String code : codes) {
      json.text(code);
    }
    json.endList();
  }
}
