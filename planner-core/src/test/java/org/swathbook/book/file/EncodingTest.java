package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tables as spreadsheets of every kind write them. */
class EncodingTest {
  private static final String FIELDS =
      """
      id,name,acres,crop,plantDate,tillage,station
      A-1,"Señor's ""far"" corner, north",76.0,soybean,2027-05-11,no-till,hill
      A-2,Long,40,corn,2027-05-01,tilled,hill
      """;

  @TempDir Path dir;

  private BookOnDisk fields(byte[] content) {
    return new BookOnDisk(dir).with("fields.csv", content);
  }

  private static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  private static final String NAME = "Señor's \"far\" corner, north";

  @Test
  void plainUtf8() {
    assertThat(fields(utf8(FIELDS)).load().fields().get(0).name()).isEqualTo(NAME);
  }

  @Test
  void aByteOrderMarkAndWindowsLineEnds() {
    byte[] content = utf8('\uFEFF' + FIELDS.replace("\n", "\r\n"));
    assertThat(fields(content).load().fields().get(0).name()).isEqualTo(NAME);
  }

  @Test
  void blankLinesAndRowsOfCommasOnly() {
    byte[] content = utf8(FIELDS.replace("\nA-2", "\n\n,,,,,,\n\nA-2") + "\n\n");
    assertThat(fields(content).load().fields()).hasSize(2);
  }

  @Test
  void columnsInAnyOrder() {
    byte[] content =
        utf8(
            """
            station,tillage,id,plantDate,crop,acres
            hill,no-till,A-1,2027-05-11,soybean,76.0
            hill,tilled,A-2,2027-05-01,corn,40
            """);
    assertThat(fields(content).load().fields().get(0).acres()).isEqualTo(76.0);
  }

  @Test
  void windows1252IsRefusedByName() {
    assertThat(fields(FIELDS.getBytes(Charset.forName("windows-1252"))).problems())
        .containsExactly(
            "fields.csv:2:8: the file is not written in UTF-8 but, by its looks, in Windows-1252;"
                + " save it again as UTF-8 (in a spreadsheet: 'CSV UTF-8')");
  }

  @Test
  void utf16IsRefusedByName() {
    for (Charset c : new Charset[] {StandardCharsets.UTF_16, StandardCharsets.UTF_16LE}) {
      assertThat(fields(FIELDS.getBytes(c)).problems())
          .containsExactly(
              "fields.csv:1:1: the file is written in UTF-16, not in UTF-8; save it again as UTF-8"
                  + " (in a spreadsheet: 'CSV UTF-8')");
    }
  }

  @Test
  void bookYamlToo() {
    BookOnDisk book = new BookOnDisk(dir);
    String text = BookOnDisk.soundText("book.yaml").replace("Invented", "Ñandú");
    book.with("book.yaml", utf8('\uFEFF' + text.replace("\n", "\r\n")));
    assertThat(book.load().name()).isEqualTo("Ñandú");
    book.with("book.yaml", text.getBytes(StandardCharsets.ISO_8859_1));
    assertThat(book.problems())
        .containsExactly(
            "book.yaml:2:7: the file is not written in UTF-8 but, by its looks, in Windows-1252;"
                + " save it again as UTF-8 (in a spreadsheet: 'CSV UTF-8')");
  }
}
