package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.KilledAndFullTest.Ended;
import org.swathbook.cli.terminal.ExitCode;

/**
 * Every call that writes anything, each as a process: on a disk that takes not one byte more, on
 * one that is read-only, and killed at any moment. What was there stays as it was, what is new is
 * there whole or not at all, and nothing is left beside it.
 */
class EveryWriteTest {
  private static final String TODAY = "2027-06-10";
  private static final String OBSERVATION_DAY = "2027-06-22";

  /** Stands for a folder outside the book, where pages go. */
  private static final String OUT = "OUT";

  @TempDir Path dir;
  private final AtomicInteger books = new AtomicInteger();

  /** A name, and the call with its day. */
  private static Map<String, List<String>> calls() {
    Map<String, List<String>> out = new LinkedHashMap<>();
    out.put("a pass", of(TODAY, "record", "nd-1-june"));
    out.put("a row amended", of(TODAY, "record", "--corrects", "A-26-004/1", "--acres", "70"));
    out.put("a row made void", of(TODAY, "record", "--corrects", "A-26-004/1", "--void"));
    out.put("a table of passes", of(TODAY, "record", "--import", OUT + "/sprayed.csv"));
    out.put("a plan kept", of("2027-03-01", "plan", "ND-1", "--save"));
    out.put("a plan as a page", of("2027-03-01", "plan", "ND-1", "--html", OUT + "/p.html"));
    out.put("a handout", of("2027-03-01", "plan", "ND-1", "--handout", OUT + "/h.html"));
    out.put("a season", of(TODAY, "season", "nd-1-two-layers", "--html", OUT + "/s.html"));
    out.put("a verdict", of(TODAY, "check", "nd-1-june", "--html", OUT + "/c.html"));
    out.put("a load sheet", of(TODAY, "load", "nd-1-june", "--html", OUT + "/l.html"));
    out.put("an audit", of(TODAY, "audit", "--html", OUT + "/a.html"));
    out.put("a look", of(OBSERVATION_DAY, "escapes", "nd-1-june", "--html", OUT + "/e.html"));
    out.put("a suspicion", of(OBSERVATION_DAY, "escapes", "nd-1-june", "--watch"));
    out.put("an order as a table", of("2027-03-01", "order", "--csv", OUT + "/o.csv"));
    out.put("an order as a workbook", of("2027-03-01", "order", "--xlsx", OUT + "/o.xlsx"));
    out.put("a new book", List.of("init", OUT + "/new", "--today", TODAY));
    return out;
  }

  /** Those that are tried in every build; the others, which take as long again, in the slow one. */
  private static final List<String> QUICK = List.of("a row amended", "a suspicion", "a new book");

  private static List<String> of(String today, String... words) {
    List<String> out = new ArrayList<>(List.of(words));
    out.addAll(List.of("--book", "BOOK", "--today", today));
    return out;
  }

  private Path place() throws IOException {
    Path place = Files.createDirectory(dir.resolve("b" + books.getAndIncrement()));
    Path book = SmallBook.of(place.resolve("book"), "ND-1", "ND-2");
    SmallBook.copyProgram(book, "nd-1-two-layers.yaml");
    Path demo = ProgramProcess.CLI.resolve("../demo-data");
    for (String file :
        List.of("mixes/nd-1-june.yaml", "observations/nd-1-june.yaml", "watch.csv")) {
      Files.createDirectories(book.resolve(file).getParent());
      Files.copy(demo.resolve(file), book.resolve(file));
    }
    Path out = Files.createDirectory(place.resolve("out"));
    Files.writeString(
        out.resolve("sprayed.csv"),
        "date,field,product,rate,unit\n2027-05-20,ND-2,glyphosate-4.5sl,32,fl oz/acre\n",
        UTF_8);
    return place;
  }

  private static String[] at(Path place, String name) {
    return calls().getOrDefault(name, List.of()).stream()
        .map(w -> w.equals("BOOK") ? place.resolve("book").toString() : w)
        .map(w -> w.startsWith(OUT + "/") ? place.resolve("out" + w.substring(3)).toString() : w)
        .toArray(String[]::new);
  }

  private static Map<String, String> all(Path place) throws IOException {
    Map<String, String> out = new TreeMap<>();
    try (Stream<Path> files = Files.walk(place)) {
      for (Path f : files.filter(Files::isRegularFile).toList()) {
        if (!f.endsWith(".applications.lock")) {
          out.put(
              place.relativize(f).toString(),
              new String(Files.readAllBytes(f), java.nio.charset.StandardCharsets.ISO_8859_1));
        }
      }
    }
    return out;
  }

  private static void refused(String name, Ended ended) {
    assertThat(ended.err()).as(name).isNotBlank().doesNotContain("Exception", "internal error");
    assertThat(ended.out()).as(name).isEmpty();
    assertThat(ended.code()).as(name).isEqualTo(ExitCode.WRONG_INPUT);
  }

  /** No file may grow by a byte; what tries to is refused by the system. */
  private void onAFullDisk(String name) throws Exception {
    Path place = place();
    Map<String, String> before = all(place);
    List<String> command = new ArrayList<>(List.of("sh", "-c", "ulimit -f 0; exec \"$@\"", "sh"));
    Path temporary = Files.createDirectory(place.resolve("temporary"));
    List<String> java = KilledAndFullTest.java(at(place, name));
    java.add(1, "-Djava.io.tmpdir=" + temporary);
    command.addAll(java);
    refused(name, KilledAndFullTest.run(command));
    assertThat(all(place)).as(name).isEqualTo(before);
    assertThat(temporary).as(name).isEmptyDirectory();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aFullDiskIsTold() throws Exception {
    for (String name : QUICK) {
      onAFullDisk(name);
    }
  }

  @Test
  @Tag("slow")
  @DisabledOnOs(OS.WINDOWS)
  void aFullDiskIsToldOfEveryWrite() throws Exception {
    besideEachOther(this::onAFullDisk);
  }

  private interface Trial {
    void of(String name) throws Exception;
  }

  /** Every write in a place of its own, two at a time: the processes take the time, not this. */
  private static void besideEachOther(Trial trial) throws Exception {
    ExecutorService two = Executors.newFixedThreadPool(2);
    try {
      List<Future<Void>> all = new ArrayList<>();
      for (String name : calls().keySet()) {
        all.add(
            two.submit(
                () -> {
                  trial.of(name);
                  return null;
                }));
      }
      for (Future<Void> f : all) {
        f.get();
      }
    } finally {
      two.shutdownNow();
    }
  }

  /** A file system mounted to be read only, which holds for whoever may do anything too. */
  private void onAReadOnlyDisk(String name) throws Exception {
    Path place = place();
    Map<String, String> before = all(place);
    String mount = "mount --bind \"$0\" \"$0\" && mount -o remount,bind,ro \"$0\" && exec \"$@\"";
    List<String> command =
        new ArrayList<>(List.of("unshare", "-rm", "sh", "-c", mount, place.toString()));
    command.addAll(KilledAndFullTest.java(at(place, name)));
    refused(name, KilledAndFullTest.run(command));
    assertThat(all(place)).as(name).isEqualTo(before);
  }

  private static boolean mayMount(Path place) throws Exception {
    return Files.isExecutable(Path.of("/usr/bin/unshare"))
        && KilledAndFullTest.run(
                    List.of(
                        "unshare",
                        "-rm",
                        "sh",
                        "-c",
                        "mount --bind \"$0\" \"$0\" && mount -o remount,bind,ro \"$0\"",
                        place.toString()))
                .code()
            == 0;
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aReadOnlyDiskIsTold() throws Exception {
    assumeThat(mayMount(dir)).isTrue();
    for (String name : QUICK) {
      onAReadOnlyDisk(name);
    }
  }

  @Test
  @Tag("slow")
  @EnabledOnOs(OS.LINUX)
  void aReadOnlyDiskIsToldOfEveryWrite() throws Exception {
    assumeThat(mayMount(dir)).isTrue();
    besideEachOther(this::onAReadOnlyDisk);
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aKilledCallLeavesAllOrNothing() throws Exception {
    kill("a suspicion", 2, new Random(1));
  }

  @Test
  @Tag("slow")
  @DisabledOnOs(OS.WINDOWS)
  void manyKilledCalls() throws Exception {
    int seed = 0;
    for (String name :
        List.of(
            "a plan kept",
            "a season",
            "a load sheet",
            "a suspicion",
            "an order as a workbook",
            "an order as a table",
            "a row amended",
            "a table of passes")) {
      kill(name, 15, new Random(seed++));
    }
  }

  private void kill(String name, int rounds, Random random) throws Exception {
    Path sound = place();
    Map<String, String> before = all(sound);
    long start = System.nanoTime();
    Ended ended = KilledAndFullTest.run(KilledAndFullTest.java(at(sound, name)));
    assertThat(ended.code()).as(name + ended.err()).isLessThan(ExitCode.WRONG_INPUT);
    long millis = TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - start);
    Map<String, String> after = all(sound);
    assertThat(after).as(name).isNotEqualTo(before);
    int written = 0;
    for (int i = 0; i < rounds; i++) {
      Path place = place();
      // Most writes come at the end of a call, so that is where most of the moments lie.
      int moment = (int) (millis * (0.3 + 0.9 * random.nextDouble()));
      KilledAndFullTest.killed(KilledAndFullTest.java(at(place, name)), moment);
      Map<String, String> left = all(place);
      left.keySet().removeIf(f -> f.endsWith(".tmp"));
      assertThat(left).as(name).isIn(before, after);
      written += left.equals(after) ? 1 : 0;
    }
    System.out.println(rounds + " kills of " + name + ", " + written + " after it had written");
  }
}
