package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/**
 * Names and notes that try to be more than text: a page has the same tags as with plain names of
 * the same length, and no cell of a table can run as a formula.
 */
class HostileNamesTest {
  private static final String TODAY = "2027-06-10";
  private static final Pattern TAG =
      Pattern.compile("<(/?[A-Za-z!][A-Za-z0-9-]*)((?:\"[^\"]*\"|'[^']*'|[^>\"'])*)>");
  private static final Pattern ATTRIBUTE =
      Pattern.compile("([A-Za-z-]+)\\s*=\\s*(\"[^\"]*\"|'[^']*')");

  /** Parts of names; commas, quotes and line ends are for the table that they stand in. */
  private static final List<String> PARTS =
      List.of(
          "<script>alert(1)</script>",
          "</title><script>",
          "\"><img src=x onerror=alert(1)>",
          "' onclick='alert(1)",
          "<!--",
          "]]>",
          "</style>",
          "&lt;b&gt;",
          "&",
          "&#60;",
          "\u202egnorw\u202c",
          "\u2067\u05d0\u05d1",
          "{{7*7}}",
          "${1+1}",
          "@template.x()",
          "\ud83c\udf3d",
          "javascript:alert(1)");

  private static final List<String> FORMULAS =
      List.of("=1+1", "+1+1", "-1+1", "@SUM(A1)", "=cmd|' /C calc'!A0", "=HYPERLINK(\"x\")");

  private static final List<List<String>> PAGES =
      List.of(
          List.of("plan", "ND-1", "--effort", "quick", "--html"),
          List.of("plan", "ND-1", "--effort", "quick", "--handout"),
          List.of("season", "nd-1-two-layers", "--html"),
          List.of("check", "nd-1-june", "--html"),
          List.of("check", "--program", "nd-1-two-layers", "--html"),
          List.of("load", "nd-1-june", "--html"),
          List.of("audit", "--html"),
          List.of("escapes", "nd-1-june", "--html"));

  @TempDir Path dir;
  private int books;

  private Path book(String name) throws IOException {
    Path book = SmallBook.of(dir.resolve("b" + books++), "ND-1", "ND-2");
    SmallBook.copyProgram(book, "nd-1-two-layers.yaml");
    for (String f : List.of("mixes/nd-1-june.yaml", "observations/nd-1-june.yaml")) {
      Files.createDirectories(book.resolve(f).getParent());
      Files.copy(ProgramProcess.CLI.resolve("../demo-data").resolve(f), book.resolve(f));
    }
    String cell = '"' + name.replace("\"", "\"\"") + '"';
    change(book, "fields.csv", "Ninebark Draw Farms", cell);
    change(book, "fields.csv", "Long Eighty", cell);
    change(book, "fields.csv", "Invented", cell);
    change(book, "applications.csv", "Applicator One", cell);
    change(book, "applications.csv", "Applicator Two", cell);
    change(book, "weeds.csv", "\"combine streaks along the west headland, 2026\"", cell);
    change(book, "weeds.csv", "\"site 9 suspected on the lower bench, sample sent\"", cell);
    change(
        book,
        "programs/nd-1-two-layers.yaml",
        "name: Two layers, two foliar sites",
        "name: '" + name.replace("'", "''") + "'");
    change(
        book,
        "book.yaml",
        "name: Three Forks Road Supply, season 2027 (demo, all invented)",
        "name: '" + name.replace("'", "''") + "'");
    return book;
  }

  private static void change(Path book, String file, String from, String to) throws IOException {
    Path path = book.resolve(file);
    Files.writeString(path, Files.readString(path, UTF_8).replace(from, to), UTF_8);
  }

  private static String page(Path book, List<String> call) throws IOException {
    Path page = book.resolveSibling(book.getFileName() + ".html");
    List<String> args = new ArrayList<>(call);
    args.addAll(List.of(page.toString(), "--force", "--book", book.toString(), "--today", TODAY));
    Called called = Called.with(args.toArray(String[]::new));
    assertThat(called.code()).as(called.err()).isLessThan(ExitCode.WRONG_INPUT);
    return Files.readString(page, UTF_8);
  }

  /** Tags with the names of their attributes, in their order. */
  private static List<String> tags(String page) {
    List<String> out = new ArrayList<>();
    Matcher m = TAG.matcher(page);
    while (m.find()) {
      StringBuilder tag = new StringBuilder(m.group(1));
      Matcher a = ATTRIBUTE.matcher(m.group(2));
      while (a.find()) {
        tag.append(' ').append(a.group(1));
      }
      out.add(tag.toString());
    }
    return out;
  }

  private void sameTags(String hostile, List<List<String>> pages) throws IOException {
    Path bad = book(hostile);
    Path plain = book("n".repeat(hostile.length()));
    for (List<String> call : pages) {
      String page = page(bad, call);
      assertThat(tags(page)).as("%s with %s", call, hostile).isEqualTo(tags(page(plain, call)));
      assertThat(page).doesNotContain("<script", "<img", "<!--<");
    }
  }

  private static String name(Random random) {
    StringBuilder out = new StringBuilder("n");
    for (int i = 1 + random.nextInt(3); i > 0; i--) {
      out.append(PARTS.get(random.nextInt(PARTS.size())));
    }
    return out.toString();
  }

  @Test
  void aNameIsTextOnEveryPage() throws IOException {
    sameTags("\"><script>alert('1')</script>&lt;<!-- </style></title>", PAGES);
  }

  @Test
  @Tag("slow")
  void anyNameIsTextOnEveryPage() throws IOException {
    Random random = new Random(3);
    List<List<String>> quick = PAGES.stream().filter(p -> !p.get(0).equals("plan")).toList();
    for (int i = 0; i < 100; i++) {
      sameTags(name(random), quick);
    }
  }

  /** What a table may begin with, other than a number, is what a spreadsheet leaves alone. */
  @Test
  void noCellRunsAsAFormula() throws IOException {
    for (String formula : FORMULAS) {
      Path book = book(formula);
      Path csv = dir.resolve("o.csv");
      Called order = Called.with("order", book, "--csv", csv.toString(), "--force");
      assertThat(order.code()).as(order.err()).isZero();
      harmless(Files.readString(csv, UTF_8), formula);
      Called export = Called.with("record", "--export", "--book", book.toString());
      assertThat(export.code()).as(export.err()).isZero();
      harmless(export.out(), formula);
    }
  }

  private static void harmless(String table, String formula) {
    assertThat(table).contains(formula.substring(1).replace("\"", "\"\""));
    for (String cell : cells(table)) {
      if (!cell.matches("[+-]?[0-9][0-9.,]*")) {
        assertThat(cell).doesNotMatch("(?s)[=+\\-@\t\r].*");
      }
    }
  }

  /** Cells as RFC 4180 has them. */
  private static List<String> cells(String table) {
    List<String> out = new ArrayList<>();
    StringBuilder cell = new StringBuilder();
    boolean quoted = false;
    for (int i = 0; i < table.length(); i++) {
      char c = table.charAt(i);
      if (quoted && c == '"' && i + 1 < table.length() && table.charAt(i + 1) == '"') {
        cell.append(c);
        i++;
      } else if (c == '"') {
        quoted = !quoted;
      } else if (!quoted && (c == ',' || c == '\n')) {
        out.add(cell.toString());
        cell.setLength(0);
      } else if (quoted || c != '\r') {
        cell.append(c);
      }
    }
    return out;
  }
}
