package lozengy.cli.command;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Terminal;
import lozengy.solver.Solving;
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
      "5 'check' found faults; 6 'batch' was stopped before its last line."
    })
public final class Lozengy implements Callable<Integer> {

  private static final int HELP_COLUMNS = 92;

  /** What options need beside their descriptions. */
  private static final int LEAST_HELP_COLUMNS = 55;

  private static final String[] VERSION_ALONE = {"--version"};

  private final Terminal terminal;
  @Spec private CommandSpec spec;

  private Lozengy(Terminal terminal) {
    this.terminal = terminal;
  }

  /**
   * The program's command line, with the commands that the words of a call can mean: the one that
   * they begin with, none for the version alone, and otherwise all. To describe a command takes
   * longer than to run a short one.
   *
   * @param terminal where commands read and print
   * @param solving what solves
   * @param words the words of the call
   */
  public static CommandLine commandLine(Terminal terminal, Solving solving, String... words) {
    CommandLine commandLine = new CommandLine(new Lozengy(terminal));
    Map<String, Supplier<Object>> commands = commands(terminal, solving);
    if (words.length > 0 && commands.containsKey(words[0])) {
      commands.keySet().retainAll(Set.of(words[0]));
    } else if (Arrays.equals(words, VERSION_ALONE)) {
      commands.clear();
    }
    commands.forEach((name, command) -> commandLine.addSubcommand(name, command.get()));
    Converters.register(commandLine);
    commandLine.setExpandAtFiles(false); // a file may be called so, and a word is what it says
    int columns =
        terminal.screen().watched()
            ? Math.max(LEAST_HELP_COLUMNS, Math.min(HELP_COLUMNS, terminal.screen().columns()))
            : HELP_COLUMNS;
    commandLine.getSubcommands().values().forEach(each -> layOutHelp(each, columns));
    return commandLine.setUsageHelpWidth(columns);
  }

  /** All commands by name, in the order of the help. */
  private static Map<String, Supplier<Object>> commands(Terminal terminal, Solving solving) {
    Map<String, Supplier<Object>> commands = new LinkedHashMap<>();
    commands.put("new", () -> new NewCommand(terminal));
    commands.put("solve", () -> new SolveCommand(terminal, solving));
    commands.put("gallery", () -> new GalleryCommand(terminal, solving));
    commands.put("next", () -> new NextCommand(terminal));
    commands.put("mark", () -> new MarkCommand(terminal));
    commands.put("check", () -> new CheckCommand(terminal));
    commands.put("compare", () -> new CompareCommand(terminal));
    commands.put("report", () -> new ReportCommand(terminal));
    commands.put("need", () -> new NeedCommand(terminal));
    commands.put("sizes", () -> new SizesCommand(terminal));
    commands.put("pack", () -> new PackCommand(terminal));
    commands.put("substitute", () -> new SubstituteCommand(terminal));
    commands.put("explain", () -> new ExplainCommand(terminal));
    commands.put("batch", () -> new BatchCommand(terminal, solving));
    commands.put("schema", () -> new SchemaCommand(terminal));
    commands.put(
        "completion", () -> new CompletionCommand(terminal, () -> commandLine(terminal, solving)));
    return commands;
  }

  private static void layOutHelp(CommandLine command, int columns) {
    command.setUsageHelpWidth(columns);
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
