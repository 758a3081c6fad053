package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;
import static org.swathbook.cli.ProgramProcess.CLI;
import static org.swathbook.cli.ProgramProcess.JAR;
import static org.swathbook.cli.ProgramProcess.LAUNCHER;
import static org.swathbook.cli.ProgramProcess.java;
import static org.swathbook.cli.ProgramProcess.run;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.ProgramProcess.Result;
import org.swathbook.cli.terminal.ExitCode;

/** The jar as it was built and the shell script that starts it. */
class LauncherIT {
  private static final String VERSION =
      "swathbook " + System.getProperty("swathbook.version") + System.lineSeparator();

  @TempDir Path dir;

  /** JUnit warns of every link that leads out of the folder it deletes. */
  @AfterEach
  void removeLinks() throws Exception {
    try (Stream<Path> files = Files.walk(dir)) {
      for (Path link : files.filter(Files::isSymbolicLink).toList()) {
        Files.delete(link);
      }
    }
  }

  @Test
  void theJarRunsWithTheLibrariesBesideIt() throws Exception {
    Result result = run(dir, Map.of(), List.of(java(), "-jar", JAR.toString(), "--version"));
    assertThat(result).isEqualTo(new Result(0, VERSION, ""));
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void theLauncherRunsFromAnywhereThroughLinksWithSpaces() throws Exception {
    Path folder = Files.createDirectory(dir.resolve("a b"));
    Path first = Files.createSymbolicLink(folder.resolve("it's one"), LAUNCHER);
    Path second = Files.createSymbolicLink(dir.resolve("two"), dir.relativize(first));
    assertThat(launch(second.toString(), "--version")).isEqualTo(new Result(0, VERSION, ""));
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void theLauncherPassesWordsAndCodeOn() throws Exception {
    Result result = launch(LAUNCHER.toString(), "two words", "$HOME \"x\"");
    assertThat(result.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(result.out()).isEmpty();
    assertThat(result.err()).contains("'two words', '$HOME \"x\"'");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void theClassDataArchiveIsUsed() throws Exception {
    // Java 17 takes no classes from an archive of jars whose path has to be escaped in a URL.
    assumeThat(JAR.toUri().getRawPath()).isEqualTo(JAR.toString());
    launch(LAUNCHER.toString(), "--version");
    String archive = "-XX:SharedArchiveFile=" + CLI.resolve("target/swathbook.jsa");
    Result loaded = loading(List.of(archive), "--version");
    assertThat(loaded.out()).contains("org.swathbook.cli.Main source: shared objects file");
    if (Runtime.version().feature() == 17) {
      // Java 25 was seen to leave class files as old as these out of its archives.
      assertThat(loaded.out()).contains("picocli.CommandLine source: shared objects file");
    }
  }

  /** They are classes since the build: linking them would take an eighth of a cold start. */
  @Test
  void aCheckHasNoLambdaLeftToLink() throws Exception {
    String book = CLI.resolveSibling("demo-data").toString();
    List<String> quick = List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");
    Result loaded = loading(quick, "check", "nd-1-june", "--book", book, "--today", "2027-06-08");
    assertThat(loaded.out())
        .containsPattern("org\\.swathbook\\.check\\.\\w+\\$\\$Lambda\\d+ source:")
        .doesNotContainPattern("org\\.swathbook\\.[\\w.$]+\\$\\$Lambda[$/]");
  }

  /** A million rows have room at once; where room is counted when it is asked for, none is. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void anAuditStartsWhereMemoryIsScarce() throws Exception {
    String book = CLI.resolveSibling("demo-data").toString();
    Result result =
        launch(
            "/bin/sh",
            "-c",
            "ulimit -v 4000000; exec \"$0\" audit --book \"$1\" --today 2027-11-20",
            LAUNCHER.toString(),
            book);
    assertThat(result.code()).isEqualTo(ExitCode.DONE);
    assertThat(result.out()).startsWith("Swathbook");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aJavaThatIsTooOldIsNamed() throws Exception {
    Path java = Files.createDirectories(dir.resolve("old/bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\necho 'openjdk version \"11.0.2\" 2018-10-16' >&2\n");
    assertThat(java.toFile().setExecutable(true)).isTrue();
    Map<String, String> environment =
        Map.of(
            "JAVA_HOME", dir.resolve("old").toString(), "PATH", java.getParent() + ":" + tools());
    Result result = run(dir, environment, List.of(LAUNCHER.toString(), "--version"));
    assertThat(result)
        .isEqualTo(
            new Result(
                ExitCode.WRONG_INPUT,
                "",
                "swathbook: it needs Java 17 or later, by JAVA_HOME or on the PATH;"
                    + " JAVA_HOME holds 11.0.2; the PATH holds 11.0.2\n"));
  }

  /** A Java that does not start ends with the code that says that something is blocked. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aJavaThatDoesNotStartIsNoBlockedProgram() throws Exception {
    Map<String, String> environment =
        Map.of(
            "JAVA_HOME", System.getProperty("java.home"), "JAVA_TOOL_OPTIONS", "-XX:+UseNoSuchGC");
    Result result = run(dir, environment, List.of(LAUNCHER.toString(), "--version"));
    assertThat(result.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(result.out()).isEmpty();
    assertThat(result.err())
        .contains("Java does not start with what JAVA_TOOL_OPTIONS")
        .hasLineCount(1);
  }

  /** A Java that does nothing is enough for it. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aProgramOlderThanItsSourcesSaysSo() throws Exception {
    Path java = Files.createDirectories(dir.resolve("java/bin")).resolve("java");
    Files.writeString(java, "#!/bin/sh\n");
    assertThat(java.toFile().setExecutable(true)).isTrue();
    Files.writeString(dir.resolve("java/release"), "JAVA_VERSION=\"17.0.1\"\n");
    Path cli = Files.createDirectories(dir.resolve("repository/cli"));
    Path launcher = Files.copy(LAUNCHER, cli.resolve("swathbook"));
    assertThat(launcher.toFile().setExecutable(true)).isTrue();
    Files.createDirectories(cli.resolve("target/lib"));
    Path jar = Files.createFile(cli.resolve("target/swathbook.jar"));
    Files.setLastModifiedTime(jar, FileTime.from(Instant.parse("2027-03-01T10:00:00Z")));
    Path sources = Files.createDirectories(cli.resolve("src/main/java"));
    Path git = Files.createDirectories(cli.resolve("../.git/logs")).resolve("HEAD");
    Files.createFile(git);

    assertThat(warnings(launcher, git, "2027-03-01", sources, "2027-03-02")).isEmpty();
    assertThat(warnings(launcher, git, "2027-03-02", sources, "2027-03-01")).isEmpty();
    assertThat(warnings(launcher, git, "2027-03-02", sources, "2027-03-02"))
        .contains("it is older than its sources")
        .hasLineCount(1);
  }

  /** What the launcher says where git last moved on a day, and the sources were changed on one. */
  private String warnings(Path launcher, Path git, String moved, Path sources, String changed)
      throws Exception {
    Files.setLastModifiedTime(git, FileTime.from(Instant.parse(moved + "T00:00:00Z")));
    Files.setLastModifiedTime(sources, FileTime.from(Instant.parse(changed + "T00:00:00Z")));
    Map<String, String> environment = Map.of("JAVA_HOME", dir.resolve("java").toString());
    Result result = run(dir, environment, List.of(launcher.toString(), "--version"));
    assertThat(result.code()).isZero();
    return result.err();
  }

  /** Runs the jar by Java itself, which tells of every class that it loads. */
  private Result loading(List<String> flags, String... words) throws Exception {
    List<String> command = new ArrayList<>(List.of(java(), "-Xlog:class+load"));
    command.addAll(flags);
    command.addAll(List.of("-jar", JAR.toString()));
    command.addAll(List.of(words));
    return run(dir, Map.of(), command);
  }

  private Result launch(String... command) throws Exception {
    return run(dir, Map.of("JAVA_HOME", System.getProperty("java.home")), List.of(command));
  }

  /** A folder with the small tools that the launcher calls, and no Java. */
  private String tools() throws Exception {
    Path tools = Files.createDirectory(dir.resolve("tools"));
    for (String tool : List.of("sh", "dirname", "readlink", "sed", "head")) {
      for (String place : List.of("/bin", "/usr/bin")) {
        Path file = Path.of(place, tool);
        if (Files.exists(file) && !Files.exists(tools.resolve(tool))) {
          Files.createSymbolicLink(tools.resolve(tool), file);
        }
      }
    }
    return tools.toString();
  }
}
