package org.swathbook.book.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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
    assertThatThrownBy(() -> ProgramWriter.writeAll(two(paths), paths, false))
        .isInstanceOf(ProblemsException.class)
        .hasMessageStartingWith("programs/nd-2.yaml:1:1: there is a program of this name already");
    assertThat(mine.getParent()).isDirectoryNotContaining(p -> !p.equals(mine));
    ProgramWriter.writeAll(two(paths), paths, true);
    assertThat(mine.resolveSibling("nd-1.yaml")).exists();
    assertThat(ProgramReader.read(mine, paths, BOOK)).isEqualTo(demo());
  }

  /** A folder in the place of the second shows only when the first stands. */
  @Test
  void whatIsWrittenInSpiteOfAllIsNamed() throws IOException {
    BookPaths paths = new BookPaths(dir);
    Files.createDirectories(dir.resolve("programs/nd-2.yaml/full"));
    assertThatThrownBy(() -> ProgramWriter.writeAll(two(paths), paths, true))
        .isInstanceOf(ProblemsException.class)
        .hasMessage(
            "programs/nd-2.yaml:1:1: the file cannot be written, though others are already:"
                + " programs/nd-1.yaml; check the folder and the disk, then keep all again with"
                + " --force");
  }

  /** A file where the folder is to be. */
  @Test
  void allThatCannotBeWrittenAreTold() throws IOException {
    BookPaths paths = new BookPaths(dir);
    Files.writeString(dir.resolve("programs"), "no folder");
    assertThatThrownBy(() -> ProgramWriter.writeAll(two(paths), paths, false))
        .isInstanceOf(ProblemsException.class)
        .hasMessageContaining(
            "programs/nd-1.yaml:1:1: the file cannot be written, nor is any other")
        .hasMessageContaining(
            "programs/nd-2.yaml:1:1: the file cannot be written, nor is any other");
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
