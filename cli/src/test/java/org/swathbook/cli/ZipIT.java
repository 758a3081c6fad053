package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.swathbook.cli.ProgramProcess.CLI;
import static org.swathbook.cli.ProgramProcess.run;

import java.io.File;
import java.net.URI;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.ArrayList;
import java.util.Enumeration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.swathbook.cli.ProgramProcess.Result;
import org.swathbook.cli.terminal.ExitCode;

/** What is given to people: it runs where it is unpacked, and says what is in it. */
class ZipIT {
  private static final String NAME = "swathbook-" + System.getProperty("swathbook.version");
  private static final Path ZIP = CLI.resolve("target").resolve(NAME + ".zip");
  private static final Set<String> OURS = Set.of("catalog", "planner-core");

  @TempDir Path dir;

  /** Unpacks with the permissions that the archive has, as every unpacker on such a system does. */
  private Path unpacked(String folder) throws Exception {
    Path to = Files.createDirectories(dir.resolve(folder));
    URI uri = URI.create("jar:" + ZIP.toUri());
    try (FileSystem zip =
            FileSystems.newFileSystem(uri, Map.of("enablePosixFileAttributes", "true"));
        Stream<Path> all = Files.walk(zip.getPath("/"))) {
      for (Path p : (Iterable<Path>) all::iterator) {
        Path target = to.resolve(p.toString().substring(1));
        if (Files.isDirectory(p)) {
          Files.createDirectories(target);
        } else {
          Files.copy(p, target);
          Files.setPosixFilePermissions(target, Files.getPosixFilePermissions(p));
        }
      }
    }
    return to.resolve(NAME);
  }

  /** Where the system can do it, with no network at all. */
  private Result start(Path program, String... words) throws Exception {
    List<String> command = new ArrayList<>();
    if (Files.isExecutable(Path.of("/usr/bin/unshare"))
        && run(dir, Map.of(), List.of("/usr/bin/unshare", "-rn", "true")).code() == 0) {
      command.addAll(List.of("/usr/bin/unshare", "-rn"));
    }
    command.add(program.resolve("bin/swathbook").toString());
    command.addAll(List.of(words));
    return run(dir, Map.of("JAVA_HOME", System.getProperty("java.home")), command);
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void itRunsWhereItIsUnpackedWithoutANetwork() throws Exception {
    Path program = unpacked("a folder (of mine)");
    assertThat(program.resolve("bin/swathbook.cmd")).exists();
    assertThat(Files.getPosixFilePermissions(program.resolve("bin/swathbook")))
        .contains(PosixFilePermission.OWNER_EXECUTE, PosixFilePermission.OTHERS_EXECUTE);
    assertThat(start(program, "--version"))
        .isEqualTo(
            new Result(0, NAME.replace("swathbook-", "swathbook ") + System.lineSeparator(), ""));
    Path book = dir.resolve("our book");
    Result made = start(program, "init", book.toString(), "--demo");
    assertThat(made.code()).isZero();
    assertThat(made.out()).contains("--book \"" + book + "\"");
    Path small = SmallBook.of(dir.resolve("small one"), "ND-1");
    Result plan =
        start(
            program,
            "plan",
            "ND-1",
            "--effort",
            "quick",
            "--book",
            small.toString(),
            "--today",
            "2026-11-25");
    assertThat(plan.code()).as(plan.err()).isZero();
    assertThat(plan.out()).contains("ND-1").contains("The label is the law");
    assertThat(program.resolve("target")).doesNotExist();
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void halfOfItSaysThatItIsNotWhole() throws Exception {
    Path program = dir.resolve("half");
    Files.createDirectories(program.resolve("bin"));
    Files.copy(ProgramProcess.LAUNCHER, program.resolve("bin/swathbook"));
    assertThat(program.resolve("bin/swathbook").toFile().setExecutable(true)).isTrue();
    Result result = start(program, "--version");
    assertThat(result.code()).isEqualTo(ExitCode.WRONG_INPUT);
    assertThat(result.out()).isEmpty();
    assertThat(result.err()).contains("unpack it again, whole").hasLineCount(1);
  }

  /**
   * A date of today, or files in the order of a disk, would make other bytes of the same sources.
   */
  @Test
  void nothingInItTellsWhenItWasMade() throws Exception {
    try (ZipFile zip = new ZipFile(ZIP.toFile())) {
      Enumeration<? extends ZipEntry> entries = zip.entries();
      List<String> jars = new ArrayList<>();
      while (entries.hasMoreElements()) {
        ZipEntry entry = entries.nextElement();
        assertThat(entry.getTimeLocal()).as(entry.getName()).hasToString("2025-01-01T00:00");
        if (entry.getName().startsWith(NAME + "/lib/") && !entry.isDirectory()) {
          jars.add(entry.getName());
        }
      }
      assertThat(jars).isSorted().isNotEmpty();
    }
  }

  /** A guide that links to another one brings it along. */
  @Test
  void everyGuideInItFindsWhatItLinksTo() throws Exception {
    Pattern link = Pattern.compile("\\]\\(([^)#:]+)(?:#[^)]*)?\\)");
    List<String> links = new ArrayList<>();
    try (ZipFile zip = new ZipFile(ZIP.toFile())) {
      for (ZipEntry guide : zip.stream().filter(e -> e.getName().endsWith(".md")).toList()) {
        String text = new String(zip.getInputStream(guide).readAllBytes(), UTF_8);
        link.matcher(text)
            .results()
            .map(
                m ->
                    Path.of(guide.getName())
                        .resolveSibling(m.group(1))
                        .normalize()
                        .toString()
                        .replace(File.separatorChar, '/'))
            .forEach(links::add);
      }
      assertThat(links).isNotEmpty().allSatisfy(l -> assertThat(zip.getEntry(l)).as(l).isNotNull());
    }
  }

  /** Each library by its file, with its licence; a new or another one has to be looked at. */
  @Test
  void everyLibraryIsListedWithItsLicence() throws Exception {
    Map<String, String> listed =
        Files.readAllLines(CLI.resolve("src/main/assembly/THIRD-PARTY.md"), UTF_8).stream()
            .filter(l -> l.matches("\\| \\S+\\.jar \\|.*"))
            .map(l -> l.split("\\s*\\|\\s*"))
            .collect(Collectors.toMap(c -> c[1], c -> c[2]));
    Set<String> bundled = new TreeSet<>();
    try (ZipFile zip = new ZipFile(ZIP.toFile())) {
      zip.stream()
          .map(ZipEntry::getName)
          .filter(n -> n.endsWith(".jar") && n.contains("/lib/"))
          .map(n -> n.substring(n.lastIndexOf('/') + 1))
          .filter(n -> OURS.stream().noneMatch(o -> n.startsWith(o + "-")))
          .forEach(bundled::add);
      assertThat(zip.getEntry(NAME + "/THIRD-PARTY.md")).isNotNull();
      assertThat(zip.getEntry(NAME + "/LICENSE")).isNotNull();
      assertThat(zip.getEntry(NAME + "/README.md")).isNotNull();
    }
    assertThat(listed.keySet()).containsExactlyInAnyOrderElementsOf(bundled);
    assertThat(listed.values())
        .allSatisfy(l -> assertThat(l).matches("Apache-2\\.0|MIT|EPL-2\\.0 .*"));
  }
}
