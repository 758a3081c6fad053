package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** What stands in the way of a file is told before anything is written, and is left as it is. */
class NewFilesTest {
  @TempDir Path dir;

  private static void refused(Path file, String why) {
    assertThatThrownBy(() -> NewFiles.check(file, "x.html"))
        .isInstanceOf(ProblemsException.class)
        .hasMessage("x.html:1:1: " + why);
    assertThatThrownBy(() -> new NewFiles().put(file, "x.html", "new").write())
        .isInstanceOf(ProblemsException.class)
        .hasMessage("x.html:1:1: " + why);
  }

  @Test
  void foldersAreNoFiles() throws IOException {
    Path folder = Files.createDirectory(dir.resolve("folder"));
    refused(folder, "this is a folder; name a file, or take the folder away");
    refused(folder.resolve(".."), "this is a folder; name a file, or take the folder away");
    Path file = Files.writeString(dir.resolve("file"), "old");
    refused(file.resolve("x.html"), "its folder is none, but a file; name another folder");
    assertThatThrownBy(() -> NewFiles.check(dir.resolve("no/x.html"), "x"))
        .hasMessage("x:1:1: its folder does not exist; make the folder, or name another");
    Problems problems = new Problems();
    NewFiles.checkWithFolders(dir.resolve("a/b/x.html"), "x", problems);
    assertThat(problems.isEmpty()).isTrue();
    NewFiles.checkWithFolders(file.resolve("a/b/x.html"), "x", problems);
    assertThat(problems.report()).hasSize(1).first().asString().contains("folder cannot be made");
    assertThat(dir.resolve("a")).doesNotExist();
  }

  /** As {@code /dev/null}, which a move would turn into a file for whoever may do anything. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void aDeviceStaysADevice() throws Exception {
    Path pipe = dir.resolve("pipe");
    assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    Path link = Files.createSymbolicLink(dir.resolve("link"), pipe);
    for (Path p : new Path[] {pipe, link}) {
      refused(p, "this is a device or a pipe, and no file; name a file");
    }
    // Only asked of, since a mistake here would harm the machine.
    assertThatThrownBy(() -> NewFiles.check(Path.of("/dev/null"), "x"))
        .hasMessageContaining("this is a device or a pipe");
    assertThat(Files.isRegularFile(pipe)).isFalse();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkStaysALinkAndItsFileIsWritten() throws IOException {
    Path real = Files.writeString(Files.createDirectory(dir.resolve("kept")).resolve("r"), "old");
    Path link = Files.createSymbolicLink(dir.resolve("link"), Path.of("kept/r"));
    new NewFiles().put(link, "link", "new").write();
    assertThat(link).isSymbolicLink();
    assertThat(real).hasContent("new");
    try (Stream<Path> beside = Files.list(real.getParent())) {
      assertThat(beside).containsExactly(real);
    }
    Path lost = Files.createSymbolicLink(dir.resolve("lost"), dir.resolve("nothing"));
    refused(lost, "the link leads nowhere; take it away, or name another file");
    Path round = dir.resolve("round");
    Files.createSymbolicLink(round, round);
    refused(round, "the link leads nowhere; take it away, or name another file");
    assertThat(lost).isSymbolicLink();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void whatIsReadOnlyIsLeftAlone() throws IOException {
    Path file = Files.writeString(dir.resolve("file"), "old");
    Path link = Files.createSymbolicLink(dir.resolve("link"), file);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("r--r--r--"));
    refused(file, "the file is read-only; allow writing to it, or name another");
    refused(link, "the file is read-only; allow writing to it, or name another");
    assertThat(file).hasContent("old");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-r--r--"));
    new NewFiles().put(link, "link", "new").write();
    assertThat(file).hasContent("new");
  }

  @Test
  void twoNamesOfOneFileAreNoticed() throws IOException {
    Files.createDirectory(dir.resolve("in"));
    Path one = dir.resolve("x.html");
    Path other = dir.resolve("in/../x.html");
    assertThat(NewFiles.isSame(one, other)).isTrue();
    assertThat(NewFiles.isSame(one, dir.resolve("in/x.html"))).isFalse();
    assertThatThrownBy(() -> new NewFiles().put(one, "a", "1").put(other, "b", "2").write())
        .hasMessage("b:1:1: two files are to be written there; give each its own name");
    NewFiles same = new NewFiles().put(one, "a", "1");
    assertThatThrownBy(() -> same.putAll(new NewFiles().put(one, "b", "2")).write())
        .hasMessage("b:1:1: two files are to be written there; give each its own name");
    assertThat(one).doesNotExist();
    Files.writeString(one, "old");
    assertThat(NewFiles.isSame(one, other)).isTrue();
  }

  /** The name of the second is so long that nothing can be written beside it. */
  @Test
  void ofSeveralAllAreWrittenOrNone() throws IOException {
    Path one = Files.writeString(dir.resolve("one"), "old");
    Path longest = dir.resolve("n".repeat(250));
    assertThatThrownBy(() -> new NewFiles().put(one, "one", "1").put(longest, "n", "2").write())
        .hasMessageMatching(
            "n:1:1: the file cannot be written \\(.+\\), nor is any other; check the folder and the"
                + " disk\\R"
                + "one:1:1: the file cannot be written \\(.+\\), nor is any other; .*");
    assertThat(one).hasContent("old");
  }
}
