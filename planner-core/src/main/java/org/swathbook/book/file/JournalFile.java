package org.swathbook.book.file;

import java.nio.file.Path;
import java.util.List;
import org.swathbook.source.CsvReader;
import org.swathbook.source.CsvTable;
import org.swathbook.source.NewFiles;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * Adds rows to {@code applications.csv} as {@link LockedFile} has it: a writer that is killed
 * leaves no half row, and no pass of which some products are missing, to be mended later. When
 * {@link #append} returns, the rows outlive a loss of power. The price is that a call writes the
 * whole file, of which a season fills some hundred kilobytes.
 */
final class JournalFile {
  private static final String FILE = ApplicationsReader.TABLE.file();
  private static final String IF_MISSING =
      "write one that starts with '" + String.join(",", ApplicationsReader.COLUMNS) + "'";
  private static final String IF_IN_DOUBT =
      "see to the disk; the rows are in it, so look before you record them again";

  /** Makes the new rows from the journal as it is once the lock is held. */
  interface Rows {
    List<NewRow> of(CsvTable journal);
  }

  /** Reads the journal as it would be, before it is written. */
  interface Check {
    void read(CsvTable there, JournalText more, Problems problems);
  }

  private JournalFile() {}

  /**
   * Adds all rows or none.
   *
   * @return columns that the file did not have before
   * @throws ProblemsException when the rows or the file are no good, or it cannot be written; the
   *     journal is then as it was
   */
  static List<String> append(Path book, Rows rows, Check check) {
    return LockedFile.change(
        book,
        FILE,
        file -> {
          byte[] old = file.read(IF_MISSING);
          CsvTable there = table(old);
          JournalText text = JournalText.of(old, there.header(), rows.of(there));
          Problems problems = new Problems();
          // What stands there is not taken apart a second time.
          check.read(there, text, problems);
          text.told(problems).throwIfAny();
          file.write(new NewFiles(IF_IN_DOUBT), text.whole());
          return text.added();
        });
  }

  private static CsvTable table(byte[] old) {
    Problems problems = new Problems();
    CsvTable table = new CsvReader().read(FILE, old, ApplicationsReader.TABLE.columns(), problems);
    problems.throwIfAny();
    return table;
  }
}
