package lozengy.cli.command;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.Callable;
import lozengy.cli.file.Target;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.brief.BriefWriter;
import lozengy.model.input.InputException;
import lozengy.model.input.SourceText;
import lozengy.model.layout.Setting;
import lozengy.model.reading.BriefReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Writes a brief to start from. */
@Command(
    description =
        "Writes a commented brief to start from, on standard output if no file is named; with"
            + " --json the same brief as JSON, which has no comments.",
    footer = {
      "",
      "Examples:",
      "  lozengy new -o throw.yaml",
      "  lozengy new --setting straight --across 10 --down 12 -o stash.yaml"
    })
final class NewCommand implements Callable<Integer> {

  private final Terminal terminal;

  @Option(
      names = "--setting",
      paramLabel = "SETTING",
      defaultValue = "on-point",
      description = "How the squares stand: on-point (the usual) or straight.")
  private Setting setting;

  @Option(
      names = "--across",
      paramLabel = "N",
      defaultValue = "6",
      description = "Squares in the first row; ${DEFAULT-VALUE} if not said.")
  private int across;

  @Option(
      names = "--down",
      paramLabel = "N",
      defaultValue = "8",
      description = "Rows; on point, rows of the outer squares; ${DEFAULT-VALUE} if not said.")
  private int down;

  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  NewCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    NewRequest request =
        new NewRequest(setting, across, down, output.targetOr(Target::standardOutput));
    request.target().expect();
    String text = brief(request);
    byte[] brief = (json.wanted() ? inJson(text) : text).getBytes(StandardCharsets.UTF_8);
    request.target().write(terminal, brief);
    request
        .target()
        .file()
        .ifPresent(
            file ->
                terminal
                    .out()
                    .println(
                        "Wrote " + file + ". Fill in what is yours, then: lozengy solve " + file));
    return ExitCode.DONE.code();
  }

  private static String inJson(String yaml) {
    return BriefWriter.text(BriefReader.read(SourceText.of("", yaml)));
  }

  private static String brief(NewRequest request) {
    try {
      return Starter.brief(request.setting(), request.across(), request.down());
    } catch (InputException e) {
      // what the reader of briefs finds wrong can only be the size asked for
      throw new Refusal("--across, --down", e.mistakes());
    }
  }
}
