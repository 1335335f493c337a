package lozengy.cli.command;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import lozengy.cli.file.Target;
import lozengy.cli.process.ExitCode;
import lozengy.cli.process.Refusal;
import lozengy.cli.process.Terminal;
import lozengy.model.brief.Brief;
import lozengy.model.input.MistakeCode;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Prints a JSON Schema. */
@Command(
    description = {
      "Prints the JSON Schema (2020-12) of a format, or without NAME what formats there are.",
      "",
      "A schema's $id is urn:lozengy:NAME:1. Some refer to others by it: arrangement to brief,"
          + " solve-result and batch-result to arrangement, batch-line to both.",
    },
    footer = {"", "Examples:", "  lozengy schema", "  lozengy schema brief -o brief.schema.json"})
final class SchemaCommand implements Callable<Integer> {

  private static final String MODEL = "/lozengy/model/";
  private static final String COMMANDS = "/lozengy/cli/";

  /** Formats of files. */
  static final List<String> FILES = List.of("brief", "arrangement");

  /** Formats of what commands read and print beside them. */
  static final List<String> RESULTS =
      List.of(
          "batch-line",
          "batch-result",
          "card",
          "check-result",
          "compare-result",
          "error",
          "explanation",
          "gallery-result",
          "mark-result",
          "need-result",
          "next-result",
          "pack-result",
          "pack-sizes-result",
          "report-result",
          "sizes-result",
          "solve-result",
          "substitute-result");

  private final Terminal terminal;

  @Parameters(paramLabel = "NAME", arity = "0..1", description = "The format, such as brief.")
  private String name;

  @Mixin private OutputOptions output;
  @Mixin private JsonOption json;
  @Mixin private HelpOption help;

  SchemaCommand(Terminal terminal) {
    this.terminal = terminal;
  }

  @Override
  public Integer call() {
    byte[] text = name == null ? names() : schema(name);
    Target target = output.targetOr(Target::standardOutput);
    target.expect();
    target.write(terminal, text);
    return ExitCode.DONE.code();
  }

  private static byte[] names() {
    return (String.join("\n", all()) + "\n").getBytes(StandardCharsets.UTF_8);
  }

  private static List<String> all() {
    return Stream.concat(FILES.stream(), RESULTS.stream()).toList();
  }

  private static byte[] schema(String name) {
    if (!all().contains(name)) {
      throw Refusal.of(
          name,
          MistakeCode.UNKNOWN_WORD.about(name, all()),
          "There is no format of this name",
          "'lozengy schema' lists them");
    }
    String file = (FILES.contains(name) ? MODEL : COMMANDS) + name + "-1.schema.json";
    Class<?> beside = FILES.contains(name) ? Brief.class : SchemaCommand.class;
    try (InputStream in = beside.getResourceAsStream(file)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
