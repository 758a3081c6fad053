package org.swathbook.cli.xlsx;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Collections;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.swathbook.cli.report.SheetTable;

/** Writes tables as an Office Open XML workbook, a sheet a table. */
public final class Workbooks {
  /** The part that says when a workbook was made. */
  private static final String PROPERTIES = "docProps/core.xml";

  /** Earliest that the archive's format knows; every entry has it, so that bytes do not change. */
  private static final LocalDateTime NO_TIME = LocalDateTime.of(1980, 1, 1, 0, 0);

  /** Widest a column is made, in characters: default, ours. */
  private static final int WIDEST = 60;

  private Workbooks() {}

  /**
   * The bytes of a workbook: the same for the same tables and day.
   *
   * @param made the day it is dated
   */
  public static byte[] of(LocalDate made, List<SheetTable> tables) {
    try {
      Path file = Files.createTempFile("order-", ".xlsx");
      try {
        try (OutputStream out = Files.newOutputStream(file);
            Workbook book = new Workbook(out, "Swathbook", "1.0")) {
          tables.forEach(t -> sheet(book, t));
        }
        return dated(file, made);
      } finally {
        Files.delete(file);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(
          "the workbook cannot be put together in the folder of temporary files", e);
    }
  }

  private static void sheet(Workbook book, SheetTable table) {
    Worksheet sheet = book.newWorksheet(table.name());
    for (int c = 0; c < table.columns().size(); c++) {
      sheet.value(0, c, table.columns().get(c));
      sheet.style(0, c).bold().set();
      int widest = table.columns().get(c).length();
      for (int r = 0; r < table.rows().size(); r++) {
        widest = Math.max(widest, cell(sheet, r + 1, c, table.rows().get(r).get(c)));
      }
      sheet.width(c, Math.min(WIDEST, widest) + 2);
    }
    sheet.freezePane(0, 1);
  }

  /** Text goes in as text: what begins as a formula is shown and not reckoned. */
  private static int cell(Worksheet sheet, int row, int column, SheetTable.Cell cell) {
    if (cell instanceof SheetTable.Figure f) {
      sheet.value(row, column, f.value());
      int decimals = f.value().scale();
      sheet.style(row, column).format(decimals == 0 ? "0" : "0." + "0".repeat(decimals)).set();
      return f.value().toPlainString().length();
    }
    String words = ((SheetTable.Words) cell).words();
    if (words.isEmpty()) {
      return 0;
    }
    sheet.value(row, column, words);
    if (words.length() > WIDEST) {
      sheet.style(row, column).wrapText(true).set();
    }
    return words.length();
  }

  /**
   * The library takes the hour from the clock; a report has the day that it is for. Sizes stand
   * only in the directory at the archive's end, so it is read as a file and not as a stream.
   */
  private static byte[] dated(Path workbook, LocalDate made) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipFile in = new ZipFile(workbook.toFile());
        ZipOutputStream zip = new ZipOutputStream(out)) {
      for (ZipEntry e : Collections.list(in.entries())) {
        ZipEntry same = new ZipEntry(e.getName());
        same.setTimeLocal(NO_TIME);
        zip.putNextEntry(same);
        byte[] part;
        try (InputStream content = in.getInputStream(e)) {
          part = content.readAllBytes();
        }
        zip.write(
            e.getName().equals(PROPERTIES)
                ? new String(part, UTF_8)
                    .replaceAll("(<dcterms:created[^>]*>)[^<]*", "$1" + made + "T00:00:00Z")
                    .getBytes(UTF_8)
                : part);
      }
    }
    return out.toByteArray();
  }
}
