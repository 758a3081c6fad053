package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class ReadersProperties {

  @Property(tries = 1000)
  void anyTextIsANodeOrProblems(@ForAll("yamlScraps") String text) {
    try {
      Node node = Reading.yaml(text);
      assertThat(node.mark().line()).isPositive();
    } catch (ProblemsException e) {
      assertThat(e.problems()).isNotEmpty();
      assertThat(e.report()).allMatch(p -> p.startsWith("x.yaml:") && p.lines().count() == 1);
    }
  }

  @Property(tries = 500)
  void anyBytesAreANodeOrProblems(@ForAll byte[] content) {
    try {
      assertThat(new YamlReader().read("x.yaml", content)).isNotNull();
    } catch (ProblemsException e) {
      assertThat(e.problems()).isNotEmpty();
    }
  }

  @Property(tries = 1000)
  void anyTextIsATable(@ForAll("csvScraps") String text) {
    Problems problems = new Problems();
    CsvTable table = Reading.csv(text, problems);
    assertThat(problems.report()).allMatch(p -> p.startsWith("w.csv:") && p.lines().count() == 1);
    int lines = text.split("\r\n|\r|\n", -1).length;
    for (CsvRow row : table.rows()) {
      assertThat(row.line()).isBetween(2, lines);
    }
  }

  @Property(tries = 500)
  void anyBytesAreATable(@ForAll byte[] content) {
    assertThat(Reading.csv(content, new Problems()).rows()).isNotNull();
  }

  /** Cells written with quotes where they need them come back, each at the place it was put. */
  @Property
  void cellsComeBackFromWhereTheyWerePut(
      @ForAll("tables") List<List<String>> table, @ForAll boolean carriageReturn) {
    String end = carriageReturn ? "\r\n" : "\n";
    StringBuilder text = new StringBuilder("field,weed,density" + end);
    List<Mark> marks = new ArrayList<>();
    int line = 2;
    for (List<String> row : table) {
      int column = 1;
      for (int i = 0; i < 3; i++) {
        marks.add(new Mark("w.csv", line, column));
        String written = '"' + row.get(i).replace("\"", "\"\"") + '"';
        text.append(written).append(i < 2 ? "," : end);
        int last = written.lastIndexOf('\n');
        line += (int) written.chars().filter(c -> c == '\n').count();
        int tail = written.codePointCount(last + 1, written.length());
        column = (last < 0 ? column + tail : 1 + tail) + 1;
      }
      line++;
    }
    Problems problems = new Problems();
    CsvTable read = Reading.csv(text.toString(), problems);
    assertThat(problems.report()).isEmpty();
    List<Mark> found = new ArrayList<>();
    List<List<String>> texts = new ArrayList<>();
    for (CsvRow row : read.rows()) {
      texts.add(List.of(row.text("field"), row.text("weed"), row.text("density")));
      found.addAll(List.of(row.mark("field"), row.mark("weed"), row.mark("density")));
    }
    assertThat(texts).isEqualTo(table);
    assertThat(found).isEqualTo(marks);
  }

  @Provide
  Arbitrary<String> yamlScraps() {
    Arbitrary<String> scraps =
        Arbitraries.of(
            "a", "b: ", ": ", "- ", "\n", "\n  ", " ", "[", "]", "{", "}", ",", "'", "\"", "#",
            "&x", "*x", "!t ", "|", ">", "?", "%", "@", "`", "---\n", "...\n", "\t", "é", "𝒳", "1",
            "<<: ", "\\", "\u0001", "~");
    return Arbitraries.oneOf(
        scraps.list().ofMaxSize(30).map(l -> String.join("", l)),
        Arbitraries.strings().ofMaxLength(60).filter(t -> t.equals(decodable(t))));
  }

  @Provide
  Arbitrary<String> csvScraps() {
    Arbitrary<String> scraps =
        Arbitraries.of("a", ",", "\"", "\n", "\r\n", " ", "total", "é", ";", "\\", "'", "𝒳", "1");
    return scraps.list().ofMaxSize(30).map(l -> "field,weed\n" + String.join("", l));
  }

  @Provide
  Arbitrary<List<List<String>>> tables() {
    Arbitrary<String> cells =
        Arbitraries.strings()
            .withChars("ab,\"\né;'")
            .ofMaxLength(8)
            .map(s -> "x" + s.replace(";", "𝒳") + "x");
    return cells.list().ofSize(3).list().ofMaxSize(20);
  }

  private static String decodable(String text) {
    return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8);
  }
}
