package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.terminal.ExitCode;

/** {@code record --import} into a copy of the demo book. */
class RecordImportTest {
  private static final String MAP =
      """
      format: swathbook.journal-map/1
      columns:
        Field Name: field
        Sprayed: date
        Began: startTime
        Product: product
        Rate: {to: rate, unit: fl oz/acre}
        Area (ha): {to: acres, unit: ha}
        Temp (C): {to: tempF, unit: C}
      ignore: [Invoice]
      dates: M/D/YYYY
      words: {field: {North 80: ND-1}, product: {gly 4.5: glyphosate-4.5sl}}
      """;
  private static final String HEADER =
      "Field Name,Sprayed,Began,Product,Rate,Area (ha),Temp (C),Invoice\n";

  @TempDir Path folder;
  private Path book = Path.of("");

  @BeforeEach
  void copy() throws IOException {
    book = DemoBookCopy.into(folder);
  }

  private Called imported(String map, String table, String... more) throws IOException {
    Path csv = Files.writeString(folder.resolve("sprayed.csv"), table);
    List<String> args = new ArrayList<>(List.of("record", "--import", csv.toString()));
    if (!map.isEmpty()) {
      args.add("--map");
      args.add(Files.writeString(folder.resolve("map.yaml"), map).toString());
    }
    args.addAll(List.of(more));
    args.addAll(List.of("--book", book.toString(), "--today", "2027-06-30"));
    return Called.with(args.toArray(String[]::new));
  }

  /** 10 ha are 24.7105 acres (NIST Handbook 44); 20 C are 68 F. */
  @Test
  void aTableOfOthersComesInThroughItsMap() throws IOException {
    int before = DemoBookCopy.journal(book).size();
    Called called =
        imported(
            MAP,
            HEADER
                + "North 80,6/8/2027,2:30 PM,gly 4.5,32,10,20,77\n"
                + "north 80,6/8/2027,2:30 PM,metribuzin-75wg,1,10,20,77\n"
                    .replace(",1,", ",32,")
                    .replace("metribuzin-75wg", "2-4-d-choline-3.8sl")
                + "ND-2,5/20/2027,,gly 4.5,32,10,,78\n",
            "--json");
    assertThat(called.err()).isEmpty();
    JsonNode imported = new ObjectMapper().readTree(called.out()).get("imported");
    assertThat(imported).hasSize(2);
    assertThat(imported.get(0).get("id").textValue()).isEqualTo("A-27-001");
    assertThat(imported.get(0).get("rows")).hasSize(2);
    assertThat(imported.get(0).get("rows").get(0).get("acres").decimalValue())
        .isEqualByComparingTo("24.71");
    assertThat(imported.get(1).get("id").textValue()).isEqualTo("A-27-002");
    List<String> journal = DemoBookCopy.journal(book);
    assertThat(journal).hasSize(before + 3);
    assertThat(journal.get(before))
        .startsWith("A-27-001,1,,2027-06-08,14:30,ND-1,2027,24.71")
        .contains(",soybean,")
        .contains(",68,");
  }

  private static final String TOTALS =
      """
      format: swathbook.journal-map/1
      columns:
        Where: field
        Day: date
        What: product
        Drawn: {to: total, unit: gal}
        Acres: acres
        Wind: {to: windMph, unit: km/h}
      """;

  /**
   * Product drawn over acres sprayed is the rate (common practice, no source): 19 gal on 76 acres
   * are 0.25 gal/acre, a quart. A mile is 1.609344 km, so 16.09344 km/h are 10 mph (NIST Handbook
   * 44).
   */
  @Test
  void aTotalIsDividedByItsAcresAndWindComesInKilometresAnHour() throws IOException {
    Called called =
        imported(
            TOTALS,
            """
            Where,Day,What,Drawn,Acres,Wind
            ND-1,2027-06-08,glyphosate-4.5sl,19,76,16.09344
            ND-2,2027-05-20,glyphosate-4.5sl,10,118,
            """);
    assertThat(called.err()).isEmpty();
    List<String> journal = DemoBookCopy.journal(book);
    assertThat(journal.get(journal.size() - 2))
        .contains(",76,glyphosate-4.5sl,,0.25,gal/acre,")
        .contains(",10,");
    // 10 / 118 = 0.0847457…
    assertThat(journal.get(journal.size() - 1))
        .contains(",118,glyphosate-4.5sl,,0.0847458,gal/acre,");
  }

  @Test
  void aTotalThatMakesNoRateIsToldWithItsPlace() throws IOException {
    List<String> before = DemoBookCopy.journal(book);
    String head = "Where,Day,What,Drawn,Acres,Wind\n";
    String start = "ND-1,2027-06-08,glyphosate-4.5sl,";
    assertThat(imported(TOTALS, head + start + "19,,\n").err())
        .contains("sprayed.csv:2:34: a total of 19 makes no rate without acres");
    assertThat(imported(TOTALS, head + start + "much,76,\n").err())
        .contains("sprayed.csv:2:34: 'much' is no number");
    assertThat(imported(TOTALS, head + start + "0,76,\n").err())
        .contains("sprayed.csv:2:34: '0' is not above zero");
    assertThat(imported(TOTALS, head + start + "19,0,\n").err())
        .contains("sprayed.csv:2:37: '0' is not above zero");
    assertThat(imported(TOTALS, head + start + "19,76,fast\n").err()).contains("sprayed.csv:2:40:");
    assertThat(imported(TOTALS.replace(", unit: gal", ""), head + start + "19,76,\n").err())
        .contains("makes no rate without a unit");
    assertThat(imported(TOTALS.replace("unit: gal", "unit: mph"), head).err())
        .contains("map.yaml:6:");
    // Four gallons an acre are above what any label allows, which is for the audit and not for the
    // import.
    assertThat(imported(TOTALS, head + start + "304,76,\n").err()).isEmpty();
    assertThat(DemoBookCopy.journal(book)).hasSize(before.size() + 1);
  }

  /** 2027 is no leap year: the date looks like one and is none, in the table or in the map. */
  @Test
  void aDayThatNoCalendarHasIsToldWithItsPlace() throws IOException {
    List<String> before = DemoBookCopy.journal(book);
    String map = MAP.replace("dates: M/D/YYYY\n", "");
    String row = "North 80,2027-02-29,,gly 4.5,32,10,20,\n";
    assertThat(imported(map, HEADER + row).err())
        .contains("sprayed.csv:2:10: there is no day '2027-02-29'")
        .doesNotContain("internal");
    Called always =
        imported(
            map.replace("  Sprayed: date\n", "")
                .replace(
                    "ignore: [Invoice]", "ignore: [Invoice, Sprayed]\nalways: {date: 2027-02-29}"),
            HEADER + row);
    assertThat(always.code()).as(always.err()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(always.err()).contains("sprayed.csv:2:").contains("2027-02-29");
    assertThat(DemoBookCopy.journal(book)).isEqualTo(before);
  }

  @Test
  void theSameTableTwiceIsRefusedRowByRow() throws IOException {
    String table =
        HEADER + "North 80,6/8/2027,,gly 4.5,32,10,20,\nND-2,5/20/2027,,gly 4.5,32,10,,\n";
    Called first = imported(MAP, table);
    assertThat(first.code()).isEqualTo(ExitCode.DONE);
    assertThat(first.out()).contains("2 rows of 2 passes").contains("The label is the law.");
    List<String> once = DemoBookCopy.journal(book);
    Called again = imported(MAP, table);
    assertThat(again.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(again.err())
        .contains("sprayed.csv:2:20: glyphosate-4.5sl on ND-1 of 2027-06-08 is in the journal")
        .contains("sprayed.csv:3:");
    Called inItself = imported(MAP, HEADER + "ND-3,6/9/2027,,gly 4.5,32,10,20,\n".repeat(2));
    assertThat(inItself.err()).contains("sprayed.csv:3:").contains("is to go in twice");
    assertThat(DemoBookCopy.journal(book)).isEqualTo(once);
  }

  @Test
  void everyMistakeOfTableAndMapIsToldWithItsPlaceAndNothingIsWritten() throws IOException {
    List<String> before = DemoBookCopy.journal(book);
    assertThat(
            imported(
                    MAP,
                    HEADER
                        + "South 80,6/8/2027,,gly 4.5,32,10,20,\n"
                        + "ND-1,8.6.2027,,gly 4.5,32,10,20,\n"
                        + "ND-1,6/8/2027,,gly 4.5,much,10,20,\n")
                .err())
        .contains("sprayed.csv:3:6: '8.6.2027' is no date as M/D/YYYY");
    assertThat(
            imported(
                    MAP,
                    HEADER
                        + "South 80,6/8/2027,,gly 4.5,32,10,20,\n"
                        + "ND-1,6/8/2027,,gly 4.5,much,10,20,\n")
                .err())
        .contains("sprayed.csv:2:1: 'South 80' is no field of fields.csv")
        .contains("sprayed.csv:3:24: 'much' is no number");
    assertThat(imported(MAP, HEADER + "ND-1,9/8/2026,,gly 4.5,32,10,20,\n").err())
        .contains("may be for the crop of this year or of the next");
    assertThat(imported(MAP.replace("ignore: [Invoice]\n", ""), HEADER).err())
        .contains("nothing says what the column 'Invoice' is")
        .contains("the table has no row");
    assertThat(imported(MAP.replace("unit: ha", "unit: furlong"), HEADER).err())
        .contains("map.yaml");
    assertThat(imported(MAP.replace("M/D/YYYY", "M/D"), HEADER).err())
        .contains("is no form of a date");
    assertThat(imported(MAP.replace("Sprayed: date", "Sprayed: dates"), HEADER).err())
        .contains("'dates' is no column of the journal");
    assertThat(imported("", "field,date,product\n").err()).contains("has no row");
    assertThat(imported("", "id,fields\nA,B\n").err()).contains("did you mean 'field'");
    assertThat(imported("", "x\n", "--end", "10:00").err())
        .contains("--import reads a table alone");
    assertThat(DemoBookCopy.journal(book)).isEqualTo(before);
  }

  /** What the journal of one book has, another takes as it is. */
  @Test
  void aTableWithTheJournalsOwnColumnsNeedsNoMap() throws IOException {
    String own = String.join("\n", DemoBookCopy.journal(book)) + "\n";
    Files.writeString(book.resolve("applications.csv"), own.substring(0, own.indexOf('\n') + 1));
    Called called = imported("", own);
    assertThat(called.err()).isEmpty();
    assertThat(String.join("\n", DemoBookCopy.journal(book)) + "\n").isEqualTo(own);
  }
}
