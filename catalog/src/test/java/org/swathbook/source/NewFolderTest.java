package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class NewFolderTest {
  @TempDir Path dir;

  private static void two(Path folder) throws IOException {
    Files.writeString(folder.resolve("a"), "1");
    Files.createDirectory(folder.resolve("b"));
  }

  /** As on a disk that fills up after some files; the next try finds the place free. */
  @Test
  void whatFailsOnTheWayLeavesNothing() throws IOException {
    Path empty = Files.createDirectory(dir.resolve("empty"));
    for (Path target : new Path[] {dir.resolve("new"), empty}) {
      assertThatThrownBy(
              () ->
                  NewFolder.write(
                      target,
                      folder -> {
                        two(folder);
                        throw new IOException("No space left on device");
                      }))
          .hasMessage("No space left on device");
      assertThat(dir).isDirectoryNotContaining(p -> !p.equals(empty));
      assertThat(empty).isEmptyDirectory();
      assertThat(NewFolder.isFree(target)).isTrue();
      NewFolder.write(target, NewFolderTest::two);
      assertThat(target.resolve("a")).hasContent("1");
      assertThat(target.resolve("b")).isDirectory();
      assertThat(target).isDirectoryNotContaining(p -> p.toString().contains(".new-"));
      assertThat(NewFolder.isFree(target)).isFalse();
      Files.delete(target.resolve("a"));
      Files.delete(target.resolve("b"));
      if (!target.equals(empty)) {
        Files.delete(target);
      }
    }
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkToAnEmptyFolderStaysALink() throws IOException {
    Path real = Files.createDirectory(dir.resolve("real"));
    Path link = Files.createSymbolicLink(dir.resolve("link"), real);
    NewFolder.write(link, NewFolderTest::two);
    assertThat(link).isSymbolicLink();
    assertThat(real.resolve("a")).hasContent("1");
  }
}
