package org.swathbook.architecture;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Factors from one unit to another stand in the package of measures and nowhere else. */
class ConversionFactorsTest {
  private static final Path ROOT =
      Path.of(System.getProperty("basedir", "")).toAbsolutePath().resolve("..").normalize();

  private static final Path MEASURES = ROOT.resolve("catalog/src/main/java/org/swathbook/measure");

  /** Inch, foot, acre, pound, gallon, mile and their parts, and the step of a Fahrenheit degree. */
  private static final Pattern FACTOR =
      Pattern.compile(
          "(?<![\\w.])(2\\.54|25\\.4|30\\.48|0\\.0254|0\\.3048|0\\.404\\d*|404[67](\\.\\d+)?"
              + "|43_?560|0\\.45359\\d*|453\\.59\\d*|28\\.349\\d*|3\\.785\\d*|29\\.573\\d*"
              + "|1\\.609\\d*|0\\.4470\\d*|1\\.1208\\d*|9\\.3539\\d*|2\\.471\\d*)(?![\\d])"
              + "|[59](\\.0)? / [59](\\.0)?(?![\\d.])");

  private static final Pattern WORDS =
      Pattern.compile("/\\*.*?\\*/|//[^\\n]*|\"(?:[^\"\\\\\\n]|\\\\.)*\"", Pattern.DOTALL);

  @Test
  void theyStandWithTheMeasuresAlone() throws IOException {
    List<String> elsewhere = new ArrayList<>();
    int there = 0;
    for (Path file : sources()) {
      boolean measure = file.startsWith(MEASURES);
      String code = WORDS.matcher(Files.readString(file, UTF_8)).replaceAll("");
      for (String line : code.lines().filter(l -> FACTOR.matcher(l).find()).toList()) {
        there += measure ? 1 : 0;
        if (!measure) {
          elsewhere.add(ROOT.relativize(file) + ": " + line.strip());
        }
      }
    }
    assertThat(there).isGreaterThan(5);
    assertThat(elsewhere).isEmpty();
  }

  private static List<Path> sources() throws IOException {
    List<Path> out = new ArrayList<>();
    for (String module : List.of("catalog", "planner-core", "cli")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/main/java"))) {
        files.filter(f -> f.toString().endsWith(".java")).forEach(out::add);
      }
    }
    return out;
  }
}
