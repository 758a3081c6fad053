package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.book.Book;
import org.swathbook.program.FieldId;
import org.swathbook.program.Program;
import org.swathbook.source.ProblemsException;
import org.swathbook.testing.DemoBook;

class ProgramWriterTest {
  private static final Book BOOK = DemoBook.BOOK;
  private static final BookPaths DEMO = new BookPaths(DemoBookTest.FOLDER);

  @TempDir Path dir;

  private static Program demo() {
    return ProgramReader.read(DEMO.find(BookPaths.Kind.PROGRAM, "nd-1-two-layers"), DEMO, BOOK);
  }

  @Test
  void theTextIsForPeople() {
    assertThat(ProgramWriter.text(demo()))
        .isEqualTo(
            """
            # The label is the law: check every product, rate, stage and interval of this program against the
            # current label of the product in hand, and against state and local rules. Values here may come
            # from memory. Only trained applicators, certified where the label says so, may apply.
            format: swathbook.program/1
            name: "Two layers, two foliar sites"
            field: ND-1
            passes:
              - at: planting
                mix:
                  - {ingredient: metribuzin, product: metribuzin-75wg, rate: 0.38 lb ai/acre}
                  - {ingredient: flumioxazin, product: flumioxazin-51wg, rate: 0.08 lb ai/acre}
              - at: 26 days after planting
                mix:
                  - {product: 2-4-d-choline-3.8sl, rate: 2.0 pt/acre}
                  - {ingredient: glufosinate-ammonium, product: glufosinate-2.34sl, rate: 0.59 lb ai/acre}
                  - {product: glyphosate-4.5sl, rate: 32.0 fl oz/acre}
                  - {ingredient: S-metolachlor, product: s-metolachlor-7.62ec, rate: 1.0 lb ai/acre}
                adjuvants:
                  - {kind: ammonium-sulfate, rate: "8.5 lb/100 gal"}
                carrier: {volume: 15.0 gal/acre}
            """);
  }

  @Test
  void writesAndReadsBack() {
    BookPaths paths = new BookPaths(dir);
    Path file = paths.programOf(demo().field());
    ProgramWriter.write(file, paths, demo(), false);
    assertThat(paths.nameOf(file)).isEqualTo("programs/nd-1.yaml");
    assertThat(ProgramReader.read(file, paths, BOOK)).isEqualTo(demo());
    assertThat(paths.find(BookPaths.Kind.PROGRAM, "nd-1")).isEqualTo(file);
  }

  @Test
  void neverWritesOverAnotherUnlessForced() throws IOException {
    BookPaths paths = new BookPaths(dir);
    Path file = paths.programOf(demo().field());
    Files.createDirectories(dir.resolve("programs"));
    Files.writeString(file, "mine");
    assertThatThrownBy(() -> ProgramWriter.write(file, paths, demo(), false))
        .isInstanceOf(ProblemsException.class)
        .hasMessage(
            "programs/nd-1.yaml:1:1: there is a program of this name already; write over it with"
                + " --force, or keep it under another name");
    assertThat(file).content().isEqualTo("mine");
    ProgramWriter.write(file, paths, demo(), true);
    assertThat(ProgramReader.read(file, paths, BOOK)).isEqualTo(demo());
  }

  private static Map<Path, Program> two(BookPaths paths) {
    Map<Path, Program> out = new LinkedHashMap<>();
    out.put(paths.programOf(new FieldId("ND-1")), demo());
    out.put(paths.programOf(new FieldId("ND-2")), demo());
    return out;
  }

  @Test
  void ofSeveralNoneIsWrittenWhereOneMayNotBe() throws IOException {
    BookPaths paths = new BookPaths(dir);
    Path mine = dir.resolve("programs/nd-2.yaml");
    Files.createDirectories(mine.getParent());
    Files.writeString(mine, "mine");
    assertThatThrownBy(() -> ProgramWriter.files(two(paths), paths, false).write())
        .isInstanceOf(ProblemsException.class)
        .hasMessageStartingWith("programs/nd-2.yaml:1:1: there is a program of this name already");
    assertThat(mine.getParent()).isDirectoryNotContaining(p -> !p.equals(mine));
    ProgramWriter.files(two(paths), paths, true).write();
    assertThat(mine.resolveSibling("nd-1.yaml")).exists();
    assertThat(ProgramReader.read(mine, paths, BOOK)).isEqualTo(demo());
  }

  /** A folder in the place of the second. */
  @Test
  void norWhereOneCannotBe() throws IOException {
    BookPaths paths = new BookPaths(dir);
    Files.createDirectories(dir.resolve("programs/nd-2.yaml/full"));
    assertThatThrownBy(() -> ProgramWriter.files(two(paths), paths, true).write())
        .isInstanceOf(ProblemsException.class)
        .hasMessageStartingWith("programs/nd-2.yaml:1:1: this is a folder; ");
    assertThat(dir.resolve("programs/nd-1.yaml")).doesNotExist();
  }

  /** A program may be a link to another of the book, but not to a file elsewhere. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkIsFollowedInsideTheBookAlone() throws IOException {
    BookPaths paths = new BookPaths(Files.createDirectory(dir.resolve("book")));
    Path file = paths.programOf(demo().field());
    Files.createDirectories(file.getParent());
    Path shared = Files.writeString(file.resolveSibling("shared.yaml"), "old");
    Files.createSymbolicLink(file, Path.of("shared.yaml"));
    ProgramWriter.write(file, paths, demo(), true);
    assertThat(file).isSymbolicLink();
    assertThat(ProgramReader.read(shared, paths, BOOK)).isEqualTo(demo());
    Path outside = Files.writeString(dir.resolve("outside.yaml"), "old");
    Files.delete(file);
    Files.createSymbolicLink(file, outside);
    assertThatThrownBy(() -> ProgramWriter.write(file, paths, demo(), true))
        .hasMessage(
            "programs/nd-1.yaml:1:1: the link leads out of the book; put the file itself into the"
                + " book");
    assertThat(outside).hasContent("old");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aReadOnlyProgramIsLeftAlone() throws IOException {
    BookPaths paths = new BookPaths(dir);
    Path file = paths.programOf(demo().field());
    Files.createDirectories(file.getParent());
    Files.writeString(file, "old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
    assertThatThrownBy(() -> ProgramWriter.checkFree(List.of(file), paths, true))
        .hasMessageStartingWith("programs/nd-1.yaml:1:1: the file is read-only; ");
    assertThatThrownBy(() -> ProgramWriter.write(file, paths, demo(), true))
        .isInstanceOf(ProblemsException.class);
    assertThat(file).hasContent("old");
  }

  /** A file where the folder is to be. */
  @Test
  void allThatCannotBeWrittenAreTold() throws IOException {
    BookPaths paths = new BookPaths(dir);
    Files.writeString(dir.resolve("programs"), "no folder");
    assertThatThrownBy(() -> ProgramWriter.files(two(paths), paths, false).write())
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(
            "programs/nd-1.yaml:1:1: its folder is none, but a file; name another folder")
        .hasMessageContaining(
            "programs/nd-2.yaml:1:1: its folder is none, but a file; name another folder");
  }

  /** A writer that was killed leaves its half beside the file, never in it. */
  @Test
  void whatAKilledWriterLeftDoesNoHarm() throws IOException {
    BookPaths paths = new BookPaths(dir);
    Path file = paths.programOf(demo().field());
    Files.createDirectories(dir.resolve("programs"));
    Path left = dir.resolve("programs").resolve(".nd-1.yaml.0.tmp");
    Files.write(left, "format: swath".getBytes(StandardCharsets.UTF_8));
    ProgramWriter.write(file, paths, demo(), false);
    assertThat(ProgramReader.read(file, paths, BOOK)).isEqualTo(demo());
    try (Stream<Path> all = Files.list(dir.resolve("programs"))) {
      List<Path> files = all.sorted().toList();
      assertThat(files).containsExactly(left, file);
    }
    assertThatThrownBy(() -> paths.find(BookPaths.Kind.PROGRAM, "nd-2"))
        .hasMessage(
            "nd-2:1:1: there is no such file, and no program of this name in the book; did you mean"
                + " 'nd-1'?");
  }
}
