package lozengy.report.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Words;
import lozengy.model.brief.Look;
import lozengy.model.wording.WhereWords;
import lozengy.solver.explain.argument.CountReason;
import lozengy.solver.explain.argument.PileReason;
import lozengy.solver.explain.argument.Reason;
import lozengy.solver.explain.argument.RoundReason;
import lozengy.solver.explain.argument.SeamReason;
import lozengy.solver.explain.argument.StockReason;

/** Reasons why nothing fits, each in a sentence that alone is a proof. */
final class ReasonWords implements Reason.Cases<String> {

  private final Blanket blanket;

  ReasonWords(Blanket blanket) {
    this.blanket = blanket;
  }

  @Override
  public String allKeptBack(StockReason.AllKeptBack reason) {
    return "%s %% of each yarn is kept back, so that nothing is left to work with"
        .formatted(Words.number(reason.percent()));
  }

  @Override
  public String noSuchTone(RoundReason.NoSuchTone reason) {
    return "%s of %s must be %s, and no yarn is"
        .formatted(
            Phrases.capital(Words.rounds(reason.rounds())),
            Phrases.pieces(blanket, reason.pieces()),
            Phrases.tones(reason.tones()));
  }

  @Override
  public String lockBarred(RoundReason.LockBarred reason) {
    String breach =
        switch (reason.bar()) {
          case TONE -> "must be " + Phrases.tones(reason.tones());
          case LOOK_BORDER ->
              "the look gives it " + Words.yarn(blanket, reason.given().orElseThrow());
          case BAN ->
              blanket.yarn(reason.yarn()).gone()
                  ? "that yarn is gone"
                  : "that yarn is banned from the piece";
          case ZONE -> "its zone takes other yarns alone";
          case COUNT -> "the look lets no such round have it";
        };
    return "%s is locked to %s, but %s"
        .formatted(
            round(reason.piece(), reason.round()), Words.yarn(blanket, reason.yarn()), breach);
  }

  @Override
  public String nothingLeft(RoundReason.NothingLeft reason) {
    String outside =
        switch (reason.bar()) {
          case COUNT -> "kept out by the look's counts, or by zones and bans";
          case ZONE -> "kept out by its zones and bans";
          default ->
              reason.yarns().stream().allMatch(yarn -> blanket.yarn(yarn).gone())
                  ? "gone"
                  : reason.yarns().stream().anyMatch(yarn -> blanket.yarn(yarn).gone())
                      ? "gone or banned from the piece"
                      : "banned from the piece";
        };
    return "%s must be %s, but %s %s %s"
        .formatted(
            round(reason.piece(), reason.round()),
            Phrases.tones(reason.tones()),
            Phrases.yarns(blanket, reason.yarns()),
            reason.yarns().size() == 1 ? "is" : "are",
            outside);
  }

  private String round(int piece, int round) {
    return Phrases.capital(Phrases.round(blanket, piece, round));
  }

  @Override
  public String roundsAlike(RoundReason.RoundsAlike reason) {
    if (reason.apart()) {
      return "%s of %s can only be %s, which are to be kept apart"
          .formatted(
              Phrases.capital(Words.rounds(reason.rounds())),
              Phrases.pieces(blanket, reason.pieces()),
              Phrases.yarns(blanket, reason.yarns()));
    }
    return "%s of %s must differ (%s), and can only be %s"
        .formatted(
            Phrases.capital(Words.rounds(reason.rounds())),
            Phrases.pieces(blanket, reason.pieces()),
            reason.within().word(),
            Phrases.yarns(blanket, reason.yarns()));
  }

  @Override
  public String seamStuck(SeamReason.SeamStuck reason) {
    boolean one = reason.seams() == 1;
    String where =
        one
            ? "%s are joined along a side".formatted(Words.pieces(blanket, reason.pieces()))
            : "%s joined along %d sides"
                .formatted(Phrases.groupedAre(blanket, reason.pieces()), reason.seams());
    SeamReason.Clash clash = reason.clash();
    boolean same = clash.first().equals(clash.second());
    String part = clash.part().word();
    String borders = one ? "their " + part + "s" : "the two " + part + "s at each";
    String border = "the " + part + (one ? " of both" : " of all");
    if (same && clash.first().size() == 1) {
      return "%s, and %s can only be %s"
          .formatted(where, border, Phrases.yarns(blanket, clash.first()));
    }
    String first = Phrases.either(blanket, clash.first());
    return "%s, and %s can only be %s, %s"
        .formatted(
            where,
            same ? border : borders,
            same ? first : first + " and " + Phrases.either(blanket, clash.second()),
            why(clash));
  }

  /** What keeps different yarns from each other: too like in colour, or to be kept apart. */
  private String why(SeamReason.Clash clash) {
    String alike =
        "less than %s apart in colour"
            .formatted(Words.number(blanket.brief().rules().minContrast()));
    String apart = "which are to be kept apart";
    if (clash.alike() && clash.apart()) {
      return alike + " or " + apart;
    }
    return clash.alike() ? alike : clash.apart() ? apart : "";
  }

  @Override
  public String imagesJoined(SeamReason.ImagesJoined reason) {
    return ("%s are joined along a side across the middle and are each other's images (%s),"
            + " so both would have the same %s")
        .formatted(
            Words.pieces(blanket, reason.pieces()), reason.symmetry().word(), reason.part().word());
  }

  @Override
  public String imagesShareNone(RoundReason.ImagesShareNone reason) {
    List<Integer> pieces = reason.pieces();
    return "%s are each other's images (%s), and no yarn may be %s of %s"
        .formatted(
            Words.pieces(blanket, pieces),
            reason.symmetry().word(),
            Words.round(blanket, pieces.get(0), reason.round()),
            pieces.size() == 2 ? "both" : "them all");
  }

  @Override
  public String yarnOverdrawn(StockReason.YarnOverdrawn reason) {
    List<String> takers = new ArrayList<>();
    if (reason.fixed() > 0) {
      takers.add(Phrases.fixedUse(blanket, reason.yarn()) + " " + Words.metres(reason.fixed()));
    }
    if (reason.inRounds() > 0) {
      takers.add(
          "%d %s no other yarn%s take %s%s"
              .formatted(
                  reason.roundCount(),
                  reason.roundCount() == 1 ? "round that may have" : "rounds that may have",
                  blanket.brief().joiningInBorders().isPresent()
                      ? ", the borders' halves of seams included,"
                      : "",
                  Words.metres(reason.inRounds()),
                  reason.settled() > 0
                      ? ", "
                          + Words.metres(reason.settled())
                          + " of it before the yarn was "
                          + (blanket.yarn(reason.yarn()).gone() ? "gone" : "counted")
                      : ""));
    }
    return "%s: %s; %s are there to use: %s short"
        .formatted(
            Words.yarn(blanket, reason.yarn()),
            Words.list(takers),
            Words.metres(reason.usable()),
            Words.metres(reason.missing()));
  }

  @Override
  public String pileOverdrawn(PileReason.PileOverdrawn reason) {
    List<String> uses = new ArrayList<>();
    uses.add("the pile's pieces hold " + Words.metres(reason.onPile()));
    if (reason.seams() > 0) {
      uses.add("joining takes at least " + Words.metres(reason.seams()) + " for their borders");
    }
    if (reason.placed() > 0) {
      uses.add("other finished pieces hold " + Words.metres(reason.placed()));
    }
    if (reason.fixed() > 0) {
      uses.add(Phrases.fixedUse(blanket, reason.yarn()) + " " + Words.metres(reason.fixed()));
    }
    return ("%s: %s; %s are there, what finished pieces hold included: %s short%s, unless they were"
            + " counted since (counted in a brief, mark --left in an arrangement)")
        .formatted(
            Words.yarn(blanket, reason.yarn()),
            Words.list(uses),
            Words.metres(reason.usable()),
            Words.metres(reason.missing()),
            reason.beyond() > 0 ? " beyond what the pile holds already" : "");
  }

  @Override
  public String roundTooLong(StockReason.RoundTooLong reason) {
    boolean one = reason.yarns().size() == 1;
    String yarns = Phrases.yarns(blanket, reason.yarns());
    return "%s of %s takes at least %s, and %s %s so much left"
        .formatted(
            Phrases.capital(Words.rounds(reason.rounds())),
            Phrases.pieces(blanket, reason.pieces()),
            Words.metres(reason.least()),
            one ? yarns : "none of " + yarns,
            one ? "has not" : "has");
  }

  @Override
  public String tooFewSequences(CountReason.TooFewSequences reason) {
    String asked =
        reason.allowed() == 1
            ? "may share no sequence"
            : "may share a sequence at most " + reason.allowed() + " at a time";
    return "%s %s%s, and their rounds leave room for only %d of them"
        .formatted(
            Phrases.pieces(blanket, reason.pieces()),
            asked,
            reason.worked() ? ", worked pieces counted" : "",
            reason.room());
  }

  @Override
  public String countTooFew(CountReason.CountTooFew reason) {
    String why =
        switch (reason.lack()) {
          case ROUNDS -> "only %d can".formatted(reason.can());
          case SEAMS -> "only %d can, for borders on a seam differ".formatted(reason.can());
          case STOCK -> {
            String uses = String.join(" and ", Phrases.uses(blanket, reason.yarns()));
            yield "its %s%s suffice for only %d"
                .formatted(
                    Words.metres(reason.left()),
                    uses.isEmpty() ? "" : " after " + uses,
                    reason.can());
          }
        };
    return are("At least " + reason.count().atLeast(), reason.count(), reason.yarn())
        + "and "
        + why;
  }

  @Override
  public String countTooMany(CountReason.CountTooMany reason) {
    int worked = reason.certain();
    String why =
        reason.ofPile() == 0
            ? "%d can have nothing else there".formatted(worked)
            : "%sat least %s of the pile with it must lie there"
                .formatted(
                    worked == 0 ? "" : worked + " worked already, and ",
                    lozengy.model.input.Words.count(reason.ofPile(), "piece"));
    int most = reason.count().atMost().orElseThrow();
    return are("At most " + most, reason.count(), reason.yarn()) + "and " + why;
  }

  @Override
  public String countOfImages(CountReason.CountOfImages reason) {
    String many =
        reason.least() == reason.most()
            ? "Just " + reason.least()
            : "From " + reason.least() + " to " + reason.most();
    return are(many, reason.count(), reason.yarn())
        + "and pieces that are each other's images come together: "
        + reason.below()
        + (reason.above().isPresent() ? " or " + reason.above().getAsInt() : "")
        + " can";
  }

  private String are(String many, Look.Count count, int yarn) {
    return "%s of %s are to have %s in %s, "
        .formatted(
            many,
            WhereWords.at(count.where()),
            Words.yarn(blanket, yarn),
            WhereWords.someRound(count.where()));
  }

  @Override
  public String countsTogether(CountReason.CountsTogether reason) {
    List<String> each =
        IntStream.range(0, reason.yarns().size())
            .mapToObj(
                i -> reason.least().get(i) + " with " + Words.yarn(blanket, reason.yarns().get(i)))
            .toList();
    return "Of %d (%s) at least %s are asked for in %s: %d too many"
        .formatted(
            reason.size(),
            WhereWords.at(reason.where()),
            Words.list(each),
            WhereWords.someRound(reason.where()),
            reason.tooMany());
  }

  @Override
  public String yarnShort(StockReason.YarnShort reason) {
    String what = Phrases.capital(Phrases.rounds(blanket, reason.served()));
    if (reason.amounts().isEmpty()) {
      return what + ": " + inParts(reason);
    }
    StockReason.YarnShort.Amounts amounts = reason.amounts().get();
    List<String> servers = new ArrayList<>();
    if (!reason.whole().isEmpty()) {
      String most = reason.inWholeRounds() ? "in whole rounds at most " : "";
      String all = !reason.inWholeRounds() && reason.whole().size() > 1 ? " in all" : "";
      servers.add(
          "%s (%s%s%s%s)"
              .formatted(
                  Phrases.yarnsOrTones(blanket, reason.whole()),
                  most,
                  Words.metres(amounts.held()),
                  all,
                  after(reason)));
    }
    if (!reason.bordersOnly().isEmpty()) {
      servers.add(
          "%s (at most %s as borders, for borders on a seam differ)"
              .formatted(
                  Phrases.yarnsOrTones(blanket, reason.bordersOnly()),
                  Words.metres(amounts.asBorders())));
    }
    return "%s: %s needed; only %s can serve: %s short"
        .formatted(
            what,
            Words.metres(amounts.needed()),
            Words.list(servers),
            Words.metres(amounts.missing()));
  }

  private String inParts(StockReason.YarnShort reason) {
    boolean one = reason.yarns().size() == 1;
    String only = "only %s can serve".formatted(Phrases.yarnsOrTones(blanket, reason.yarns()));
    if (Double.isInfinite(reason.percentNeeded())) {
      return "%s, and nothing is left of %s%s".formatted(only, one ? "it" : "them", after(reason));
    }
    // rounded so that it never seems to fit
    double percent = Math.ceil(reason.percentNeeded() * 100) / 100;
    return "%s, and at least %s %% of what %s would be needed%s"
        .formatted(
            only,
            String.format(Locale.ROOT, "%.2f", percent),
            one ? "it can give" : "they can give",
            after(reason));
  }

  private String after(StockReason.YarnShort reason) {
    List<Integer> yarns = reason.yarns();
    List<String> less = new ArrayList<>(Phrases.uses(blanket, yarns));
    if (yarns.stream()
        .anyMatch(y -> blanket.yarns().usableMillimetres(y) < blanket.yarn(y).stockMillimetres())) {
      less.add("what is kept back");
    }
    return less.isEmpty() ? "" : " after " + Words.list(less);
  }

  @Override
  public String placesUnfilled(PileReason.PlacesUnfilled reason) {
    return ("%s can only take finished pieces, for lock, tones, bans and zones leave a round no"
            + " yarn, and the pile has too few that fit")
        .formatted(Words.pieces(blanket, reason.pieces()));
  }

  @Override
  public String pileKeptOut(PileReason.PileKeptOut reason) {
    List<String> sorts =
        reason.stacks().stream().map(stack -> Phrases.stack(blanket, stack)).toList();
    String where =
        reason.pieces().isEmpty()
            ? "nowhere: locks keep them out of all places that are not worked yet"
            : "only at %s: locks keep them out of other places"
                .formatted(Words.pieces(blanket, reason.pieces()));
    return "The pile's %s can lie %s".formatted(Words.list(sorts), where);
  }

  @Override
  public String pileBordersMeet(PileReason.PileBordersMeet reason) {
    String yarns = Phrases.yarns(blanket, reason.yarns());
    String border =
        reason.yarns().size() == 1
            ? "the border " + yarns
            : "borders that look alike, %s (min-contrast %s)"
                .formatted(yarns, Words.number(blanket.brief().rules().minContrast()));
    return "%s of the pile %s %s, and at most %d can lie so that no two%s share a seam: %d too many"
        .formatted(
            Phrases.counts(reason.byKind()),
            reason.count() == 1 ? "has" : "have",
            border,
            reason.places(),
            reason.worked() ? ", worked pieces with such a border included," : "",
            reason.count() - reason.places());
  }
}
