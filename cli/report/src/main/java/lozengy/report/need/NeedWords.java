package lozengy.report.need;

import static lozengy.report.TextTable.NONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import lozengy.model.arrangement.Diary;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.blanket.Words;
import lozengy.model.colour.Tone;
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

  private static final int WIDEST_NAME = 30;

  private NeedWords() {}

  /** An arrangement's needs, yarn by yarn. */
  public static List<String> ofYarns(
      Blanket blanket, Sequences sequences, Diary diary, List<YarnNeed> needs) {
    List<String> lines = new ArrayList<>();
    lines.add(
        PlainText.oneLine(blanket.brief().title()) + ": yarn needed, with joining and edging");
    lines.add("");
    lines.addAll(StitchWords.lines(blanket));
    lines.addAll(new YarnLines(blanket, needs).lines());
    lines.add("");
    lines.add(yarnVerdict(blanket, needs));
    lines.addAll(HandWords.lines(blanket, needs));
    lines.addAll(HandWords.counted(blanket, sequences, diary));
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
      lines.addAll(heldTable(blanket, held));
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

  /** A row for each yarn of which something is settled before all is planned. */
  private static List<String> heldTable(Blanket blanket, List<YarnNeed> held) {
    TextTable table = new TextTable(1, WIDEST_NAME);
    table.row("joining, edging, locks", "needed", "in balls", "at hand");
    for (YarnNeed need : held) {
      table.row(
          Words.yarn(blanket, need.yarn()),
          metres(need.work().toWorkMillimetres()),
          need.ballsNeeded().isPresent() ? Long.toString(need.ballsNeeded().getAsLong()) : NONE,
          blanket.yarn(need.yarn()).gone()
              ? YarnLine.GONE
              : metres(need.work().atHandMillimetres()));
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

  private static String metres(long millimetres) {
    return String.format(java.util.Locale.ROOT, "%.1f m", millimetres / 1000.0);
  }

  private static String tones(Set<Tone> tones) {
    return tones.size() == Tone.values().length
        ? "dark, mid or light"
        : tones.stream().map(Tone::word).collect(Collectors.joining(" or "));
  }
}
