package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class CsvReaderTest {

  @Test
  void tablesAsSpreadsheetsWriteThem() {
    Problems problems = new Problems();
    CsvTable table =
        Reading.csv(
            "\uFEFFweed,field,\r\n\r\nPalmer,ND-1,\r\n,,\r\n  \"two, \"\"lines\"\"\r\nhere\"  ,\u00A0ND-2 ,\r\n",
            problems);
    assertThat(problems.sorted()).isEmpty();
    assertThat(table.header().names()).containsExactly("weed", "field");
    assertThat(table.has("density")).isFalse();
    assertThat(table.rows())
        .extracting(r -> r.text("field"), r -> r.text("weed"), r -> r.text("density"))
        .containsExactly(tuple("ND-1", "Palmer", ""), tuple("ND-2", "two, \"lines\"\r\nhere", ""));
    CsvRow second = table.rows().get(1);
    assertThat(second.mark("weed").line()).isEqualTo(5);
    assertThat(second.mark("field").line()).isEqualTo(6);
    assertThat(second.find("density")).isEmpty();
  }

  /** More of them than a column is watched for, and then one that came before. */
  @Test
  void aLongColumnThatRepeatsNothingReadsAsItStands() {
    StringBuilder text = new StringBuilder("weed,field,density\n");
    List<String> weeds = new ArrayList<>();
    for (int i = 0; i < 9000; i++) {
      weeds.add(i % 4500 == 4499 ? "W-0" : "W-" + i);
      text.append(weeds.get(i)).append(",ND-").append(i % 3).append(",\n");
    }
    Problems problems = new Problems();
    CsvTable table = Reading.csv(text.toString(), problems);
    assertThat(problems.sorted()).isEmpty();
    assertThat(table.rows()).extracting(r -> r.text("weed")).containsExactlyElementsOf(weeds);
    assertThat(table.rows())
        .extracting(r -> r.text("field"))
        .startsWith("ND-0", "ND-1", "ND-2")
        .endsWith("ND-0", "ND-1", "ND-2");
  }

  @Test
  void aCellKnowsItsPlace() {
    CsvTable table = Reading.csv("field,weed,density\nND-1,é𝒳,80 /m2\n", new Problems());
    assertThat(table.rows().get(0).find("density"))
        .contains(new Cell(new Mark("w.csv", 2, 9), "80 /m2"));
  }

  @ParameterizedTest(name = "{index}")
  @MethodSource("broken")
  void brokenTablesSayWhereAndWhat(String text, List<String> expected) {
    List<String> problems = Reading.csvProblems(Reading.bytes(text));
    assertThat(problems).allMatch(p -> p.matches("[^;]+:\\d+:\\d+: .+; .+"));
    assertThat(problems).hasSameSizeAs(expected);
    for (int i = 0; i < expected.size(); i++) {
      assertThat(problems.get(i)).startsWith(expected.get(i));
    }
  }

  static Stream<Arguments> broken() {
    String h = "field,weed,density\n";
    return Stream.of(
        arguments("", List.of("w.csv:1:1: the table is empty")),
        arguments("\n\n", List.of("w.csv:1:1: the table is empty")),
        arguments("field\n", List.of("w.csv:1:1: the column 'weed' is missing")),
        arguments(
            "field,weed,densty\n",
            List.of("w.csv:1:12: the column 'densty' is not known; did you mean 'density'?")),
        arguments("field,weed,weed\n", List.of("w.csv:1:12: the column 'weed' stands here again")),
        arguments("field,,weed\n", List.of("w.csv:1:7: a column without a name")),
        arguments("field;weed\n", List.of("w.csv:1:1: the columns are not separated by commas")),
        arguments("field\tweed\n", List.of("w.csv:1:1: the columns are not separated by commas")),
        arguments(h + "a,b\n", List.of("w.csv:2:1: the row has 2 cells, the header names 3")),
        arguments(h + "a,b,c,d\n", List.of("w.csv:2:7: the row has 4 cells, the header names 3")),
        arguments(h + "a,b,1\nTotal,,81\n", List.of("w.csv:3:1: this is a row of totals")),
        arguments(h + ",Grand total,81\n", List.of("w.csv:2:1: this is a row of totals")),
        arguments(h + "a,\"b\nc,d,1\n", List.of("w.csv:2:3: the quotes of this cell")),
        arguments(h + "a,\"b\"c,1\n", List.of("w.csv:2:3: the quotes of this cell")),
        arguments(h + "a,b\u0000,1\n", List.of("w.csv:2:4: a NUL character")),
        arguments(
            h + "a,b\n\nc,d,e,f\n",
            List.of("w.csv:2:1: the row has 2 cells", "w.csv:4:7: the row has 4 cells")));
  }

  @Test
  void otherEncodingsAreRefusedByName() {
    byte[] ansi = "field,weed\nA,caf\u00e9\n".getBytes(Charset.forName("windows-1252"));
    assertThat(Reading.csvProblems(ansi))
        .singleElement()
        .asString()
        .startsWith("w.csv:2:6: ")
        .contains("Windows-1252");
    assertThat(Reading.csvProblems("field,weed\n".getBytes(StandardCharsets.UTF_16)))
        .singleElement()
        .asString()
        .contains("UTF-16");
  }

  @Test
  void aFaultDeepInALongFileHasItsPlaceToo() {
    StringBuilder text = new StringBuilder("field,weed\n");
    for (int i = 0; i < 30_000; i++) {
      text.append("ND-").append(i).append(",waterhemp\n");
    }
    byte[] bytes = (text + "ND-x,caf\u00e9\n").getBytes(StandardCharsets.ISO_8859_1);
    assertThat(Reading.csvProblems(bytes)).singleElement().asString().startsWith("w.csv:30002:9: ");
  }

  @Test
  void aQuoteThatNeverClosesIsToldWhereItOpens() {
    String text = "field,weed\na,b\nc,\"d\n" + "e,f\n".repeat(10_000);
    assertThat(Reading.csvProblems(Reading.bytes(text)))
        .singleElement()
        .asString()
        .startsWith("w.csv:3:3: the quotes of this cell");
  }

  @Test
  void aQuoteInsideACellIsPartOfIt() {
    Problems problems = new Problems();
    CsvTable table = Reading.csv("field,weed\nND-1,4\" tall\n", problems);
    assertThat(problems.isEmpty()).isTrue();
    assertThat(table.rows().get(0).text("weed")).isEqualTo("4\" tall");
  }

  /** Lines count from the first of the file, whatever stands above the table. */
  @Test
  void aTableMayBeginBelowOtherText() throws IOException {
    assertThat(problems("made up, \"\r\n\r\nfield,weed\r\nND-1,4\r\nND-2\r\n", CsvStart.after(2)))
        .containsExactly(
            "w.csv:5:1: the row has 1 cells, the header names 2; write every comma, also before"
                + " empty cells");
    assertThat(problems("one line\n", CsvStart.after(2)))
        .containsExactly("w.csv:1:1: the table is empty; start it with 'field,weed'");
  }

  @Test
  void aTableMayHaveNoHeader() throws IOException {
    assertThat(problems("\uFEFFND-1,4\nND-2\n", CsvStart.withoutHeader("field,weed")))
        .containsExactly(
            "w.csv:2:1: the row has 1 cells, the header names 2; write every comma, also before"
                + " empty cells");
  }

  @Test
  void furtherColumnsArePassedOverOnlyWhereAllowed() {
    Problems problems = new Problems();
    CsvColumns columns = CsvColumns.required("field");
    byte[] content = Reading.bytes("field,weed\nND-1,4\n");
    CsvReader reader = new CsvReader();
    assertThat(reader.read("w.csv", content, columns.andOthers(), problems).rows()).hasSize(1);
    assertThat(problems.report()).isEmpty();
    reader.read("w.csv", content, columns, problems);
    assertThat(problems.report()).singleElement().asString().contains("'weed' is not known");
  }

  private static List<String> problems(String text, CsvStart start) throws IOException {
    Problems problems = new Problems();
    new CsvReader()
        .stream(
            "w.csv",
            new ByteArrayInputStream(Reading.bytes(text)),
            start,
            CsvColumns.required("field", "weed"),
            problems,
            row -> {});
    return problems.report();
  }
}
