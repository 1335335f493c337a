package lozengy.model.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.BlanketBuilder;
import lozengy.model.brief.Brief;
import lozengy.model.brief.Counted;
import lozengy.model.brief.Look;
import lozengy.model.brief.PieceState;
import lozengy.model.brief.PileEntry;
import lozengy.model.brief.Rules.WithinPiece;
import lozengy.model.brief.Symmetry;
import lozengy.model.brief.Where;
import lozengy.model.brief.Yarn;
import lozengy.model.brief.YarnAmount;
import lozengy.model.brief.YarnUse;
import lozengy.model.colour.Tone;
import lozengy.model.layout.PieceKind;
import org.junit.jupiter.api.Test;

/**
 * What each rule's lines come down to, reckoned by hand on rows of squares: rounds are written
 * {@code r1c2.1}, counted from the centre.
 */
class LinesTest {

  private static BlanketBuilder row(int squares, int rounds) {
    return yarns(BlanketBuilder.straight(squares, 1)).motif(PieceKind.SQUARE, rounds);
  }

  private static BlanketBuilder yarns(BlanketBuilder builder) {
    return builder
        .yarn("MUD", "Tidal mud", "#2c2a29", 3000, 1)
        .yarn("SND", "Sand", "#d9c9a3", 4000, 1)
        .yarn("BAR", "Barley", "#dccca0", 5000, 1);
  }

  private static Blanket with(BlanketBuilder builder, UnaryOperator<Brief> change) {
    return Blanket.ofUnjudged(change.apply(builder.build().brief()));
  }

  private static Blanket looking(BlanketBuilder builder, UnaryOperator<Look> change) {
    return with(builder, brief -> brief.withLook(change.apply(brief.look())));
  }

  private static void expect(Rule rule, Blanket blanket, String... told) {
    List<BriefLine> lines = rule.lines(blanket);
    assertEquals(
        String.join("\n", told),
        lines.stream().map(line -> told(blanket, line)).collect(Collectors.joining("\n")));
    lines.forEach(line -> assertEquals(rule.id(), line.rule()));
  }

  private static String told(Blanket blanket, BriefLine line) {
    return line.path()
        + " "
        + line.subject()
        + ": "
        + line.grounds().stream()
            .map(ground -> told(blanket, ground))
            .collect(Collectors.joining("; "));
  }

  private static String told(Blanket blanket, Ground ground) {
    if (ground instanceof Ground.May may) {
      return rounds(blanket, may.rounds())
          + (may.ofPlace() ? " hold" : " take")
          + codes(blanket, may.yarns().stream());
    }
    if (ground instanceof Ground.Clash clash) {
      return pairs(blanket, clash.pairs()) + " not" + barred(blanket, clash.barred());
    }
    if (ground instanceof Ground.Same same) {
      return pairs(blanket, same.pairs()) + " alike";
    }
    if (ground instanceof Ground.Count count) {
      return blanket.yarn(count.yarn()).code()
          + " in %d to %d of ".formatted(count.least(), count.most())
          + Arrays.stream(count.rounds())
              .map(rounds -> rounds(blanket, rounds))
              .collect(Collectors.joining(", "));
    }
    if (ground instanceof Ground.Stock stock) {
      return blanket.yarn(stock.yarn()).code() + " " + stock.millimetres();
    }
    if (ground instanceof Ground.Taken taken) {
      return blanket.yarn(taken.yarn()).code() + " less " + taken.millimetres();
    }
    if (ground instanceof Ground.Copies copies) {
      return "%s share %d at most"
          .formatted(
              IntStream.of(copies.pieces())
                  .mapToObj(piece -> blanket.place(piece).name())
                  .collect(Collectors.joining(" ")),
              copies.most());
    }
    return ground.toString();
  }

  private static String rounds(Blanket blanket, int... numbers) {
    return IntStream.of(numbers)
        .mapToObj(
            number ->
                blanket.place(blanket.index().piece(number)).name()
                    + "."
                    + (blanket.index().round(number) + 1))
        .collect(Collectors.joining(" "));
  }

  private static String pairs(Blanket blanket, RoundPairs pairs) {
    return IntStream.range(0, pairs.size())
        .mapToObj(i -> rounds(blanket, pairs.first()[i]) + "-" + rounds(blanket, pairs.second()[i]))
        .collect(Collectors.joining(" "));
  }

  private static String codes(Blanket blanket, IntStream yarns) {
    return yarns.mapToObj(yarn -> " " + blanket.yarn(yarn).code()).collect(Collectors.joining());
  }

  private static String barred(Blanket blanket, YarnPairs pairs) {
    return IntStream.range(0, pairs.yarns())
        .boxed()
        .flatMap(
            yarn ->
                IntStream.of(pairs.against(yarn))
                    .filter(other -> other >= yarn)
                    .mapToObj(
                        other -> codes(blanket, IntStream.of(yarn)) + "+" + code(blanket, other)))
        .collect(Collectors.joining());
  }

  private static String code(Blanket blanket, int yarn) {
    return blanket.yarn(yarn).code();
  }

  @Test
  void locks() {
    Blanket blanket =
        row(3, 2)
            .ban("r1c3", "MUD")
            .piece("r1c1", PieceState.PLANNED, null, "SND")
            .piece("r1c2", PieceState.MADE, "MUD", "BAR")
            .build();
    expect(
        new LocksRule(),
        blanket,
        "pieces[1] r1c1 Lock[piece=0, state=PLANNED, roundsWorked=0, rounds=[Held[round=1, yarn=1]]]:"
            + " r1c1.2 hold SND",
        "pieces[2] r1c2 Lock[piece=1, state=MADE, roundsWorked=2, rounds=[Held[round=0, yarn=0],"
            + " Held[round=1, yarn=2]]]: r1c2.1 hold MUD; r1c2.2 hold BAR");
    List<Boolean> worked =
        new LocksRule()
            .lines(blanket).stream().map(line -> ((Subject.Lock) line.subject()).worked()).toList();
    assertEquals(List.of(false, true), worked);
    Blanket begun = row(1, 3).begun("r1c1", 1, "MUD", "SND", null).build();
    assertEquals(
        false,
        ((Subject.Lock) new LocksRule().lines(begun).get(0).subject()).worked(),
        "the second round is only locked");
  }

  @Test
  void bansAndYarnsThatAreGone() {
    BlanketBuilder builder =
        row(3, 2)
            .ban("r1c1", "SND")
            .ban("all", "BAR")
            .ban("r1c3", "SND")
            .piece("r1c3", PieceState.MADE, "MUD", "MUD");
    String first =
        "pieces[0].not r1c1 Ban[at=r1c1, one=true, codes=[SND]]: r1c1.1 r1c1.2 take MUD BAR";
    String all =
        "pieces[1].not all Ban[at=all, one=false, codes=[BAR]]: r1c1.1 r1c1.2 r1c2.1 r1c2.2 take MUD"
            + " SND";
    expect(new BansRule(), builder.build(), first, all);
    expect(
        new BansRule(),
        with(builder, LinesTest::withoutMud),
        first,
        all,
        "yarns[0].gone Gone[yarn=0]: r1c1.1 r1c1.2 r1c2.1 r1c2.2 take SND BAR");
    expect(
        new BansRule(),
        with(row(1, 1).piece("r1c1", PieceState.MADE, "MUD"), LinesTest::withoutMud));
  }

  private static Brief withoutMud(Brief brief) {
    List<Yarn> yarns = brief.yarns();
    return brief.withYarns(List.of(yarns.get(0).withGone(true), yarns.get(1), yarns.get(2)));
  }

  @Test
  void tones() {
    BlanketBuilder builder =
        yarns(BlanketBuilder.filled(1, 1))
            .motif(
                PieceKind.SQUARE,
                BlanketBuilder.round(1, Tone.LIGHT),
                BlanketBuilder.round(1, Tone.values()))
            .motif(PieceKind.CORNER_TRIANGLE, BlanketBuilder.round(1, Tone.DARK))
            .piece("top-left", PieceState.MADE, "SND");
    expect(
        new TonesRule(),
        builder.build(),
        "motifs.square.rounds[0].tone Tone[kind=SQUARE, round=0, tones=[LIGHT], yarns=[1, 2]]:"
            + " r1c1.1 take SND BAR",
        "motifs.corner.rounds[0].tone Tone[kind=CORNER_TRIANGLE, round=0, tones=[DARK], yarns=[0]]: top-right.1 bottom-right.1 bottom-left.1 take MUD");
    expect(
        new TonesRule(),
        yarns(BlanketBuilder.straight(2, 1))
            .motif(
                PieceKind.SQUARE,
                BlanketBuilder.round(1, Tone.DARK),
                BlanketBuilder.round(1, Tone.DARK))
            .begun("r1c2", 1, "MUD", null)
            .build(),
        "motifs.square.rounds[0].tone Tone[kind=SQUARE, round=0, tones=[DARK], yarns=[0]]: r1c1.1"
            + " take MUD",
        "motifs.square.rounds[1].tone Tone[kind=SQUARE, round=1, tones=[DARK], yarns=[0]]: r1c1.2"
            + " r1c2.2 take MUD");
  }

  @Test
  void tonesOfAMotifWhosePiecesAreAllMadeAskNothing() {
    expect(
        new TonesRule(),
        yarns(BlanketBuilder.straight(1, 1))
            .motif(PieceKind.SQUARE, BlanketBuilder.round(1, Tone.DARK))
            .piece("r1c1", PieceState.MADE, "SND")
            .build());
  }

  @Test
  void zones() {
    Look.Zone border =
        new Look.Zone(new Where(List.of("all"), List.of(Where.BORDER)), List.of("MUD", "BAR"));
    Look.Zone any = new Look.Zone(Where.EVERYWHERE, List.of("MUD", "SND", "BAR"));
    Look.Zone made = new Look.Zone(new Where(List.of("r1c2"), List.of()), List.of("MUD"));
    expect(
        new ZonesRule(),
        looking(
            row(3, 2).piece("r1c2", PieceState.MADE, "MUD", "SND"),
            look -> look.withZones(List.of(any, made, border))),
        "look.zones[2] " + new Subject.Zone(border) + ": r1c1.2 r1c3.2 take MUD BAR");
  }

  @Test
  void givenBorders() {
    expect(
        new BordersRule(),
        looking(
            row(3, 2).piece("r1c3", PieceState.MADE, "MUD", "BAR"),
            look -> look.withBorders("MUD", "SND")),
        "look.borders GivenBorders[codes=[MUD, SND]]: r1c1.2 hold MUD; r1c2.2 hold SND");
    expect(new BordersRule(), row(3, 2).build());
  }

  @Test
  void images() {
    UnaryOperator<Look> mirrored = look -> look.withSymmetry(Symmetry.LEFT_RIGHT);
    BlanketBuilder five = yarns(BlanketBuilder.onPoint(2, 2)).motif(PieceKind.SQUARE, 2);
    expect(
        new SymmetryRule(),
        looking(five, mirrored),
        "look.symmetry Images[symmetry=LEFT_RIGHT]: r1c1.1-r1c2.1 r1c1.2-r1c2.2 r3c1.1-r3c2.1"
            + " r3c1.2-r3c2.2 alike");
    expect(
        new SymmetryRule(),
        looking(
            five.piece("r1c1", PieceState.MADE, "MUD", "SND")
                .piece("r1c2", PieceState.JOINED, "MUD", "SND"),
            mirrored),
        "look.symmetry Images[symmetry=LEFT_RIGHT]: r3c1.1-r3c2.1 r3c1.2-r3c2.2 alike");
    expect(new SymmetryRule(), looking(row(1, 2), mirrored));
    expect(new SymmetryRule(), five.build());
  }

  @Test
  void bordersAndCentresOnSeams() {
    BlanketBuilder three =
        row(3, 2)
            .piece("r1c1", PieceState.JOINED, "MUD", "SND")
            .piece("r1c2", PieceState.JOINED, "MUD", "SND");
    expect(
        new NeighbourBordersRule(),
        three.build(),
        "rules.neighbour-borders Differ[part=BORDERS]: r1c2.2-r1c3.2 not MUD+MUD SND+SND BAR+BAR");
    expect(
        new NeighbourBordersRule(),
        with(row(2, 1), brief -> brief.withRules(brief.rules().withMinContrast(2.5))),
        "rules.neighbour-borders Differ[part=BORDERS]: r1c1.1-r1c2.1 not MUD+MUD SND+SND BAR+BAR",
        "rules.min-contrast Contrast[least=2.5]: r1c1.1-r1c2.1 not MUD+MUD SND+SND SND+BAR"
            + " BAR+BAR");
    UnaryOperator<Brief> centres = brief -> brief.withRules(brief.rules().withCentresDiffer(true));
    expect(
        new NeighbourCentresRule(),
        with(three, centres),
        "rules.neighbour-centres Differ[part=CENTRES]: r1c2.1-r1c3.1 not MUD+MUD SND+SND BAR+BAR");
    expect(new NeighbourCentresRule(), three.build());
    expect(new NeighbourBordersRule(), row(1, 2).build());
    expect(new NeighbourCentresRule(), with(row(1, 2), centres));
  }

  @Test
  void yarnsApartAndLots() {
    List<Look.Pair> apart =
        List.of(
            new Look.Pair("MUD", "SND", Look.Meeting.SEAMS),
            new Look.Pair("BAR", "SND", Look.Meeting.BOTH),
            new Look.Pair("BAR", "MUD", Look.Meeting.ROUNDS));
    String within = "r1c1.1-r1c1.2 r1c2.1-r1c2.2";
    expect(
        new ApartRule(),
        looking(row(2, 2), look -> look.withApart(apart)),
        "look.apart[0] Apart[first=MUD, second=SND, on=SEAMS]: r1c1.2-r1c2.2 not MUD+SND",
        "look.apart[1] Apart[first=BAR, second=SND, on=BOTH]: r1c1.2-r1c2.2 not SND+BAR; "
            + within
            + " not SND+BAR",
        "look.apart[2] Apart[first=BAR, second=MUD, on=ROUNDS]: " + within + " not MUD+BAR");
    expect(new ApartRule(), row(2, 2).build());
    BlanketBuilder joined =
        row(3, 2)
            .piece("r1c1", PieceState.JOINED, "MUD", "SND")
            .piece("r1c2", PieceState.JOINED, "MUD", "SND");
    expect(
        new ApartRule(),
        looking(joined, look -> look.withApart(apart.subList(1, 2))),
        "look.apart[0] Apart[first=BAR, second=SND, on=BOTH]: r1c2.2-r1c3.2 not SND+BAR;"
            + " r1c3.1-r1c3.2 not SND+BAR");
    expect(
        new LotsRule(),
        with(joined, brief -> lots(brief, true)),
        "rules.lots Lots[shades=[[1, 2]]]: r1c2.2-r1c3.2 not SND+BAR; r1c3.1-r1c3.2 not SND+BAR");
    expect(new LotsRule(), with(joined, brief -> lots(brief, false)));
    expect(new LotsRule(), joined.build());
  }

  private static Brief lots(Brief brief, boolean apart) {
    List<Yarn> yarns = brief.yarns();
    Yarn lot = yarns.get(2).withLotOf(Optional.of("SND"));
    return brief
        .withYarns(List.of(yarns.get(0), yarns.get(1), lot))
        .withRules(brief.rules().withLotsApart(apart));
  }

  private static Blanket within(BlanketBuilder builder, WithinPiece asked) {
    return with(builder, brief -> brief.withRules(brief.rules().withWithinPiece(asked)));
  }

  @Test
  void roundsOfAPiece() {
    String same = " not MUD+MUD SND+SND BAR+BAR";
    expect(
        new WithinPieceRule(),
        within(row(1, 4), WithinPiece.ADJACENT_DIFFER),
        "rules.within-piece Within[within=ADJACENT_DIFFER]: r1c1.1-r1c1.2 r1c1.2-r1c1.3"
            + " r1c1.3-r1c1.4"
            + same);
    BlanketBuilder begun = row(2, 3).begun("r1c2", 2, "MUD", "MUD", null);
    expect(
        new WithinPieceRule(),
        within(begun, WithinPiece.ALL_DIFFER),
        "rules.within-piece Within[within=ALL_DIFFER]: r1c1.1-r1c1.2 r1c1.1-r1c1.3 r1c1.2-r1c1.3"
            + " r1c2.1-r1c2.3 r1c2.2-r1c2.3"
            + same);
    expect(new WithinPieceRule(), within(begun, WithinPiece.FREE));
  }

  @Test
  void copies() {
    UnaryOperator<Brief> two =
        brief -> brief.withRules(brief.rules().withCopies(OptionalInt.of(2)));
    expect(
        new CopiesRule(),
        with(row(3, 1), two),
        "rules.copies Copies[most=2, images=false]: r1c1 r1c2 r1c3 share 2 at most");
    expect(
        new CopiesRule(),
        with(row(3, 1), brief -> two.apply(brief.withLook(Look.NONE.withSymmetry(Symmetry.BOTH)))),
        "rules.copies Copies[most=2, images=true]: r1c1 r1c2 share 2 at most");
    expect(new CopiesRule(), with(row(2, 1), two));
    expect(new CopiesRule(), row(3, 1).build());
  }

  @Test
  void counts() {
    Look.Count both = new Look.Count("MUD", Where.BORDERS, 1, OptionalInt.of(2));
    Look.Count least =
        new Look.Count(
            "SND", new Where(List.of("r1c1", "r1c3"), List.of()), 1, OptionalInt.empty());
    Look.Count most = new Look.Count("BAR", Where.BORDERS, 0, OptionalInt.of(0));
    expect(
        new CountsRule(),
        looking(row(3, 2), look -> look.withCounts(List.of(both, least, most))),
        "look.counts[0].at-least "
            + new Subject.Count(both, true)
            + ": MUD in 1 to 3 of r1c1.2, r1c2.2, r1c3.2",
        "look.counts[0].at-most "
            + new Subject.Count(both, false)
            + ": MUD in 0 to 2 of r1c1.2, r1c2.2, r1c3.2",
        "look.counts[1].at-least "
            + new Subject.Count(least, true)
            + ": SND in 1 to 2 of r1c1.1 r1c1.2, r1c3.1 r1c3.2",
        "look.counts[2].at-most "
            + new Subject.Count(most, false)
            + ": BAR in 0 to 0 of r1c1.2, r1c2.2, r1c3.2");
  }

  private static PileEntry pile(int count, int out, String... codes) {
    return new PileEntry(PieceKind.SQUARE, List.of(codes), count, Set.of(), out);
  }

  @Test
  void stacksOfThePile() {
    List<PileEntry> pile = List.of(pile(1, 1, "BAR"), pile(2, 1, "MUD"), pile(1, 0, "SND"));
    expect(
        new PileRule(),
        with(row(3, 1), brief -> brief.withPile(pile)),
        "pile[1] OnPile[kind=SQUARE, count=1, yarns=[0], also=[]]: Lay[stack=0]",
        "pile[2] OnPile[kind=SQUARE, count=1, yarns=[1], also=[]]: Lay[stack=1]");
    expect(
        new PileRule(),
        with(row(3, 1), brief -> brief.withPile(List.of(pile.get(2), pile.get(1), pile.get(2)))),
        "pile[0] OnPile[kind=SQUARE, count=2, yarns=[1], also=[pile[2]]]: Lay[stack=0]",
        "pile[1] OnPile[kind=SQUARE, count=1, yarns=[0], also=[]]: Lay[stack=1]");
  }

  @Test
  void whatThereIsOfYarnsAndWhatIsTakenOffIt() {
    String mud = "yarns[0] Stock[yarn=0, millimetres=3000, settled=0]: MUD 3000";
    String sand = "yarns[1] Stock[yarn=1, millimetres=4000, settled=0]: SND 4000";
    String barley = "yarns[2] Stock[yarn=2, millimetres=5000, settled=0]: BAR 5000";
    expect(new YarnTotalsRule(), row(2, 1).build(), mud, sand, barley);
    // a seam of 10 cm at 3.5 m a metre, an outline of 60 cm at 2 m a metre, 5 % of each yarn
    expect(
        new YarnTotalsRule(),
        with(
            row(2, 1).joining("MUD", 3.5),
            brief ->
                brief
                    .withEdging(List.of(new YarnUse("SND", 2)))
                    .withRules(brief.rules().withKeepBack(5))),
        mud,
        sand,
        barley,
        "joining Joining[yarn=0, millimetres=350]: MUD less 350",
        "edging Edging[yarn=1, millimetres=1200]: SND less 1200",
        "rules.keep-back KeepBack[percent=5.0]: MUD less 150; SND less 200; BAR less 250");
  }

  /** Rounds take a metre: five pieces in MUD hold two more than its stock, one in SND stays out. */
  @Test
  void whatThePileHoldsOfYarns() {
    expect(
        new YarnTotalsRule(),
        with(row(6, 1), brief -> brief.withPile(List.of(pile(5, 0, "MUD"), pile(2, 1, "SND")))),
        "yarns[0] Stock[yarn=0, millimetres=3000, settled=0]: MUD 5000",
        "yarns[1] Stock[yarn=1, millimetres=4000, settled=0]: SND 3000",
        "yarns[2] Stock[yarn=2, millimetres=5000, settled=0]: BAR 5000");
  }

  /** Counted when the first piece was made, which holds a metre. */
  @Test
  void whatWasWorkedWhenAYarnWasCountedCountsForIt() {
    Counted counted =
        new Counted(new YarnAmount.Length(700), List.of("r1c1"), List.of(), List.of(), 0);
    Blanket blanket =
        with(
            row(2, 1).piece("r1c1", PieceState.MADE, "MUD"),
            brief ->
                brief.withYarns(List.of(brief.yarns().get(0).withCount(Optional.of(counted)))));
    expect(
        new YarnTotalsRule(),
        blanket,
        "yarns[0] Stock[yarn=0, millimetres=700, settled=1000]: MUD 1700");
  }

  @Test
  void linesComeInTheOrderInWhichAMakerGivesThemUpLast() {
    Blanket blanket =
        with(
            row(2, 2).piece("r1c1", PieceState.PLANNED, "MUD", null).ban("r1c2", "MUD"),
            brief -> brief.withRules(brief.rules().withWithinPiece(WithinPiece.ADJACENT_DIFFER)));
    assertEquals(
        List.of(
            RuleId.WITHIN_PIECE,
            RuleId.NEIGHBOUR_BORDERS,
            RuleId.LOCKS,
            RuleId.BANS,
            RuleId.YARN_TOTALS,
            RuleId.YARN_TOTALS,
            RuleId.YARN_TOTALS),
        RuleBook.lines(blanket).stream().map(BriefLine::rule).toList());
  }
}
