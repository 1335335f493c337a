package lozengy.cli;

import java.util.List;
import java.util.stream.Collectors;
import lozengy.cli.process.Refusal;
import lozengy.model.input.MistakeCode;
import picocli.CommandLine;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Puts what is wrong with a call in the program's own words. */
final class CallMistakes {

  private CallMistakes() {}

  static Refusal refusal(ParameterException failure) {
    String help = "See '" + failure.getCommandLine().getCommandSpec().qualifiedName() + " --help'";
    if (failure instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched, help);
    }
    if (failure instanceof MissingParameterException missing) {
      List<String> unmatched = failure.getCommandLine().getUnmatchedArguments();
      // what is there and wrong says more than what is missing because of it
      return unmatched.isEmpty()
          ? Refusal.of("", MistakeCode.WRONG_CALL.about(), missing(missing.getMissing()), help)
          : unmatched(new UnmatchedArgumentException(failure.getCommandLine(), unmatched), help);
    }
    return Refusal.of("", MistakeCode.WRONG_CALL.about(), failure.getMessage(), help);
  }

  private static Refusal unmatched(UnmatchedArgumentException failure, String help) {
    String first = failure.getUnmatched().get(0);
    List<String> near = failure.getSuggestions();
    String remedy =
        near.isEmpty()
            ? help
            : "Perhaps "
                + near.stream().map(each -> "'" + each + "'").collect(Collectors.joining(" or "))
                + " is meant. "
                + help;
    CommandLine commandLine = failure.getCommandLine();
    boolean root = commandLine.getParent() == null;
    String found;
    if (failure.isUnknownOption()) {
      found = "There is no option '" + first + "'";
    } else if (root) {
      found = "There is no command '" + first + "'";
    } else {
      found = "'" + first + "' is one argument too many";
    }
    return Refusal.of("", MistakeCode.WRONG_CALL.about(first), found, remedy);
  }

  private static String missing(List<ArgSpec> missing) {
    return missing.stream()
            .map(each -> each.isOption() ? "option " + each.paramLabel() : each.paramLabel())
            .collect(Collectors.joining(" and "))
        + " is missing";
  }
}
