package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.PosixFileAttributeView;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.book.HouseRules;
import org.swathbook.book.file.BookLoader;
import org.swathbook.cli.terminal.ExitCode;

class InitCommandTest {
  @TempDir Path dir;

  private Called init(Path target, String... more) {
    return Called.with(
        Stream.concat(
                Stream.of("init", target.toString(), "--today", "2026-11-25"), Stream.of(more))
            .toArray(String[]::new));
  }

  private static List<Path> tree(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.map(folder::relativize).sorted().toList();
    }
  }

  @Test
  void aNewBookLoadsAndHoldsNothingYet() {
    Path target = dir.resolve("deep/new");
    Called made = init(target);
    assertThat(made.err()).isEmpty();
    assertThat(made.code()).isEqualTo(ExitCode.DONE);
    Book book = new BookLoader().load(target);
    assertThat(book.season()).isEqualTo(2027);
    assertThat(book.fields()).isEmpty();
    assertThat(book.notes()).isEmpty();
    assertThat(target.resolve("weather")).isDirectory();
    assertThat(target.resolve("schemas/ingredient.schema.json")).isNotEmptyFile();
    assertThat(target.resolve("schemas/fields.table.json")).isNotEmptyFile();
  }

  /** As when someone works in it: what was put in its place would not be seen there. */
  @Test
  void anEmptyFolderStaysTheOneItWas() throws IOException {
    Path real = Files.createDirectory(dir.resolve("real"));
    Object key = Files.readAttributes(real, BasicFileAttributes.class).fileKey();
    assertThat(init(real).code()).isEqualTo(ExitCode.DONE);
    assertThat(Files.readAttributes(real, BasicFileAttributes.class).fileKey()).isEqualTo(key);
    assertThat(new BookLoader().load(real).season()).isEqualTo(2027);
    assertThat(dir).isDirectoryNotContaining(p -> !p.equals(real));
  }

  /** A book is shared as far as other new folders are. */
  @Test
  void aNewBookIsForWhomOtherFoldersAre() throws IOException {
    Path other = Files.createDirectory(dir.resolve("other"));
    Path target = dir.resolve("new");
    init(target);
    PosixFileAttributeView view = Files.getFileAttributeView(target, PosixFileAttributeView.class);
    assumeTrue(view != null);
    assertThat(Files.getPosixFilePermissions(target))
        .isEqualTo(Files.getPosixFilePermissions(other));
  }

  /** Its remarks say that these are the values used when a rule is left out; so they must be. */
  @Test
  void theHouseRulesWrittenInItAreThoseUsedWithoutThem() throws IOException {
    Path target = dir.resolve("new");
    init(target);
    HouseRules written = new BookLoader().load(target).house();
    Path yaml = target.resolve("book.yaml");
    String text = Files.readString(yaml);
    Files.writeString(yaml, text.substring(0, text.indexOf("houseRules:")));
    assertThat(new BookLoader().load(target).house()).isEqualTo(written);
  }

  @Test
  void theDemoBookIsCopiedWhole() throws IOException {
    Path target = dir.resolve("demo");
    assertThat(init(target, "--demo").code()).isEqualTo(ExitCode.DONE);
    Path demo = ProgramProcess.CLI.resolveSibling("demo-data");
    assertThat(tree(target)).isEqualTo(tree(demo));
    for (Path p : tree(demo)) {
      if (Files.isRegularFile(demo.resolve(p))) {
        assertThat(target.resolve(p)).hasSameBinaryContentAs(demo.resolve(p));
      }
    }
  }

  /** The list by which the jar knows its files is the folder. */
  @Test
  void theListsNameEveryFileAndNoOther() throws IOException {
    Path resources = ProgramProcess.CLI.resolve("src/main/resources/org/swathbook/cli");
    assertThat(Files.readAllLines(resources.resolve("book-files.txt")))
        .isEqualTo(files(resources.resolve("book")));
    assertThat(Files.readAllLines(resources.resolve("demo-files.txt")))
        .isEqualTo(files(ProgramProcess.CLI.resolveSibling("demo-data")));
  }

  private static List<String> files(Path folder) throws IOException {
    return tree(folder).stream()
        .filter(p -> Files.isRegularFile(folder.resolve(p)))
        .map(p -> p.toString().replace('\\', '/'))
        .sorted()
        .toList();
  }

  @Test
  void whatIsThereIsNeverTouched() throws IOException {
    Path target = dir.resolve("old");
    Files.createDirectories(target);
    Files.writeString(target.resolve("mine.txt"), "mine");
    Called refused = init(target);
    assertThat(refused.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(refused.err()).contains("holds something already; name a new folder");
    assertThat(tree(dir)).containsExactly(Path.of(""), Path.of("old"), Path.of("old/mine.txt"));
    Files.delete(target.resolve("mine.txt"));
    assertThat(init(target).code()).isEqualTo(ExitCode.DONE);
    assertThat(init(target.resolve("book.yaml")).code()).isEqualTo(ExitCode.WRONG_INPUT);
  }

  @Test
  void theSeasonAheadIsTheNextYearsFromSeptemberOn() {
    assertThat(NewBook.seasonAhead(LocalDate.of(2026, 8, 31))).isEqualTo(2026);
    assertThat(NewBook.seasonAhead(LocalDate.of(2026, 9, 1))).isEqualTo(2027);
    assertThat(NewBook.seasonAhead(LocalDate.of(2027, 1, 15))).isEqualTo(2027);
  }
}
