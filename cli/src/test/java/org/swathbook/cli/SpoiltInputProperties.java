package org.swathbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tag;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;

/**
 * Every format of a book and the command line, spoilt at random: each input is read, or it ends in
 * plain problems with file, line and column and exit code 2. The numbers drawn say which mistakes
 * are made; a failure names the input, so nothing is gained by looking for smaller numbers.
 */
@SuppressWarnings("NullAway.Init") // Filled before the container's first property.
class SpoiltInputProperties {
  private static Path folder = Path.of("");
  private static FuzzedBook book;
  private static FuzzedCalls calls;

  @BeforeContainer
  static void makeTheBook() throws IOException {
    folder = Files.createTempDirectory("spoilt");
    book = new FuzzedBook(folder);
    calls = new FuzzedCalls(book);
    assertThat(book.refusedThoughSound()).isEmpty();
  }

  @AfterContainer
  static void removeTheBook() throws IOException {
    book.close();
    try (Stream<Path> all = Files.walk(folder)) {
      all.sorted(Comparator.reverseOrder()).forEach(p -> assertThat(p.toFile().delete()).isTrue());
    }
  }

  private static void lawful(Stream<FuzzedBook.Failure> failures) {
    assertThat(failures.toList()).isEmpty();
  }

  private static String kind(long seed) {
    List<String> kinds = book.kinds();
    return kinds.get((int) Math.floorMod(seed, (long) kinds.size()));
  }

  private interface Spoiling {
    Stream<FuzzedBook.Failure> with(long seed) throws IOException;
  }

  private static void hold(Spoiling spoiling, long seed) {
    try {
      lawful(spoiling.with(seed));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF)
  void aSpoiltFileIsReadOrRefused(@ForAll long seed) {
    hold(s -> book.readSpoilt(kind(s), s), seed);
  }

  @Property(tries = 60, shrinking = ShrinkingMode.OFF)
  void aCommandOnASpoiltFileIsDoneOrRefused(@ForAll long seed) {
    hold(s -> book.spoil(kind(s), s), seed);
  }

  @Property(tries = 60, shrinking = ShrinkingMode.OFF)
  void aSpoiltCallIsDoneOrRefused(@ForAll long seed) {
    hold(s -> calls.spoil(s), seed);
  }

  @Tag("slow")
  @Property(tries = 80_000, shrinking = ShrinkingMode.OFF)
  void manySpoiltFiles(@ForAll long seed) {
    hold(s -> book.readSpoilt(kind(s), s), seed);
  }

  @Tag("slow")
  @Property(tries = 15_000, shrinking = ShrinkingMode.OFF)
  void manyCommandsOnSpoiltFiles(@ForAll long seed) {
    hold(s -> book.spoil(kind(s), s), seed);
  }

  @Tag("slow")
  @Property(tries = 6_000, shrinking = ShrinkingMode.OFF)
  void manySpoiltCalls(@ForAll long seed) {
    hold(s -> calls.spoil(s), seed);
  }

  /**
   * With streams, exit codes and everything else of a program that a shell starts. What a process
   * adds is the same for every input, and each costs as much as twenty calls.
   */
  @Tag("slow")
  @Property(tries = 100, shrinking = ShrinkingMode.OFF)
  void spoiltFilesAndCallsAsProcesses(@ForAll long seed) {
    hold(s -> calls.spoilInProcess(s), seed);
  }
}
