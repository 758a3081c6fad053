package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.WeedId;
import org.swathbook.source.NewFiles;
import org.swathbook.source.ProblemsException;
import org.swathbook.testing.DemoBook;

/** Rows go in once and whole, and the rest of the file stays as a spreadsheet wrote it. */
class WatchFileTest {
  private static final Book BOOK = DemoBook.BOOK;
  private static final WatchFile.Entry ENTRY =
      new WatchFile.Entry(
          BOOK.fields().get(0).id(),
          new WeedId("AMAPA"),
          Site.of(14),
          LocalDate.of(2027, 6, 22),
          "=strong, \"patches\"");

  @TempDir Path folder;

  private List<WatchFile.Entry> add() {
    return WatchFile.add(new BookPaths(folder), BOOK, List.of(ENTRY));
  }

  private String file() throws IOException {
    return Files.readString(folder.resolve("watch.csv"));
  }

  @Test
  void aMissingFileIsMade() throws IOException {
    assertThat(add()).containsExactly(ENTRY);
    assertThat(file())
        .isEqualTo(
            "field,weed,site,since,reason\n"
                + "ND-1,AMAPA,14,2027-06-22,\"'=strong, \"\"patches\"\"\"\n");
  }

  @Test
  void columnsAndLineEndsStayAndNothingStandsTwice() throws IOException {
    String before = "weed,field,reason,since,site\r\nPalmer amaranth,nd-1,seen,2026-07-01,9";
    Files.writeString(folder.resolve("watch.csv"), before);
    assertThat(add()).hasSize(1);
    String after = file();
    assertThat(after)
        .isEqualTo(before + "\r\nAMAPA,ND-1,\"'=strong, \"\"patches\"\"\",2027-06-22,14\r\n");
    assertThat(add()).isEmpty();
    assertThat(file()).isEqualTo(after);
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aReadOnlyFileStaysAndALinkToo() throws IOException {
    Path real = Files.writeString(folder.resolve("kept.csv"), "field,weed,site,since,reason\n");
    Path watch = Files.createSymbolicLink(folder.resolve("watch.csv"), real);
    Files.setPosixFilePermissions(real, PosixFilePermissions.fromString("r--r--r--"));
    Path page = folder.resolve("page.html");
    NewFiles others = new NewFiles().put(page, "page", "new");
    assertThatThrownBy(
            () -> WatchFile.add(new BookPaths(folder), BOOK, List.of(ENTRY), f -> others))
        .hasMessageStartingWith("watch.csv:1:1: the file is read-only; ");
    assertThat(page).doesNotExist();
    Files.setPosixFilePermissions(real, PosixFilePermissions.fromString("rw-r--r--"));
    add();
    assertThat(watch).isSymbolicLink();
    assertThat(Files.readString(real)).contains("AMAPA");
  }

  @Test
  void whatAKilledWriterLeftIsCleared() throws IOException {
    Path left = Files.writeString(folder.resolve(".watch.csv.0.tmp"), "half a ro");
    Path anothers = Files.writeString(folder.resolve(".other.csv.0.tmp"), "half a ro");
    add();
    assertThat(left).doesNotExist();
    assertThat(anothers).exists();
  }

  @Test
  void aFileThatLacksAColumnIsLeftAsItWas() throws IOException {
    Files.writeString(folder.resolve("watch.csv"), "field,weed\n");
    assertThatThrownBy(this::add)
        .isInstanceOfSatisfying(
            ProblemsException.class,
            e -> assertThat(e.problems().get(0).what()).contains("site, since, reason"));
    assertThat(file()).isEqualTo("field,weed\n");
  }
}
