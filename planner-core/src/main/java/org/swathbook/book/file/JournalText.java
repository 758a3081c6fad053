package org.swathbook.book.file;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.swathbook.source.CsvHeader;
import org.swathbook.source.CsvStart;
import org.swathbook.source.CsvText;
import org.swathbook.source.Mark;
import org.swathbook.source.Problem;
import org.swathbook.source.Problems;

/**
 * The bytes of a journal with rows added at its end. What stands there stays as it is, byte for
 * byte: its byte-order mark, the order of its columns, its line ends. A column for which a new row
 * has a value and which the file lacks is added at the right; rows that stand there already then
 * get one comma more.
 */
final class JournalText {
  private final byte[] whole;
  private final byte[] fresh;
  private final List<NewRow> rows;
  private final List<String> header;
  private final List<String> added;
  private final int firstLine;

  private JournalText(
      byte[] whole,
      byte[] fresh,
      List<NewRow> rows,
      List<String> header,
      List<String> added,
      int firstLine) {
    this.whole = whole;
    this.fresh = fresh;
    this.rows = List.copyOf(rows);
    this.header = List.copyOf(header);
    this.added = List.copyOf(added);
    this.firstLine = firstLine;
  }

  /**
   * @param old a journal that reads without problems
   */
  static JournalText of(byte[] old, CsvHeader known, List<NewRow> rows) {
    List<String> added =
        ApplicationsReader.COLUMNS.stream()
            .filter(c -> !known.has(c) && rows.stream().anyMatch(r -> !r.text(c).isBlank()))
            .toList();
    List<String> header = new ArrayList<>(known.names());
    header.addAll(added);
    String end = lineEnd(old);
    ByteArrayOutputStream out = new ByteArrayOutputStream(old.length + 1024);
    out.writeBytes(
        added.isEmpty()
            ? old
            : CsvWidening.of(new String(old, UTF_8), known.names().size(), added).getBytes(UTF_8));
    int lines = lineEnds(old);
    if (old.length > 0 && old[old.length - 1] != '\n' && old[old.length - 1] != '\r') {
      out.writeBytes(end.getBytes(UTF_8));
      lines++;
    }
    ByteArrayOutputStream fresh = new ByteArrayOutputStream();
    for (NewRow r : rows) {
      fresh.writeBytes((CsvText.row(r.inOrder(header)) + end).getBytes(UTF_8));
    }
    out.writeBytes(fresh.toByteArray());
    return new JournalText(out.toByteArray(), fresh.toByteArray(), rows, header, added, lines + 1);
  }

  byte[] whole() {
    return whole.clone();
  }

  /** The new rows alone, as they stand in the file. */
  InputStream rows() {
    return new ByteArrayInputStream(fresh);
  }

  /** Where in the file they stand, and under which header. */
  CsvStart place() {
    return CsvStart.below(firstLine - 1, CsvText.row(header));
  }

  /** Columns that the file did not have. */
  List<String> added() {
    return added;
  }

  /** Problems of new rows, told of the place that their cells came from. */
  Problems told(Problems found) {
    Problems out = new Problems();
    for (Problem p : found.sorted()) {
      int row = p.mark().line() - firstLine;
      boolean isNew =
          p.mark().file().equals(ApplicationsReader.TABLE.file()) && row >= 0 && row < rows.size();
      out.add(isNew ? new Problem(placeOf(rows.get(row), p.mark()), p.what(), p.right()) : p);
    }
    return out;
  }

  private Mark placeOf(NewRow row, Mark mark) {
    TreeMap<Integer, String> starts = new TreeMap<>();
    List<Integer> at = CsvText.starts(row.inOrder(header));
    for (int i = 0; i < at.size(); i++) {
      starts.put(at.get(i), header.get(i));
    }
    return row.where().apply(starts.floorEntry(mark.column()).getValue());
  }

  /** That of the first line. */
  private static String lineEnd(byte[] bytes) {
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == '\n') {
        return "\n";
      }
      if (bytes[i] == '\r') {
        return i + 1 < bytes.length && bytes[i + 1] == '\n' ? "\r\n" : "\r";
      }
    }
    return "\n";
  }

  private static int lineEnds(byte[] bytes) {
    int n = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] == '\n' || bytes[i] == '\r' && !(i + 1 < bytes.length && bytes[i + 1] == '\n')) {
        n++;
      }
    }
    return n;
  }
}
