package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.catalog.file.CatalogLoader;

/** The table of questions: its commands run and say what it says, and its tests are there. */
class QuestionsTest {
  private static final Path TABLE = ProgramProcess.CLI.resolve("QUESTIONS.md");
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  private static final CatalogLoader CATALOGS = new CatalogLoader();

  /** What goes without a choice of effort. */
  private static final Set<String> NO_EFFORT = Set.of("--queue", "--compare", "--keep");

  @TempDir static Path dir;
  private static Path book;

  private record Row(
      String question, String answered, String command, String says, String missing, String test) {
    static Row of(String line) {
      String[] cells = line.substring(1).split("\\|", -1);
      return new Row(
          cells[0].strip(),
          cells[1].strip(),
          bare(cells[2]),
          cells[3].strip(),
          cells[4].strip(),
          bare(cells[5]));
    }

    private static String bare(String cell) {
      return cell.strip().replaceAll("^`|`$", "");
    }
  }

  /** Fields that the commands name, with what the demo book has of them. */
  @BeforeAll
  static void makeTheBook() throws IOException {
    book = SmallBook.of(dir.resolve("book"), "ND-1", "ND-2", "ND-4", "OB-4");
    SmallBook.copyProgram(book, "nd-1-two-layers.yaml");
    for (String folder : List.of("mixes", "observations")) {
      Files.createDirectories(book.resolve(folder));
      try (Stream<Path> files = Files.list(DEMO.resolve(folder))) {
        for (Path f : files.toList()) {
          Files.copy(f, book.resolve(folder).resolve(f.getFileName().toString()));
        }
      }
    }
    Files.writeString(book.resolve("watch.csv"), "field,weed,site,since,reason\n");
  }

  private static List<Row> rows() throws IOException {
    return Files.readAllLines(TABLE).stream()
        .filter(l -> l.startsWith("| ") && !l.startsWith("| question "))
        .map(Row::of)
        .toList();
  }

  @Test
  void everyAnswerSaysWhatItIs() throws IOException {
    List<Row> rows = rows();
    assertThat(rows).hasSizeGreaterThan(70);
    assertThat(rows).extracting(Row::question).doesNotHaveDuplicates();
    for (Row r : rows) {
      assertThat(r.answered()).as(r.question()).isIn("yes", "in part", "no");
      assertThat(r.command().isEmpty()).as(r.question()).isEqualTo(r.answered().equals("no"));
      assertThat(r.missing().isEmpty()).as(r.question()).isEqualTo(r.answered().equals("yes"));
      assertThat(r.test().isEmpty()).as(r.question()).isEqualTo(r.command().isEmpty());
    }
    assertThat(Files.readString(TABLE))
        .contains(
            count(rows, "yes")
                + " of "
                + rows.size()
                + " are answered, "
                + count(rows, "in part")
                + " in part, "
                + count(rows, "no")
                + " not.");
  }

  private static long count(List<Row> rows, String answered) {
    return rows.stream().filter(r -> r.answered().equals(answered)).count();
  }

  /** Each command once, whatever the number of questions that it answers. */
  @Test
  void everyCommandRunsAndSaysIt() throws IOException {
    Map<String, String> printed = new LinkedHashMap<>();
    List<String> wrong = new ArrayList<>();
    for (Row r : rows()) {
      if (!r.command().isEmpty()) {
        String out = printed.computeIfAbsent(r.command(), QuestionsTest::run);
        if (!out.contains(r.says())) {
          wrong.add(
              r.question() + ": '" + r.command() + "' does not say '" + r.says() + "'\n" + out);
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static String run(String command) {
    List<String> args = new ArrayList<>();
    Matcher m = WORD.matcher(command);
    while (m.find()) {
      String word = m.group(1) != null ? m.group(1) : m.group(2);
      args.add(word.equals("FILE") ? dir.resolve("file.html").toString() : word);
    }
    boolean bare = args.get(0).equals("rules");
    if (!bare) {
      args.addAll(List.of("--book", book.toString()));
    }
    boolean dated = args.contains("--today") || bare || args.contains("show");
    if (!dated) {
      args.addAll(List.of("--today", "2027-03-01"));
    }
    boolean searched = args.get(0).equals("plan");
    if (searched && args.stream().noneMatch(NO_EFFORT::contains)) {
      // What a plan says of a question, not how good its programs are.
      args.addAll(List.of("--effort", "quick"));
    }
    Called called = Called.sharing(CATALOGS, args.toArray(String[]::new));
    assertThat(called.code()).as(command + "\n" + called.err()).isIn(0, 1);
    return called.out();
  }

  @Test
  void everyTestIsThere() throws IOException, ClassNotFoundException {
    for (Row r : rows()) {
      if (!r.test().isEmpty()) {
        String[] parts = r.test().split("#", -1);
        Class<?> test = Class.forName("org.swathbook.cli." + parts[0]);
        assertThat(Arrays.stream(test.getDeclaredMethods()).map(m -> m.getName()))
            .as(r.test())
            .contains(parts[1]);
      }
    }
  }
}
