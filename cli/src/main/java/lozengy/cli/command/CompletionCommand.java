package lozengy.cli.command;

import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Terminal;
import picocli.AutoComplete;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Prints what a shell needs to complete commands and options. */
@Command(
    description = {
      "Prints a script for bash and zsh that completes commands, options and their words.",
      "",
      "It completes the command 'lozengy', so the launcher must be on the PATH under that name.",
    },
    footer = {
      "",
      "Examples:",
      "  source <(lozengy completion)",
      "  lozengy completion > ~/.local/share/bash-completion/completions/lozengy"
    })
final class CompletionCommand implements Callable<Integer> {

  /** Where the script lists the values of an option, by the names of their constants. */
  private static final Pattern VALUES = Pattern.compile("_option_args=\\([^)]*\\)");

  private final Terminal terminal;
  private final Supplier<CommandLine> all;

  @Mixin private HelpOption help;

  /**
   * @param all makes the program's command line, with all commands
   */
  CompletionCommand(Terminal terminal, Supplier<CommandLine> all) {
    this.terminal = terminal;
    this.all = all;
  }

  @Override
  public Integer call() {
    String script = AutoComplete.bash("lozengy", all.get());
    terminal.out().print(VALUES.matcher(script).replaceAll(values -> words(values.group())));
    return ExitCode.DONE.code();
  }

  private static String words(String constants) {
    int list = constants.indexOf('(');
    return constants.substring(0, list)
        + constants.substring(list).toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
