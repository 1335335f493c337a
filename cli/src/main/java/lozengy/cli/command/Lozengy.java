package lozengy.cli.command;

import java.util.concurrent.Callable;
import lozengy.cli.ExitCode;
import lozengy.cli.Terminal;
import lozengy.solver.Version;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.IVersionProvider;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The program itself: without a command it says what the commands are. */
@Command(
    name = "lozengy",
    mixinStandardHelpOptions = true,
    versionProvider = Lozengy.Versions.class,
    synopsisSubcommandLabel = "COMMAND",
    description = "Plans the colours of blankets joined from many small worked motifs.",
    descriptionHeading = "%n",
    optionListHeading = "%nOptions:%n",
    commandListHeading = "%nCommands:%n",
    footer = {
      "",
      "Examples:",
      "  lozengy new -o throw.yaml                 write a brief to start from",
      "  lozengy solve throw.yaml                  plan it",
      "  lozengy check throw.arrangement.json      check the plan from scratch",
      "  lozengy mark throw.arrangement.json --made row1    what is worked stays as it is",
      "",
      "'lozengy COMMAND --help' tells more about a command.",
      "",
      "Exit codes: 0 done; 1 a fault of the program; 2 the input or the call is wrong;",
      "3 proved that no arrangement fits; 4 stopped before one was found;",
      "5 'check' found faults."
    })
public final class Lozengy implements Callable<Integer> {

  private static final int HELP_COLUMNS = 92;

  private final Terminal terminal;
  @Spec private CommandSpec spec;

  private Lozengy(Terminal terminal) {
    this.terminal = terminal;
  }

  /**
   * The program's command line, with all commands.
   *
   * @param terminal where commands read and print
   * @param solving what solves
   */
  public static CommandLine commandLine(Terminal terminal, Solving solving) {
    CommandLine commandLine = new CommandLine(new Lozengy(terminal));
    commandLine.addSubcommand(new NewCommand(terminal));
    commandLine.addSubcommand(new SolveCommand(terminal, solving));
    commandLine.addSubcommand(new MarkCommand(terminal));
    commandLine.addSubcommand(new CheckCommand(terminal));
    commandLine.addSubcommand(new CompareCommand(terminal));
    commandLine.addSubcommand(new ReportCommand(terminal));
    commandLine.addSubcommand(new NeedCommand(terminal));
    commandLine.addSubcommand(new ExplainCommand(terminal));
    commandLine.addSubcommand(new BatchCommand(terminal, solving));
    Converters.register(commandLine);
    commandLine.getSubcommands().values().forEach(Lozengy::layOutHelp);
    return commandLine.setUsageHelpWidth(HELP_COLUMNS);
  }

  private static void layOutHelp(CommandLine command) {
    command.setUsageHelpWidth(HELP_COLUMNS);
    command.getCommandSpec().usageMessage().parameterListHeading("%n").optionListHeading("%n");
  }

  /** Without a command: the help, as a mistake. */
  @Override
  public Integer call() {
    spec.commandLine().usage(terminal.err());
    return ExitCode.WRONG_INPUT.code();
  }

  /** Reads the version from the build. */
  static final class Versions implements IVersionProvider {
    @Override
    public String[] getVersion() {
      return new String[] {"lozengy " + Version.text()};
    }
  }
}
