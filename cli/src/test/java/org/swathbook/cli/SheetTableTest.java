package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.report.SheetTable;
import org.swathbook.cli.report.SheetTable.Cell;
import org.swathbook.cli.xlsx.Workbooks;

/** A name from a book may look like a formula; a spreadsheet must show it and not reckon it. */
class SheetTableTest {
  private static final SheetTable TABLE =
      new SheetTable(
          "T",
          List.of("grower", "amount"),
          List.of(
              List.of(Cell.of("=HYPERLINK(\"http://x\")"), Cell.of(-1.25, 2)),
              List.of(Cell.of("@a, \"b\""), Cell.of("+1+1"))));

  @Test
  void csvRunsNothing() {
    assertThat(TABLE.csv())
        .isEqualTo(
            "grower,amount\r\n\"'=HYPERLINK(\"\"http://x\"\")\",-1.25\r\n"
                + "\"'@a, \"\"b\"\"\",'+1+1\r\n");
  }

  @Test
  void workbooksHoldTextAsTextAndNumbersAsNumbers(@TempDir Path dir) throws IOException {
    Path file = dir.resolve("t.xlsx");
    Files.write(file, Workbooks.of(LocalDate.of(2027, 3, 1), List.of(TABLE)));
    try (ZipFile zip = new ZipFile(file.toFile())) {
      String sheet = part(zip, "xl/worksheets/sheet1.xml");
      assertThat(sheet).doesNotContain("<f").contains("t=\"n\"><v>-1.25</v>");
      assertThat(part(zip, "xl/sharedStrings.xml")).contains("=HYPERLINK(", "+1+1");
      assertThat(part(zip, "docProps/core.xml")).contains(">2027-03-01T00:00:00Z<");
    }
  }

  private static String part(ZipFile zip, String name) throws IOException {
    return new String(zip.getInputStream(zip.getEntry(name)).readAllBytes(), UTF_8);
  }

  @Test
  void aRowIsAsLongAsTheHeader() {
    assertThatThrownBy(() -> new SheetTable("T", List.of("a", "b"), List.of(List.of(Cell.of("x")))))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
