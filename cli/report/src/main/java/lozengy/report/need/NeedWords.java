package lozengy.report.need;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.colour.Tone;
import lozengy.model.yarn.HandRange;
import lozengy.model.yarn.Purchase;
import lozengy.model.yarn.ToneDemand;
import lozengy.model.yarn.ToneNeeds;
import lozengy.model.yarn.ToneShortage;
import lozengy.model.yarn.UncutRounds;
import lozengy.model.yarn.YarnNeed;
import lozengy.report.Figures;
import lozengy.report.PlainText;
import lozengy.report.TextTable;
import lozengy.report.TimeWords;
import lozengy.report.YarnLine;
import lozengy.solver.explain.remedy.Buying;

/** Tells needs of yarn in lines for a person. */
public final class NeedWords {

  private static final String NONE = "-";
  private static final int WIDEST_NAME = 30;

  private NeedWords() {}

  /** An arrangement's needs, yarn by yarn. */
  public static List<String> ofYarns(Blanket blanket, Sequences sequences, List<YarnNeed> needs) {
    List<String> lines = new ArrayList<>();
    lines.add(
        PlainText.oneLine(blanket.brief().title()) + ": yarn needed, with joining and edging");
    lines.add("");
    lines.addAll(StitchWords.lines(blanket));
    lines.addAll(yarnTable(blanket, needs, "yarn", true));
    lines.add("");
    lines.add(yarnVerdict(blanket, needs));
    lines.addAll(HandWords.lines(blanket, needs));
    TimeWords.of(blanket, sequences).ifPresent(lines::add);
    lines.addAll(StitchWords.uncut(blanket, UncutRounds.savedMillimetres(blanket, sequences)));
    return lines;
  }

  /**
   * A brief's needs: by shade as it asks for shares, and by tone as far as yarns are open.
   *
   * @param buying what to buy; empty where nothing at all is at hand
   */
  public static List<String> ofTones(Blanket blanket, ToneNeeds needs, Optional<Buying> buying) {
    List<String> lines = new ArrayList<>();
    lines.add(PlainText.oneLine(blanket.brief().title()) + ": yarn needed, before it is planned");
    lines.add("");
    lines.addAll(StitchWords.lines(blanket));
    lines.addAll(ShadeLines.of(blanket).lines());
    lines.add("");
    if (buying.isEmpty()) {
      lines.add(
          "Nothing is at hand yet. 'lozengy pack' finds the fewest balls: shares that bend a little"
              + " waste fewer.");
      return lines;
    }
    lines.addAll(ofTones(blanket, needs, buying.get()));
    return lines;
  }

  private static List<String> ofTones(Blanket blanket, ToneNeeds needs, Buying buying) {
    List<String> lines = new ArrayList<>();
    TextTable table = new TextTable(1, WIDEST_NAME);
    table.row("rounds still open", "rounds", "needed", "for them");
    for (ToneDemand demand : needs.demands()) {
      table.row(
          tones(demand.tones()),
          Long.toString(demand.rounds()),
          metres(demand.leastMillimetres()),
          metres(demand.usableMillimetres()));
    }
    lines.addAll(table.lines());
    List<YarnNeed> held = needs.held().stream().filter(n -> n.neededMillimetres() > 0).toList();
    if (!held.isEmpty()) {
      lines.add("");
      lines.addAll(yarnTable(blanket, held, "joining, edging, locks", false));
    }
    lines.add("");
    if (buying instanceof Buying.Nothing) {
      lines.add("Enough: an arrangement that keeps all rules has been found with it.");
      return lines;
    }
    if (!needs.shortages().isEmpty()) {
      lines.add("Not enough: " + metres(needs.missingMillimetres()) + " are missing in all");
      needs.shortages().forEach(shortage -> lines.add(words(shortage, needs.shortages())));
    }
    if (held.stream().anyMatch(each -> each.purchase().isPresent())) {
      lines.add(yarnVerdict(blanket, held));
    }
    lines.addAll(verdict(blanket, needs, buying));
    return lines;
  }

  private static List<String> verdict(Blanket blanket, ToneNeeds needs, Buying buying) {
    if (buying instanceof Buying.NoHelp) {
      return List.of(
          "However much is bought, nothing fits, proved: 'lozengy explain' says what else is in the"
              + " way.");
    }
    if (buying instanceof Buying.Amounts buys) {
      List<String> lines = new ArrayList<>();
      lines.add(
          "To buy, so that an arrangement fits"
              + (buys.fewest() ? "; no fewer balls do, proved:" : ":"));
      for (Buying.Amount each : buys.amounts()) {
        String metres = metres(each.millimetres());
        String amount =
            blanket.yarn(each.yarn()).ball().isPresent()
                ? Figures.count(each.balls(), "ball") + " (" + metres + ")"
                : metres;
        lines.add("  " + amount + " of " + Words.yarn(blanket, each.yarn()));
      }
      if (buys.amounts().size() > 1) {
        lines.add("  " + total(blanket, buys) + " in all");
      }
      return lines;
    }
    return List.of(
        (needs.enough() ? "Enough as far as totals go; whether" : "Whether")
            + " all rules can be kept was not settled: 'lozengy explain' looks longer.");
  }

  private static String total(Blanket blanket, Buying.Amounts buys) {
    long millimetres = buys.amounts().stream().mapToLong(Buying.Amount::millimetres).sum();
    boolean inBalls =
        buys.amounts().stream().allMatch(each -> blanket.yarn(each.yarn()).ball().isPresent());
    int balls = buys.amounts().stream().mapToInt(Buying.Amount::balls).sum();
    return inBalls
        ? Figures.count(balls, "ball") + " (" + metres(millimetres) + ")"
        : metres(millimetres);
  }

  /**
   * A row for each yarn.
   *
   * @param purchases whether to tell what to buy of each by itself
   */
  private static List<String> yarnTable(
      Blanket blanket, List<YarnNeed> needs, String what, boolean purchases) {
    TextTable table = new TextTable(1, WIDEST_NAME);
    Optional<HandRange> range = HandRange.of(blanket.brief());
    boolean worked = needs.stream().anyMatch(need -> need.work().workedMillimetres() > 0);
    List<String> head = new ArrayList<>(List.of(what));
    if (worked) {
      head.add("worked");
    }
    head.add(worked ? "to work" : "needed");
    if (range.isPresent()) {
      head.add("from, to");
    }
    head.addAll(List.of("in balls", "at hand"));
    if (purchases) {
      head.add("to buy");
    }
    table.row(head.toArray(String[]::new));
    for (YarnNeed need : needs) {
      List<String> row = new ArrayList<>(List.of(Words.yarn(blanket, need.yarn())));
      if (worked) {
        row.add(metres(need.work().workedMillimetres()));
      }
      row.add(metres(need.work().toWorkMillimetres()));
      range.ifPresent(hand -> row.add(HandWords.range(hand, need.work().toWorkMillimetres())));
      row.add(count(need.ballsNeeded()));
      row.add(
          blanket.yarn(need.yarn()).gone()
              ? YarnLine.GONE
              : metres(need.work().atHandMillimetres()));
      if (purchases) {
        row.add(need.purchase().map(NeedWords::amount).orElse(NONE));
      }
      table.row(row.toArray(String[]::new));
    }
    return table.lines();
  }

  private static String yarnVerdict(Blanket blanket, List<YarnNeed> needs) {
    List<String> lacking =
        needs.stream()
            .filter(each -> !each.lasts())
            .map(each -> Words.yarn(blanket, each.yarn()))
            .toList();
    double keepBack = blanket.brief().rules().keepBackPercent();
    String kept = keepBack > 0 ? " with " + Words.number(keepBack) + " % kept back" : "";
    return lacking.isEmpty()
        ? "Every yarn lasts" + kept + "."
        : "Not enough" + kept + ": " + Words.list(lacking) + ".";
  }

  private static String words(ToneShortage shortage, List<ToneShortage> all) {
    boolean within =
        all.stream()
            .anyMatch(each -> each != shortage && shortage.tones().containsAll(each.tones()));
    return "  "
        + metres(shortage.missingMillimetres())
        + (within ? " more: the " : ": the ")
        + tones(shortage.tones())
        + " yarns have "
        + metres(shortage.usableMillimetres())
        + " for rounds that need "
        + metres(shortage.neededMillimetres());
  }

  private static String amount(Purchase purchase) {
    String metres = metres(purchase.toldMillimetres());
    if (purchase.balls().isEmpty()) {
      return metres;
    }
    long balls = purchase.balls().getAsLong();
    return metres + " = " + Figures.count(balls, "ball");
  }

  private static String count(OptionalLong count) {
    return count.isPresent() ? Long.toString(count.getAsLong()) : NONE;
  }

  private static String metres(long millimetres) {
    return String.format(java.util.Locale.ROOT, "%.1f m", millimetres / 1000.0);
  }

  private static String tones(Set<Tone> tones) {
    return tones.size() == Tone.values().length
        ? "dark, mid or light"
        : tones.stream().map(Tone::word).collect(Collectors.joining(" or "));
  }
}
