package org.swathbook.source;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;

/**
 * What one call writes, all files or none. Whatever goes wrong is told as problems of the files, by
 * the names under which people know them.
 */
public final class NewFiles {
  private static final String SEE_TO_IT = "check the folder and the disk";

  private final String ifInDoubt;
  private final Map<Path, byte[]> contents = new LinkedHashMap<>();
  private final Map<Path, String> names = new LinkedHashMap<>();
  private final Problems twice = new Problems();

  public NewFiles() {
    this("check the disk, then call again");
  }

  /**
   * Files of which something special is to be said should the disk not confirm them.
   *
   * @param ifInDoubt what to do then
   */
  public NewFiles(String ifInDoubt) {
    this.ifInDoubt = ifInDoubt;
  }

  /**
   * Looks before the work whether a file can be written, over what is there if there is something.
   *
   * @param shown name of the file for people
   * @throws ProblemsException when it cannot, or must not: a folder, a device, a read-only file
   */
  public static void check(Path file, String shown) {
    try {
      WritePlace.of(file);
    } catch (NotWritableException e) {
      throw ProblemsException.of(e.problem(shown));
    }
  }

  /** The same of a file whose folder is made when it is lacking. */
  public static void checkWithFolders(Path file, String shown, Problems problems) {
    try {
      WritePlace.checkWithFolders(file);
    } catch (NotWritableException e) {
      problems.add(e.problem(shown));
    }
  }

  /** Whether two names lead to the same file, be it there or not. */
  public static boolean isSame(Path a, Path b) {
    return placeOf(a).equals(placeOf(b));
  }

  private static Path placeOf(Path file) {
    try {
      return WritePlace.of(file);
    } catch (NotWritableException e) {
      return file.toAbsolutePath().normalize();
    }
  }

  /**
   * Takes a file in; the last is the last to take its place.
   *
   * @param shown its name for people
   */
  public NewFiles put(Path file, String shown, byte[] content) {
    if (contents.put(file, content.clone()) != null) {
      twice.add(WritePlace.twice(file).problem(shown));
    }
    names.put(file, shown);
    return this;
  }

  /** Takes a text in. */
  public NewFiles put(Path file, String shown, String text) {
    return put(file, shown, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Takes all files of another in. */
  public NewFiles putAll(NewFiles others) {
    others.contents.forEach((f, c) -> put(f, others.shown(f), c));
    twice.addAll(others.twice.sorted());
    return this;
  }

  /** Names for people, in the order of writing. */
  public List<String> shown() {
    return List.copyOf(names.values());
  }

  private String shown(Path file) {
    return Objects.requireNonNull(names.get(file));
  }

  /**
   * Writes all files, or none; folders that are lacking are made.
   *
   * @throws ProblemsException when they cannot be written; should some have been written after all,
   *     or the disk not confirm what was, it says so
   */
  public void write() {
    write(AtomicFiles.DISK);
  }

  void write(AtomicFiles.Disk disk) {
    twice.throwIfAny();
    Problems problems = new Problems();
    names.forEach((file, name) -> checkWithFolders(file, name, problems));
    problems.throwIfAny();
    try {
      for (Path file : contents.keySet()) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
          Files.createDirectories(folder);
        }
      }
      AtomicFiles.writeAll(contents, disk);
    } catch (NotWritableException e) {
      problems.add(e.problem(shown(e.file())));
    } catch (NotDurableException e) {
      names.values().forEach(n -> tell(problems, n, "the file " + e.words(), ifInDoubt));
    } catch (PartlyWrittenException e) {
      String others = e.written().stream().map(this::shown).collect(Collectors.joining(", "));
      names.forEach(
          (file, name) -> {
            if (!e.written().contains(file)) {
              tell(
                  problems,
                  name,
                  "the file cannot be written, though others are already: " + others,
                  SEE_TO_IT + ", then write all again with --force");
            }
          });
    } catch (IOException e) {
      names.forEach(
          (file, name) ->
              tell(
                  problems,
                  name,
                  "the file cannot be written (" + reason(e) + ")" + untouched(file),
                  SEE_TO_IT));
    }
    problems.throwIfAny();
  }

  private String untouched(Path file) {
    return contents.size() > 1
        ? ", nor is any other"
        : Files.exists(file) ? ", and is as it was" : "";
  }

  private static void tell(Problems problems, String shown, String what, String right) {
    problems.add(Mark.startOf(shown), what, right);
  }

  /** Why, in the words of the system where it has some. */
  public static String reason(IOException e) {
    if (e instanceof AccessDeniedException) {
      return "no right to write into its folder";
    }
    String reason = e instanceof FileSystemException f ? f.getReason() : e.getMessage();
    return reason == null ? e.getClass().getSimpleName() : reason;
  }
}
