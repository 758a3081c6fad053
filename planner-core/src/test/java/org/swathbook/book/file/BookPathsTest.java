package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.swathbook.book.file.BookPaths.Kind;
import org.swathbook.source.ProblemsException;

class BookPathsTest {
  @TempDir Path dir;
  private Path book = Path.of("");
  private BookPaths paths = new BookPaths(book);

  @BeforeEach
  void makeBook() throws IOException {
    book = Files.createDirectories(dir.resolve("book"));
    paths = new BookPaths(book);
    Files.createDirectories(book.resolve("programs"));
    Files.writeString(book.resolve("programs/early.yaml"), "x");
    Files.writeString(dir.resolve("outside.yaml"), "x");
    Files.writeString(book.resolve("book.yaml"), "x");
  }

  @Test
  void aNameWithOrWithoutItsEnding() {
    Path early = book.resolve("programs").resolve("early.yaml");
    assertThat(paths.find(Kind.PROGRAM, "early")).isEqualTo(early);
    assertThat(paths.find(Kind.PROGRAM, "early.yaml")).isEqualTo(early);
  }

  @Test
  void aPathToAFileAnywhere() {
    Path outside = dir.resolve("outside.yaml");
    assertThat(paths.find(Kind.PROGRAM, outside.toString())).isEqualTo(outside);
    assertThat(paths.nameOf(outside)).isEqualTo(outside.toString());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../book",
        "../../outside",
        "..",
        ".",
        "",
        "a/b",
        "a\\b",
        "nul",
        "~",
        "a\0b",
        "x:y"
      })
  void aNameNeverLeadsOutOfTheBook(String typed) {
    assertThatThrownBy(() -> paths.find(Kind.PROGRAM, typed))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining("there is no such file, and no program of this name in the book");
  }

  @Test
  void norDoesALink() throws IOException {
    Path link = book.resolve("programs").resolve("linked.yaml");
    try {
      Files.createSymbolicLink(link, dir.resolve("outside.yaml"));
    } catch (UnsupportedOperationException | IOException e) {
      assumeThat(false).as("links can be made here").isTrue();
    }
    assertThatThrownBy(() -> paths.find(Kind.PROGRAM, "linked"))
        .isInstanceOf(ProblemsException.class);
  }

  /** The current folder has an empty path, which the platform takes for none. */
  @Test
  void theCurrentFolderIsAFolder() {
    assertThat(new BookPaths(Path.of("")).book()).isDirectory();
  }

  /**
   * Nothing is missing by chance: what cannot be read is told, and only a missing folder is empty.
   */
  @Test
  void whatCannotBeReadIsNotEmpty() throws IOException {
    assertThat(paths.observations()).isEmpty();
    assertThat(paths.mixes()).isEmpty();
    Files.writeString(book.resolve("observations"), "no folder");
    assertThatThrownBy(paths::observations)
        .isInstanceOf(ProblemsException.class)
        .hasMessage(
            "observations:1:1: this is a file, and the folder of every observation; check that it"
                + " is a folder you may open");
    assertThatThrownBy(() -> paths.find(Kind.OBSERVATION, "june"))
        .hasMessageStartingWith("observations:1:1: this is a file");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void linksThatLeadNowhereOrOutAreTold() throws IOException {
    Path programs = book.resolve("programs");
    Path lost = Files.createSymbolicLink(programs.resolve("lost.yaml"), dir.resolve("nothing"));
    // What editors leave while a file is open.
    Files.createSymbolicLink(programs.resolve(".#early.yaml"), dir.resolve("someone@here"));
    assertThatThrownBy(paths::programs)
        .hasMessageStartingWith("programs/lost.yaml:1:1: the link leads nowhere; ");
    Files.delete(lost);
    assertThat(paths.programs()).containsExactly(programs.resolve("early.yaml"));
    Files.createSymbolicLink(programs.resolve("out.yaml"), dir.resolve("outside.yaml"));
    assertThatThrownBy(paths::programs)
        .hasMessage(
            "programs/out.yaml:1:1: the link leads out of the book; put the file itself into the"
                + " book");
    Files.createSymbolicLink(book.resolve("mixes"), dir.resolve("nothing"));
    assertThatThrownBy(paths::mixes).hasMessageStartingWith("mixes:1:1: the folder cannot be read");
  }

  @Test
  void anUnknownNameHearsTheNearest() {
    assertThatThrownBy(() -> paths.find(Kind.PROGRAM, "erly"))
        .hasMessage(
            "erly:1:1: there is no such file, and no program of this name in the book; did you mean"
                + " 'early'?");
    assertThatThrownBy(() -> paths.find(Kind.MIX, "erly"))
        .hasMessage(
            "erly:1:1: there is no such file, and no mix of this name in the book; write the path"
                + " of a file; the folder mixes of the book is empty");
  }

  @Test
  void tablesThatAreLinksAreRefused() throws IOException {
    BookOnDisk sound = new BookOnDisk(book);
    Path table = book.resolve("weeds.csv");
    Path elsewhere = dir.resolve("weeds.csv");
    Files.move(table, elsewhere);
    try {
      Files.createSymbolicLink(table, elsewhere);
    } catch (UnsupportedOperationException | IOException e) {
      assumeThat(false).as("links can be made here").isTrue();
    }
    assertThat(sound.problems())
        .containsExactly(
            "weeds.csv:1:1: the link leads out of the book; put the file itself into the book");
  }
}
