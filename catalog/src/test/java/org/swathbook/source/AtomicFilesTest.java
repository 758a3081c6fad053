package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AtomicFilesTest {

  @Test
  void writesAndReplacesAndLeavesNothingBeside(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("a.csv");
    AtomicFiles.write(file, Reading.bytes("one"));
    AtomicFiles.write(file, Reading.bytes("two"));
    assertThat(file).usingCharset(StandardCharsets.UTF_8).hasContent("two");
    assertThat(folder).isDirectoryNotContaining(p -> !p.equals(file));
  }

  @Test
  void whatAKilledWriterLeftIsNoHindrance(@TempDir Path folder) throws IOException {
    Files.writeString(folder.resolve(".a.csv.0.tmp"), "half a");
    AtomicFiles.write(folder.resolve("a.csv"), Reading.bytes("whole"));
    assertThat(folder.resolve("a.csv")).usingCharset(StandardCharsets.UTF_8).hasContent("whole");
  }

  @Test
  void aFileThatCannotBeReplacedStaysAsItWas(@TempDir Path folder) throws IOException {
    Path inTheWay = Files.createDirectories(folder.resolve("a.csv").resolve("full"));
    assertThatThrownBy(() -> AtomicFiles.write(folder.resolve("a.csv"), Reading.bytes("x")))
        .isInstanceOf(IOException.class);
    assertThat(inTheWay).exists();
    assertThat(folder).isDirectoryNotContaining(p -> p.toString().endsWith(".tmp"));
    assertThatThrownBy(() -> AtomicFiles.write(folder.resolve("no/b.csv"), Reading.bytes("x")))
        .isInstanceOf(IOException.class);
  }

  /** The second has no folder to be written to. */
  @Test
  void ofSeveralFilesAllAreWrittenOrNone(@TempDir Path folder) throws IOException {
    Path one = folder.resolve("one.csv");
    Path other = folder.resolve("inner/other.csv");
    Map<Path, byte[]> files = new LinkedHashMap<>();
    files.put(one, Reading.bytes("one"));
    files.put(other, Reading.bytes("other"));
    assertThatThrownBy(() -> AtomicFiles.writeAll(files))
        .isInstanceOf(IOException.class)
        .isNotInstanceOf(PartlyWrittenException.class);
    assertThat(folder).isEmptyDirectory();
    Files.createDirectory(folder.resolve("inner"));
    AtomicFiles.writeAll(files);
    assertThat(one).usingCharset(StandardCharsets.UTF_8).hasContent("one");
    assertThat(other).usingCharset(StandardCharsets.UTF_8).hasContent("other");
  }

  /** The name of the second is so long that nothing can be written beside it. */
  @Test
  void whatCannotBeWrittenBesideItsPlaceLeavesNothing(@TempDir Path folder) {
    Map<Path, byte[]> files = new LinkedHashMap<>();
    files.put(folder.resolve("one.csv"), Reading.bytes("one"));
    files.put(folder.resolve("n".repeat(250)), Reading.bytes("other"));
    assertThatThrownBy(() -> AtomicFiles.writeAll(files))
        .isInstanceOf(IOException.class)
        .isNotInstanceOf(PartlyWrittenException.class);
    assertThat(folder).isEmptyDirectory();
  }

  /** A disk that fails once the first file is in its place. */
  @Test
  void whatIsWrittenInSpiteOfAllIsNamed(@TempDir Path folder) throws IOException {
    Path one = folder.resolve("one.csv");
    Path other = folder.resolve("other.csv");
    Map<Path, byte[]> files = new LinkedHashMap<>();
    files.put(one, Reading.bytes("one"));
    files.put(other, Reading.bytes("other"));
    AtomicFiles.Disk failing = new FailingDisk(other);
    assertThatThrownBy(() -> AtomicFiles.writeAll(files, failing))
        .isInstanceOfSatisfying(
            PartlyWrittenException.class, e -> assertThat(e.written()).containsExactly(one));
    assertThat(one).usingCharset(StandardCharsets.UTF_8).hasContent("one");
    assertThat(folder).isDirectoryNotContaining(p -> !p.equals(one));
    NewFiles told = new NewFiles().put(one, "the one", "1").put(other, "the other", "2");
    assertThatThrownBy(() -> told.write(failing))
        .isInstanceOf(ProblemsException.class)
        .hasMessage(
            "the other:1:1: the file cannot be written, though others are already: the one; check"
                + " the folder and the disk, then write all again with --force");
  }

  /** Lets nothing take one place. */
  private record FailingDisk(Path place) implements AtomicFiles.Disk {
    @Override
    public void force(FileChannel folder) {}

    @Override
    public void move(Path beside, Path place) throws IOException {
      if (place.getFileName().equals(this.place.getFileName())) {
        throw new IOException("Input/output error");
      }
      AtomicFiles.DISK.move(beside, place);
    }
  }

  /** The new bytes stand there by then, so the message must not say that nothing was written. */
  @Test
  void aDiskThatFailsAfterTheMoveIsTold(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("a.csv");
    AtomicFiles.write(file, Reading.bytes("one"));
    assertThatThrownBy(
            () ->
                AtomicFiles.writeAll(
                    Map.of(file, Reading.bytes("two")),
                    f -> {
                      throw new IOException("Input/output error");
                    }))
        .isInstanceOfSatisfying(
            NotDurableException.class,
            e ->
                assertThat(e.words())
                    .isEqualTo(
                        "is written, but the disk did not confirm that it outlives a loss of power"
                            + " (Input/output error)"));
    assertThat(file).usingCharset(StandardCharsets.UTF_8).hasContent("two");
    assertThat(folder).isDirectoryNotContaining(p -> !p.equals(file));
  }

  @Test
  void aFileSystemWithoutSuchAnOrderIsNoFault(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("a.csv");
    for (String said : new String[] {"Invalid argument", "Bad file descriptor"}) {
      AtomicFiles.writeAll(
          Map.of(file, Reading.bytes(said)),
          f -> {
            throw new IOException(said);
          });
      assertThat(file).usingCharset(StandardCharsets.UTF_8).hasContent(said);
    }
  }

  @Test
  void aReaderSeesTheOldBytesOrTheNewAndNeverAMix(@TempDir Path folder) throws Exception {
    Path file = folder.resolve("a.bin");
    byte[] old = new byte[100_000];
    byte[] fresh = new byte[100_000];
    Arrays.fill(fresh, (byte) 1);
    AtomicFiles.write(file, old);
    AtomicBoolean done = new AtomicBoolean();
    Thread writer =
        new Thread(
            () -> {
              try {
                for (int i = 0; i < 40; i++) {
                  AtomicFiles.write(file, i % 2 == 0 ? fresh : old);
                }
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              } finally {
                done.set(true);
              }
            });
    writer.start();
    int reads = 0;
    while (!done.get()) {
      byte[] seen = Files.readAllBytes(file);
      assertThat(Arrays.equals(seen, old) || Arrays.equals(seen, fresh)).isTrue();
      reads++;
    }
    writer.join();
    assertThat(reads).isPositive();
  }
}
