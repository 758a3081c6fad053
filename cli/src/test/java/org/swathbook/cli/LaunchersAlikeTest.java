package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Where one of the two launchers is tried the other cannot be, so they are held to each other. */
class LaunchersAlikeTest {
  private static final Path CLI = Path.of(System.getProperty("basedir", "")).toAbsolutePath();

  private static final Pattern FLAG = Pattern.compile("(?<![\\w-])-[XD][\\w:+=.-]+");

  private static final Pattern SAID = Pattern.compile("^ *say (['\"])(.*)\\1\\r?$");

  private static final Pattern SAID_ON_WINDOWS =
      Pattern.compile("^>&2 echo swathbook: ((.*))\\r?$");

  private static final Pattern VALUE = Pattern.compile("\\$[a-z_]+|\"%[A-Z_]+%\"|%[A-Z_]+%");

  @Test
  void theyHandJavaTheSameFlags() throws Exception {
    Set<String> flags = flags("swathbook");
    // Only Linux has such pages, and only a Java for Linux knows the word.
    assertThat(flags.remove("-XX:+UseTransparentHugePages")).isTrue();
    assertThat(flags("swathbook.cmd")).isNotEmpty().isEqualTo(flags);
  }

  @Test
  void theySayTheSame() throws Exception {
    Set<String> said = said("swathbook", SAID);
    assertThat(said).contains("building failed; the end of VALUE:").hasSizeGreaterThan(8);
    assertThat(said("swathbook.cmd", SAID_ON_WINDOWS)).isEqualTo(said);
  }

  /** The shell of Windows misses labels of a file with other ends of lines. */
  @Test
  void theOneForWindowsIsOutWithItsEndsOfLines() throws Exception {
    String text = Files.readString(CLI.resolve("swathbook.cmd"));
    assertThat(text.replace("\r\n", "")).isNotEmpty().doesNotContain("\r", "\n");
  }

  private static Set<String> flags(String launcher) throws Exception {
    return FLAG.matcher(Files.readString(CLI.resolve(launcher)))
        .results()
        .map(m -> m.group())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> said(String launcher, Pattern pattern) throws Exception {
    return Files.readAllLines(CLI.resolve(launcher)).stream()
        .map(pattern::matcher)
        .filter(m -> m.find())
        .map(m -> VALUE.matcher(m.group(2)).replaceAll("VALUE"))
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
