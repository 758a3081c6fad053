package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** Runs programs as a shell would, for the tests of the built jar and its launcher. */
final class ProgramProcess {
  static final Path CLI = Path.of(System.getProperty("basedir", "")).toAbsolutePath();
  static final Path LAUNCHER = CLI.resolve("swathbook");
  static final Path JAR = CLI.resolve("target/swathbook.jar");

  /** What a program left behind. */
  record Result(int code, String out, String err) {}

  private ProgramProcess() {}

  /**
   * @param in the working directory; the output passes through files there
   * @param environment what differs from the test's own
   */
  static Result run(Path in, Map<String, String> environment, List<String> command)
      throws IOException, InterruptedException {
    Path out = Files.createTempFile(in, "out", ".txt");
    Path err = Files.createTempFile(in, "err", ".txt");
    ProcessBuilder builder =
        new ProcessBuilder(command)
            .directory(in.toFile())
            .redirectOutput(out.toFile())
            .redirectError(err.toFile());
    builder.environment().putAll(environment);
    Process process = builder.start();
    process.getOutputStream().close();
    if (!process.waitFor(2, TimeUnit.MINUTES)) {
      process.destroyForcibly();
      throw new AssertionError("did not end within two minutes: " + command);
    }
    return new Result(
        process.exitValue(), Files.readString(out, UTF_8), Files.readString(err, UTF_8));
  }

  /** A call of the program by the classes under test, which stand on the path of this test. */
  static List<String> ofClasses(List<String> args) {
    List<String> command =
        new ArrayList<>(
            List.of(
                java(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-XX:-UsePerfData",
                "-cp",
                System.getProperty(
                    "surefire.test.class.path", System.getProperty("java.class.path")),
                Main.class.getName()));
    command.addAll(args);
    return command;
  }

  static String java() {
    return Path.of(System.getProperty("java.home"), "bin", "java").toString();
  }
}
