package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The classes, files and commands that the guides name are there. */
class GuidesTest {
  private static final Path ROOT = ProgramProcess.CLI.resolve("..").normalize();
  private static final List<String> MODULES = List.of("catalog", "planner-core", "cli");
  private static final List<String> GUIDES =
      List.of(
          "README.md",
          "DEVELOPERS.md",
          "catalog/README.md",
          "planner-core/README.md",
          "planner-core/TRIALS.md",
          "cli/README.md",
          "cli/QUESTIONS.md",
          "cli/src/main/assembly/README.md",
          "demo-data/README.md");

  /** Code among the prose or in a block of its own. */
  private static final Pattern CODE = Pattern.compile("(`+)(.+?)\\1", Pattern.DOTALL);

  /** A name of two words or more, with its package or a part of it; one word may be any. */
  private static final Pattern CLASS =
      Pattern.compile("(?<![\\w/-])((?:[a-z]+\\.)*)((?:[A-Z][a-z0-9]+){2,})\\b");

  /** Of libraries. */
  private static final Set<String> OTHERS = Set.of("CommandSpec", "NullAway");

  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#:]+)(?:#[^)]*)?\\)");

  /** From the folder of all modules; what a build leaves and what holds a placeholder is not. */
  private static final Pattern FILE =
      Pattern.compile(
          "(?<![\\w/.-])(?:catalog|planner-core|cli|demo-data|\\.ci)/(?!target/)[\\w./-]+");

  private static final Pattern PLACEHOLDER = Pattern.compile("\\b(?:NAME|VERSION)\\b");

  private static final Pattern CALL =
      Pattern.compile("(?:cli|bin)/swathbook ((?:\\\\\n|[^`\n#)])+)");

  /** By the name of the class, the folder and name of its file. */
  private static final Map<String, List<String>> CLASSES = new HashMap<>();

  @BeforeAll
  static void findClasses() throws IOException {
    for (String module : MODULES) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src"))) {
        for (Path f : files.filter(p -> p.toString().endsWith(".java")).toList()) {
          String path = f.toString().replace(f.getFileSystem().getSeparator(), ".");
          int end = path.length() - ".java".length();
          int begin = path.lastIndexOf('.', end - 1) + 1;
          String name = path.substring(begin, end);
          String of = path.substring(0, begin);
          CLASSES.computeIfAbsent(name, n -> new ArrayList<>()).add(of);
        }
      }
    }
  }

  private static String text(String guide) throws IOException {
    return Files.readString(ROOT.resolve(guide), UTF_8);
  }

  private static List<MatchResult> all(Pattern pattern, String text) {
    return pattern.matcher(text).results().toList();
  }

  @Test
  void everyClassIsThere() throws IOException {
    List<String> gone = new ArrayList<>();
    int named = 0;
    for (String guide : GUIDES) {
      for (MatchResult code : all(CODE, text(guide))) {
        for (MatchResult name : all(CLASS, code.group(2))) {
          named++;
          boolean there =
              CLASSES.getOrDefault(name.group(2), List.of()).stream()
                  .anyMatch(of -> of.endsWith("." + name.group(1)));
          if (!there && !OTHERS.contains(name.group(2))) {
            gone.add(guide + ": " + name.group());
          }
        }
      }
    }
    assertThat(named).isGreaterThan(200);
    assertThat(gone).isEmpty();
  }

  @Test
  void everyFileIsThere() throws IOException {
    List<String> gone = new ArrayList<>();
    for (String guide : GUIDES) {
      for (MatchResult link : all(LINK, text(guide))) {
        if (Files.notExists(ROOT.resolve(guide).resolveSibling(link.group(1)))) {
          gone.add(guide + ": " + link.group(1));
        }
      }
    }
    for (String guide : List.of("README.md", "DEVELOPERS.md")) {
      for (MatchResult file : all(FILE, text(guide))) {
        if (!PLACEHOLDER.matcher(file.group()).find()
            && Files.notExists(ROOT.resolve(file.group()))) {
          gone.add(guide + ": " + file.group());
        }
      }
    }
    assertThat(gone).isEmpty();
  }

  @Test
  void everyCommandCanBeCalled() throws IOException {
    int shown = 0;
    for (String guide : GUIDES) {
      for (MatchResult call : all(CALL, text(guide))) {
        shown++;
        String line = call.group(1).replace("\\\n", " ");
        assertThatCode(() -> HelpTest.parse(line))
            .as("%s: %s", guide, line)
            .doesNotThrowAnyException();
      }
    }
    assertThat(shown).isGreaterThan(40);
  }
}
