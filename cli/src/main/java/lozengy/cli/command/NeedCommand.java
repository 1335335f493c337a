package lozengy.cli.command;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import lozengy.cli.file.Inputs;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Terminal;
import lozengy.model.arrangement.Diary;
import lozengy.model.arrangement.Documents.ArrangementDocument;
import lozengy.model.arrangement.Documents.Document;
import lozengy.model.blanket.Blanket;
import lozengy.model.blanket.Sequences;
import lozengy.model.yarn.ToneNeeds;
import lozengy.model.yarn.YarnNeed;
import lozengy.report.Json;
import lozengy.report.need.NeedJson;
import lozengy.report.need.NeedWords;
import lozengy.solver.explain.conflict.ExplainOptions;
import lozengy.solver.explain.remedy.Buying;
import lozengy.solver.surplus.Surplus;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Says how much yarn is needed, and how many balls to buy. */
@Command(
    description = {
      "Says how much yarn is needed, and how many balls to buy.",
      "",
      "For an arrangement: exactly, shade by shade. For a brief, which leaves the shades open: shade"
          + " by shade as it asks for shares, by the tones that its rounds may take, and what to buy"
          + " so that an arrangement fits.",
      "Yarns that cost something say so in the brief: price: 6.50 EUR. A brief may leave out what is"
          + " at hand; then see 'lozengy pack'."
    },
    footer = {
      "",
      "Examples:",
      "  lozengy need throw.yaml                  before planning",
      "  lozengy need throw.arrangement.json      after it"
    })
final class NeedCommand implements Callable<Integer> {

  private static final long SEED = 1;

  private final Terminal terminal;

  @Mixin private FileArgument file;
  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  NeedCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    Document document = Inputs.readWithoutStock(file.source(), terminal);
    Blanket blanket = Inputs.blanket(document);
    KeepBack.expectSome(blanket.brief(), file.source());
    if (document instanceof ArrangementDocument answer) {
      Sequences sequences = answer.arrangement().sequences();
      Diary diary = answer.arrangement().diary();
      List<YarnNeed> needs = YarnNeed.of(blanket, sequences);
      print(
          () -> NeedJson.ofYarns(blanket, sequences, diary, needs),
          () -> NeedWords.ofYarns(blanket, sequences, diary, needs));
    } else {
      // what stays out of the pile makes no difference to what is still to be worked
      Blanket laid = Surplus.settled(blanket);
      ToneNeeds needs = ToneNeeds.of(laid);
      Optional<Buying> buying =
          needs.atHand()
              ? Optional.of(
                  Buying.of(laid, ExplainOptions.of(SEED, terminal.stopSignal().listen())))
              : Optional.empty();
      print(
          () -> NeedJson.ofTones(laid, needs, buying),
          () -> NeedWords.ofTones(laid, needs, buying));
    }
    return ExitCode.DONE.code();
  }

  private void print(Supplier<Map<String, Object>> object, Supplier<List<String>> lines) {
    if (json.wanted()) {
      terminal.out().println(Json.result("need-result", object.get()));
    } else {
      lines.get().forEach(terminal.out()::println);
    }
  }
}
