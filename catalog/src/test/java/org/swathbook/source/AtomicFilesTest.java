package org.swathbook.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
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

  /** The second has no folder to be written to, as a disk that fills up has no room for it. */
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

  /** What stands where the second is to go cannot be replaced, which shows only in the end. */
  @Test
  void whatIsWrittenInSpiteOfAllIsNamed(@TempDir Path folder) throws IOException {
    Path one = folder.resolve("one.csv");
    Path inTheWay = folder.resolve("other.csv");
    Files.createDirectories(inTheWay.resolve("full"));
    Map<Path, byte[]> files = new LinkedHashMap<>();
    files.put(one, Reading.bytes("one"));
    files.put(inTheWay, Reading.bytes("other"));
    assertThatThrownBy(() -> AtomicFiles.writeAll(files))
        .isInstanceOfSatisfying(
            PartlyWrittenException.class, e -> assertThat(e.written()).containsExactly(one));
    assertThat(one).usingCharset(StandardCharsets.UTF_8).hasContent("one");
    assertThat(folder).isDirectoryNotContaining(p -> p.toString().endsWith(".tmp"));
  }

  /** The new bytes stand there by then, so the message must not say that nothing was written. */
  @Test
  void aDiskThatFailsAfterTheMoveIsTold(@TempDir Path folder) throws IOException {
    Path file = folder.resolve("a.csv");
    AtomicFiles.write(file, Reading.bytes("one"));
    assertThatThrownBy(
            () ->
                AtomicFiles.write(
                    file,
                    Reading.bytes("two"),
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
      AtomicFiles.write(
          file,
          Reading.bytes(said),
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
