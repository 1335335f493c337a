package lozengy.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher with a Java and a Maven that only note how they were called. */
class LauncherTest {

  private static final List<String> TOOLS =
      List.of(
          "sh",
          "readlink",
          "find",
          "ls",
          "mkdir",
          "rm",
          "cat",
          "touch",
          "mv",
          "sleep",
          "rmdir",
          "cksum",
          "sort");

  private static final String JAVA =
      """
      case "$*" in
        *lozengy.cli.Main*) for each in "$@"; do echo "[$each]"; done ;;
        *) echo "$*" >>"$NOTES/java" ;;
      esac
      for each in "$@"; do
        case $each in
          -XX:DumpLoadedClassList=*) : >"${each#*=}" ;;
          -XX:SharedArchiveFile=*.draft*|-XX:SharedArchiveFile=*draft.*) : >"${each#*=}" ;;
        esac
      done
      """;

  private static final String MAVEN =
      """
      echo "$*" >>"$NOTES/mvn"
      sleep 1
      mkdir -p cli/target
      : >cli/target/lozengy.jar
      """;

  @TempDir Path temporary;
  private Path project;
  private Path tools;
  private Path jdk;
  private Path notes;
  private Map<String, String> environment = Map.of();

  @BeforeEach
  void layOut() throws IOException {
    project = Files.createDirectories(temporary.resolve("my project"));
    tools = Files.createDirectories(temporary.resolve("tools"));
    jdk = Files.createDirectories(temporary.resolve("jdk"));
    notes = Files.createDirectories(temporary.resolve("notes"));
    Files.copy(
        Path.of("..", "lozengy"), project.resolve("lozengy"), StandardCopyOption.COPY_ATTRIBUTES);
    old(Files.createFile(project.resolve("pom.xml")));
    for (String module : List.of("model", "solver", "cli/report", "cli")) {
      Path sources = Files.createDirectories(project.resolve(module).resolve("src/main"));
      old(Files.createFile(project.resolve(module).resolve("pom.xml")));
      old(Files.createFile(sources.resolve("Source.java")));
      old(sources);
    }
    for (String tool : TOOLS) {
      Files.createSymbolicLink(tools.resolve(tool), find(tool));
    }
    script(tools.resolve("mvn"), MAVEN);
    script(Files.createDirectories(jdk.resolve("bin")).resolve("java"), JAVA);
    script(jdk.resolve("bin/javac"), "");
    Files.writeString(jdk.resolve("release"), "IMPLEMENTOR=\"Nobody\"\nJAVA_VERSION=\"17.0.99\"\n");
  }

  @Test
  void buildsOnceAndHandsArgumentsOnAsTheyAre() throws Exception {
    Path link = temporary.resolve("a link");
    Files.createSymbolicLink(link, project.resolve("lozengy"));
    Launched first = launch(link, "check", "my file.json", "", "-o", "it's");
    assertEquals(0, first.code, first.err);
    assertEquals("", first.err);
    String[] after = first.out.split("\\[lozengy.cli.Main]\n");
    assertEquals("[check]\n[my file.json]\n[]\n[-o]\n[it's]\n", after[1]);
    assertTrue(after[0].contains("[" + project.toRealPath().resolve("cli/target/lozengy.jar")));
    launch(link, "--version");
    assertEquals(1, noted("mvn").size(), noted("mvn").toString());
    // One run to learn the classes and one to archive them.
    assertEquals(2, noted("java").size(), noted("java").toString());
    assertTrue(after[0].contains("-XX:SharedArchiveFile="), after[0]);
  }

  @Test
  void buildsAgainWhereASourceHasChanged() throws Exception {
    assertEquals(0, launch(project.resolve("lozengy")).code);
    Files.writeString(project.resolve("model/src/main/Source.java"), "// changed\n");
    touch(project.resolve("model/src/main/Source.java"));
    assertEquals(0, launch(project.resolve("lozengy")).code);
    assertEquals(2, noted("mvn").size());
    assertEquals(4, noted("java").size());
  }

  @Test
  void aSourceThatIsOnlyNewerIsNotBuiltAgain() throws Exception {
    assertEquals(0, launch(project.resolve("lozengy")).code);
    touch(project.resolve("model/src/main/Source.java"));
    assertEquals(0, launch(project.resolve("lozengy")).code);
    assertEquals(1, noted("mvn").size());
    Path more = Files.createFile(project.resolve("model/src/main/More.java"));
    touch(more);
    assertEquals(0, launch(project.resolve("lozengy")).code);
    assertEquals(2, noted("mvn").size());
  }

  @Test
  void runsWhatIsThereWhereThatIsAskedFor() throws Exception {
    environment = Map.of("LOZENGY_AS_BUILT", "1");
    Launched none = launch(project.resolve("lozengy"));
    assertEquals(2, none.code);
    assertTrue(none.err.contains("Leave LOZENGY_AS_BUILT out to build it"), none.err);
    environment = Map.of();
    assertEquals(0, launch(project.resolve("lozengy")).code);
    Files.writeString(project.resolve("model/src/main/Source.java"), "// changed\n");
    touch(project.resolve("model/src/main/Source.java"));
    environment = Map.of("LOZENGY_AS_BUILT", "1");
    assertEquals(0, launch(project.resolve("lozengy")).code);
    assertEquals(1, noted("mvn").size());
  }

  @Test
  void archivesAnewForAnotherJava() throws Exception {
    assertEquals(0, launch(project.resolve("lozengy")).code);
    Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"21.0.1\"\n");
    assertEquals(0, launch(project.resolve("lozengy")).code);
    assertEquals(1, noted("mvn").size());
    assertEquals(4, noted("java").size());
  }

  @Test
  void launchesAtTheSameTimeBuildOnce() throws Exception {
    List<Process> processes = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      processes.add(start(project.resolve("lozengy"), "--version"));
    }
    for (Process process : processes) {
      assertEquals(0, finished(process).code);
    }
    assertEquals(1, noted("mvn").size(), noted("mvn").toString());
  }

  @Test
  void lockThatADeadLaunchLeftIsTakenOver() throws Exception {
    Path lock = Files.createDirectories(project.resolve("target/launcher/lock"));
    Process dead = new ProcessBuilder("sh", "-c", "true").start();
    dead.waitFor();
    Files.writeString(lock.resolve("owner"), dead.pid() + "\n");
    assertEquals(0, launch(project.resolve("lozengy")).code);
    assertTrue(Files.notExists(lock));
  }

  @Test
  void failedBuildIsShownAndLeavesNoJar() throws Exception {
    script(tools.resolve("mvn"), "echo 'cannot find symbol'\nexit 1\n");
    Launched launched = launch(project.resolve("lozengy"));
    assertEquals(1, launched.code);
    assertEquals("cannot find symbol\nlozengy: The build failed, see above\n", launched.err);
    assertTrue(Files.notExists(project.resolve("cli/target/lozengy.jar")));
    assertTrue(Files.notExists(project.resolve("target/launcher/lock")));
  }

  @Test
  void whatIsMissingIsSaidInOneLine() throws Exception {
    Files.delete(tools.resolve("mvn"));
    says("There is no Maven, which building needs. Install it (");
    Files.delete(jdk.resolve("bin/javac"));
    says("Java 17.0.99 has no compiler, which building needs. Install a JDK of version 17");
    Files.writeString(jdk.resolve("release"), "JAVA_VERSION=\"1.8.0_402\"\n");
    says("Java 1.8.0_402 is too old. Install a JDK of version 17");
    Files.delete(jdk.resolve("bin/java"));
    says("There is no Java. Install a JDK of version 17");
  }

  private void says(String words) throws Exception {
    Launched launched = launch(project.resolve("lozengy"));
    assertEquals(2, launched.code);
    assertEquals(1, launched.err.lines().count(), launched.err);
    assertTrue(launched.err.startsWith("lozengy: " + words), launched.err);
  }

  private record Launched(int code, String out, String err) {}

  private Launched launch(Path launcher, String... arguments) throws Exception {
    return finished(start(launcher, arguments));
  }

  private Process start(Path launcher, String... arguments) throws IOException {
    List<String> command = new ArrayList<>(List.of(launcher.toString()));
    command.addAll(List.of(arguments));
    ProcessBuilder builder = new ProcessBuilder(command).directory(temporary.toFile());
    Map<String, String> all = builder.environment();
    all.clear();
    all.put("PATH", tools.toString());
    all.put("JAVA_HOME", jdk.toString());
    all.put("NOTES", notes.toString());
    all.putAll(environment);
    return builder.start();
  }

  private static Launched finished(Process process) throws Exception {
    process.getOutputStream().close();
    String out = new String(process.getInputStream().readAllBytes());
    String err = new String(process.getErrorStream().readAllBytes());
    return new Launched(process.waitFor(), out, err);
  }

  private List<String> noted(String command) throws IOException {
    return Files.readAllLines(notes.resolve(command));
  }

  private static void script(Path file, String text) throws IOException {
    Files.writeString(file, "#!/bin/sh\n" + text);
    assertTrue(file.toFile().setExecutable(true));
  }

  private static Path find(String tool) {
    return Stream.of(System.getenv("PATH").split(File.pathSeparator))
        .map(folder -> Path.of(folder, tool))
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(() -> new AssertionError("no " + tool));
  }

  private static void old(Path file) throws IOException {
    Files.setLastModifiedTime(file, FileTime.from(Instant.parse("2020-01-01T00:00:00Z")));
  }

  private static void touch(Path file) throws IOException {
    Files.setLastModifiedTime(file, FileTime.from(Instant.now().plusSeconds(1)));
  }
}
