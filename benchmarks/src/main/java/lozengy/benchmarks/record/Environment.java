package lozengy.benchmarks.record;

import com.sun.management.OperatingSystemMXBean;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.stream.Stream;
import lozengy.solver.Version;

/** What a measurement was made with and on. */
public final class Environment {

  /** Names of what differs from run to run. */
  static final String COMMAND = "command";

  static final String DATE = "date";
  static final String LOAD = "load average at the start";

  private static final String UNKNOWN = "unknown";
  private static final double BYTES_PER_GIBIBYTE = 1L << 30;

  private Environment() {}

  /**
   * Describes this run.
   *
   * @param command the command as it was given
   * @return names and values, in the order in which they should be told
   */
  public static Map<String, String> describe(String command) {
    OperatingSystemMXBean machine =
        (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    Properties versions = versions();
    Map<String, String> all = new LinkedHashMap<>();
    all.put(COMMAND, command);
    all.put(DATE, Instant.now().truncatedTo(ChronoUnit.SECONDS).toString());
    all.put("lozengy", Version.text() + ", commit " + commit());
    all.put("or-tools", versions.getProperty("ortools"));
    all.put("choco", versions.getProperty("choco"));
    all.put("jmh", versions.getProperty("jmh"));
    all.put("java", property("java.vm.name") + " " + property("java.runtime.version"));
    all.put("os", property("os.name") + " " + property("os.version") + " " + property("os.arch"));
    all.put("processor", processor());
    all.put("cores", Integer.toString(Runtime.getRuntime().availableProcessors()));
    all.put("memory", gibibytes(machine.getTotalMemorySize()));
    all.put("heap limit", gibibytes(Runtime.getRuntime().maxMemory()));
    all.put(LOAD, String.format(Locale.ROOT, "%.2f", machine.getSystemLoadAverage()));
    return all;
  }

  private static Properties versions() {
    Properties versions = new Properties();
    try (InputStream in =
        Environment.class.getResourceAsStream("/lozengy/benchmarks/versions.properties")) {
      versions.load(in);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return versions;
  }

  private static String property(String name) {
    return System.getProperty(name, UNKNOWN);
  }

  private static String gibibytes(long bytes) {
    return String.format(Locale.ROOT, "%.1f GiB", bytes / BYTES_PER_GIBIBYTE);
  }

  private static String processor() {
    Path info = Path.of("/proc/cpuinfo");
    if (!Files.isReadable(info)) {
      return UNKNOWN;
    }
    try (Stream<String> lines = Files.lines(info)) {
      return lines
          .filter(line -> line.startsWith("model name"))
          .map(line -> line.substring(line.indexOf(':') + 1).strip())
          .findFirst()
          .orElse(UNKNOWN);
    } catch (IOException e) {
      return UNKNOWN;
    }
  }

  /** The commit of the sources, marked where files differ from it. */
  private static String commit() {
    String commit = git("rev-parse", "--short=12", "HEAD");
    return git("status", "--porcelain", "--untracked-files=no").isEmpty()
        ? commit
        : commit + " with changes";
  }

  private static String git(String... arguments) {
    String[] command = Stream.concat(Stream.of("git"), Stream.of(arguments)).toArray(String[]::new);
    try {
      Process git =
          new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
      String said = new String(git.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return git.waitFor() == 0 ? said.strip() : UNKNOWN;
    } catch (IOException e) {
      return UNKNOWN;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return UNKNOWN;
    }
  }
}
