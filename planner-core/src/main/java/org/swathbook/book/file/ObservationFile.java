package org.swathbook.book.file;

import java.nio.file.Files;
import java.nio.file.Path;
import org.swathbook.source.Mark;
import org.swathbook.source.NewFiles;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/** The file that answers are kept in. */
public final class ObservationFile {
  private ObservationFile() {}

  /**
   * Looks whether a file may be written.
   *
   * @throws ProblemsException when something is there already, or it cannot be written there
   */
  public static void checkFree(Path file, BookPaths paths, boolean force) {
    if (Files.isDirectory(file) || !force && Files.exists(file)) {
      throw ProblemsException.of(
          Mark.startOf(paths.nameOf(file)),
          "there is an observation of this name already",
          "write over it with --force, or keep it under another name");
    }
    paths.checkInside(file);
    Problems problems = new Problems();
    NewFiles.checkWithFolders(file, paths.nameOf(file), problems);
    problems.throwIfAny();
  }

  /** The file as it is to be written; its folder is made when there is none. */
  public static NewFiles of(Path file, BookPaths paths, ObservationDraft answers) {
    return new NewFiles().put(file, paths.nameOf(file), answers.text());
  }
}
