package lozengy.model.brief;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lozengy.model.colour.LabColours;
import lozengy.model.colour.Tone;
import lozengy.model.colour.ToneLimits;
import lozengy.model.input.BriefPath;
import lozengy.model.input.Nulls;
import lozengy.model.layout.LayoutSize;
import lozengy.model.layout.PieceKind;

/**
 * What is asked for: the layout, the motifs, the yarns, the rules and preferences, and what is
 * known of single pieces.
 *
 * @param title what the blanket is called
 * @param layout the layout
 * @param motifs the motif of each kind of piece that the layout has
 * @param yarns the yarns, in the brief's order
 * @param tones where tones change
 * @param joining yarn along the seams, where stated
 * @param edging yarn along the outline, the innermost rounds first; empty where none is stated
 * @param rules what must hold
 * @param prefer what weighs
 * @param look the look that is asked for
 * @param pieces what is known of single pieces, in the brief's order; of two notes on one piece
 *     both hold
 * @param pile finished pieces that have no place yet, in the brief's order
 * @param stitching what turns the stitches of rounds into yarn
 * @param forSale that the plan goes to others with a pack of yarn, where it does
 * @param extras fields of its file that are not this program's
 * @param around the same of an arrangement's file that holds it; here, because whatever becomes of
 *     the arrangement goes on with its brief
 */
public record Brief(
    String title,
    LayoutSize layout,
    Map<PieceKind, Motif> motifs,
    List<Yarn> yarns,
    ToneLimits tones,
    Optional<Joining> joining,
    List<YarnUse> edging,
    Rules rules,
    Preferences prefer,
    Look look,
    List<PieceNote> pieces,
    List<PileEntry> pile,
    Stitching stitching,
    Optional<ForSale> forSale,
    Extras extras,
    Extras around) {

  /** The value of a brief file's {@code format} field. */
  public static final String FORMAT = "lozengy-brief/1";

  /**
   * Copies the collections. What the parts mean together is judged by {@link BriefMistakes}.
   *
   * @param title what the blanket is called
   * @param layout the layout
   * @param motifs the motif of each kind of piece that the layout has
   * @param yarns the yarns, in the brief's order
   * @param tones where tones change
   * @param joining yarn along the seams, where stated
   * @param edging yarn along the outline, the innermost rounds first; empty where none is stated
   * @param rules what must hold
   * @param prefer what weighs
   * @param look the look that is asked for
   * @param pieces what is known of single pieces, in the brief's order; of two notes on one piece
   *     both hold
   * @param pile finished pieces that have no place yet, in the brief's order
   * @param stitching what turns the stitches of rounds into yarn
   * @param forSale that the plan goes to others with a pack of yarn, where it does
   * @param extras fields of its file that are not this program's
   * @param around the same of an arrangement's file that holds it
   */
  public Brief {
    Nulls.refuse(
        "title layout motifs yarns tones joining edging rules prefer look pieces pile stitching"
            + " forSale extras around",
        title,
        layout,
        motifs,
        yarns,
        tones,
        joining,
        edging,
        rules,
        prefer,
        look,
        pieces,
        pile,
        stitching,
        forSale,
        extras,
        around);
    Map<PieceKind, Motif> byKind = new EnumMap<>(PieceKind.class);
    byKind.putAll(motifs);
    motifs = Collections.unmodifiableMap(byKind);
    yarns = List.copyOf(yarns);
    edging = List.copyOf(edging);
    pieces = List.copyOf(pieces);
    pile = List.copyOf(pile);
  }

  /**
   * {@return this brief with another title}
   *
   * @param other what the blanket is called
   */
  public Brief withTitle(String other) {
    return new Brief(
        other, layout, motifs, yarns, tones, joining, edging, rules, prefer, look, pieces, pile,
        stitching, forSale, extras, around);
  }

  /**
   * {@return this brief with another pile}
   *
   * @param other what stands in its place
   */
  public Brief withPile(List<PileEntry> other) {
    return new Brief(
        title, layout, motifs, yarns, tones, joining, edging, rules, prefer, look, pieces, other,
        stitching, forSale, extras, around);
  }

  /**
   * {@return a brief that asks for nothing but the default, and knows nothing of single pieces}
   *
   * @param title what the blanket is called
   * @param layout the layout
   * @param motifs the motif of each kind of piece that the layout has
   * @param yarns the yarns, in the brief's order
   */
  public static Brief of(
      String title, LayoutSize layout, Map<PieceKind, Motif> motifs, List<Yarn> yarns) {
    return new Brief(
        title,
        layout,
        motifs,
        yarns,
        ToneLimits.DEFAULT,
        Optional.empty(),
        List.of(),
        Rules.DEFAULT,
        Preferences.DEFAULT,
        Look.NONE,
        List.of(),
        List.of(),
        Stitching.NONE,
        Optional.empty(),
        Extras.NONE,
        Extras.NONE);
  }

  /**
   * {@return this brief with other limits of tones}
   *
   * @param other what stands in their place
   */
  public Brief withTones(ToneLimits other) {
    return new Brief(
        title, layout, motifs, yarns, other, joining, edging, rules, prefer, look, pieces, pile,
        stitching, forSale, extras, around);
  }

  /**
   * {@return this brief with other notes on single pieces}
   *
   * @param notes the notes, in their order
   */
  public Brief withPieces(List<PieceNote> notes) {
    return new Brief(
        title, layout, motifs, yarns, tones, joining, edging, rules, prefer, look, notes, pile,
        stitching, forSale, extras, around);
  }

  /**
   * {@return where the edging's rounds in one of its yarns stand: the field itself where it is in
   * one yarn alone}
   *
   * @param at the number of the yarn among those of the edging, from 0
   */
  public BriefPath edgingPath(int at) {
    return BriefPath.of("edging").itemOf(at, edging.size());
  }

  /** {@return the joining, where all seams are worked in one yarn} */
  public Optional<YarnUse> joiningInOneYarn() {
    return joining.filter(YarnUse.class::isInstance).map(YarnUse.class::cast);
  }

  /** {@return the joining, where seams are worked in the borders' yarns} */
  public Optional<BorderJoining> joiningInBorders() {
    return joining.filter(BorderJoining.class::isInstance).map(BorderJoining.class::cast);
  }

  /**
   * {@return the tone of a yarn, stated or by its lightness}
   *
   * @param yarn one of the yarns
   */
  public Tone toneOf(Yarn yarn) {
    return yarn.statedTone()
        .orElseGet(() -> tones.toneOf(LabColours.of(yarn.colour()).lightness()));
  }

  /**
   * {@return this brief with other yarns}
   *
   * @param others what stands in their place
   */
  public Brief withYarns(List<Yarn> others) {
    return new Brief(
        title, layout, motifs, others, tones, joining, edging, rules, prefer, look, pieces, pile,
        stitching, forSale, extras, around);
  }

  /**
   * {@return this brief with other rules}
   *
   * @param other what stands in its place
   */
  public Brief withRules(Rules other) {
    return new Brief(
        title, layout, motifs, yarns, tones, joining, edging, other, prefer, look, pieces, pile,
        stitching, forSale, extras, around);
  }

  /**
   * {@return this brief with other motifs}
   *
   * @param others what stands in their place
   */
  public Brief withMotifs(Map<PieceKind, Motif> others) {
    return new Brief(
        title, layout, others, yarns, tones, joining, edging, rules, prefer, look, pieces, pile,
        stitching, forSale, extras, around);
  }

  /**
   * {@return this brief with another layout}
   *
   * @param other what stands in its place
   */
  public Brief withLayout(LayoutSize other) {
    return new Brief(
        title, other, motifs, yarns, tones, joining, edging, rules, prefer, look, pieces, pile,
        stitching, forSale, extras, around);
  }

  /**
   * {@return this brief with other joining}
   *
   * @param other yarn along the seams; empty for none
   */
  public Brief withJoining(Optional<? extends Joining> other) {
    return new Brief(
        title,
        layout,
        motifs,
        yarns,
        tones,
        other.map(each -> each),
        edging,
        rules,
        prefer,
        look,
        pieces,
        pile,
        stitching,
        forSale,
        extras,
        around);
  }

  /**
   * {@return this brief with other edging}
   *
   * @param other yarn along the outline, the innermost rounds first; empty for none
   */
  public Brief withEdging(List<YarnUse> other) {
    return new Brief(
        title, layout, motifs, yarns, tones, joining, other, rules, prefer, look, pieces, pile,
        stitching, forSale, extras, around);
  }

  /**
   * {@return this brief with other preferences}
   *
   * @param other what stands in its place
   */
  public Brief withPrefer(Preferences other) {
    return new Brief(
        title, layout, motifs, yarns, tones, joining, edging, rules, other, look, pieces, pile,
        stitching, forSale, extras, around);
  }

  /**
   * {@return this brief with another look}
   *
   * @param other what stands in its place
   */
  public Brief withLook(Look other) {
    return new Brief(
        title, layout, motifs, yarns, tones, joining, edging, rules, prefer, other, pieces, pile,
        stitching, forSale, extras, around);
  }

  /**
   * {@return this brief with another way to turn stitches into yarn}
   *
   * @param other what stands in its place
   */
  public Brief withStitching(Stitching other) {
    return new Brief(
        title, layout, motifs, yarns, tones, joining, edging, rules, prefer, look, pieces, pile,
        other, forSale, extras, around);
  }

  /**
   * {@return this brief for others, or not}
   *
   * @param other what stands in its place; empty where the plan is for its maker alone
   */
  public Brief withForSale(Optional<ForSale> other) {
    return new Brief(
        title, layout, motifs, yarns, tones, joining, edging, rules, prefer, look, pieces, pile,
        stitching, other, extras, around);
  }

  /**
   * {@return this brief with other fields that are not this program's}
   *
   * @param other those of its own file
   */
  public Brief withExtras(Extras other) {
    return new Brief(
        title, layout, motifs, yarns, tones, joining, edging, rules, prefer, look, pieces, pile,
        stitching, forSale, other, around);
  }

  /**
   * {@return this brief with other fields of an arrangement's file that holds it}
   *
   * @param other those of that file that are not this program's
   */
  public Brief withAround(Extras other) {
    return new Brief(
        title, layout, motifs, yarns, tones, joining, edging, rules, prefer, look, pieces, pile,
        stitching, forSale, extras, other);
  }

  /** {@return the names of items of its lists, as {@link #extras} call them, by list} */
  public Map<String, List<String>> itemNames() {
    return Map.of(
        "yarns",
        yarns.stream().map(Yarn::code).toList(),
        "pieces",
        pieces.stream().map(note -> String.join(",", note.at())).toList(),
        "pile",
        Extras.distinct(
            pile.stream()
                .map(entry -> entry.kind().word() + " " + String.join(",", entry.rounds()))
                .toList()));
  }
}
