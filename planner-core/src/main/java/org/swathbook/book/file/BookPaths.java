package org.swathbook.book.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.swathbook.program.FieldId;
import org.swathbook.source.Mark;
import org.swathbook.source.Nearest;
import org.swathbook.source.Problem;
import org.swathbook.source.Problems;
import org.swathbook.source.ProblemsException;

/**
 * Where things of a book lie. What is given as a name is looked up inside the book and can never
 * lead out of it; a path leads where whoever typed it wants.
 */
public final class BookPaths {

  /** Kinds of files that are named on a command line. */
  public enum Kind {
    PROGRAM("programs", "program"),
    MIX("mixes", "mix"),
    OBSERVATION("observations", "observation");

    private final String folder;
    private final String noun;

    Kind(String folder, String noun) {
      this.folder = folder;
      this.noun = noun;
    }

    public String folder() {
      return folder;
    }
  }

  private static final int LONGEST_NAME = 100;

  /** Windows keeps them, whatever ending they are given. */
  private static final Set<String> DEVICES = Set.of("con", "prn", "aux", "nul");

  private static final String ENDING = ".yaml";

  private final Path book;

  public BookPaths(Path book) {
    // An empty path is no folder to the platform.
    this.book = book.toString().isEmpty() ? Path.of(".") : book;
  }

  public Path book() {
    return book;
  }

  /**
   * Whether a text may name a file or folder of the book on every platform: letters, digits, dots,
   * hyphens, underscores and spaces inside, no separators, no name that Windows keeps for devices.
   */
  public static boolean isPlainName(String text) {
    if (text.isEmpty() || text.length() > LONGEST_NAME || isDevice(text)) {
      return false;
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean inside = i > 0 && i < text.length() - 1 && (c == '.' || c == ' ');
      if (!isWordSign(c) && !inside && !(i > 0 && c == '-')) {
        return false;
      }
    }
    return true;
  }

  private static boolean isWordSign(char c) {
    return c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' || c == '_';
  }

  private static boolean isDevice(String text) {
    int dot = text.indexOf('.');
    String name = (dot < 0 ? text : text.substring(0, dot)).toLowerCase(Locale.ROOT);
    boolean port = name.startsWith("com") || name.startsWith("lpt");
    return DEVICES.contains(name)
        || port && name.length() == 4 && name.charAt(3) >= '0' && name.charAt(3) <= '9';
  }

  /**
   * The file that was typed: a path to a file, else a name in the book's folder of that kind, with
   * or without its ending.
   *
   * @throws ProblemsException when there is no such file
   */
  public Path find(Kind kind, String typed) {
    return find(kind, typed, List.of());
  }

  /**
   * The same where some words stand for what is no file.
   *
   * @param words told beside the names of the book when what was typed is none of both
   */
  public Path find(Kind kind, String typed, List<String> words) {
    Optional<Path> direct = asPath(typed).filter(Files::isRegularFile);
    if (direct.isPresent()) {
      return direct.get();
    }
    Path folder = book.resolve(kind.folder());
    String name = typed.strip();
    if (isPlainName(name)) {
      for (String file : List.of(name.endsWith(ENDING) ? name : name + ENDING, name)) {
        Path inBook = folder.resolve(file);
        if (Files.isRegularFile(inBook)) {
          checkInside(inBook);
          return inBook;
        }
      }
    }
    List<String> known = new ArrayList<>(words);
    known.addAll(names(kind));
    boolean folderOfTheName =
        !name.isEmpty() && asPath(typed).filter(Files::isDirectory).isPresent();
    throw ProblemsException.of(
        Mark.startOf(name.isEmpty() ? "''" : typed),
        "there is no such file, and no " + kind.noun + " of this name in the book",
        folderOfTheName
            ? "this is a folder; name a file in it"
            : known.isEmpty()
                ? "write the path of a file; the folder " + kind.folder() + " of the book is empty"
                : Nearest.hint(name, known));
  }

  /**
   * Every program that the book keeps, in the order of their names.
   *
   * @throws ProblemsException when the folder cannot be read, or one of them leads out of the book
   */
  public List<Path> programs() {
    return files(Kind.PROGRAM);
  }

  /**
   * Every observation that the book keeps, in the order of their names.
   *
   * @throws ProblemsException as for programs
   */
  public List<Path> observations() {
    return files(Kind.OBSERVATION);
  }

  /**
   * Names of the mixes that the book keeps, in order.
   *
   * @throws ProblemsException as for programs
   */
  public List<String> mixes() {
    return namesInside(Kind.MIX);
  }

  private List<Path> files(Kind kind) {
    Path folder = book.resolve(kind.folder());
    return namesInside(kind).stream().map(n -> folder.resolve(n + ENDING)).toList();
  }

  private List<String> namesInside(Kind kind) {
    List<String> all = names(kind);
    Path folder = book.resolve(kind.folder());
    Problems problems = new Problems();
    for (String name : all) {
      Path file = folder.resolve(name + ENDING);
      if (!isInside(file)) {
        problems.add(leadsOut(nameOf(file)));
      }
    }
    problems.throwIfAny();
    return all;
  }

  /**
   * Where an observation is to be kept: a plain name in the book's folder of them, anything else
   * where it leads.
   *
   * @throws ProblemsException when the text can name no file
   */
  public Path newObservation(String typed) {
    String name = typed.strip();
    if (isPlainName(name)) {
      return book.resolve(Kind.OBSERVATION.folder())
          .resolve(name.endsWith(ENDING) ? name : name + ENDING);
    }
    return asPath(name)
        .filter(p -> !name.isEmpty() && p.getFileName() != null)
        .orElseThrow(
            () ->
                ProblemsException.of(
                    Mark.startOf(name), "this can name no file", "write a name, as nd-1-june"));
  }

  /** Where the program of a field is kept, {@code programs/nd-1.yaml}. */
  public Path programOf(FieldId field) {
    return book.resolve(Kind.PROGRAM.folder()).resolve(field.fileName() + ENDING);
  }

  /**
   * A file as people know it: relative to the book with slashes, or as given when it is outside.
   */
  public String nameOf(Path file) {
    Path base = book.toAbsolutePath().normalize();
    Path full = file.toAbsolutePath().normalize();
    if (!full.startsWith(base) || full.equals(base)) {
      return file.toString();
    }
    List<String> parts = new ArrayList<>();
    base.relativize(full).forEach(p -> parts.add(p.toString()));
    return String.join("/", parts);
  }

  /**
   * Whether a file that exists lies in the book even after links are followed.
   *
   * @throws ProblemsException when that cannot be told, since the link leads nowhere or a folder
   *     may not be looked into
   */
  boolean isInside(Path file) {
    try {
      return file.toRealPath().startsWith(book.toRealPath());
    } catch (IOException e) {
      throw ProblemsException.of(
          Mark.startOf(nameOf(file)),
          Files.isSymbolicLink(file) ? "the link leads nowhere" : "the file cannot be read",
          "check that it is a file you may open, or take it away");
    }
  }

  /**
   * Looks whether a file that lies in the book by its name, be it there or not, lies there after
   * links are followed too.
   *
   * @throws ProblemsException when it lies elsewhere
   */
  void checkInside(Path file) {
    Path folder = file.toAbsolutePath().getParent();
    Path there = Files.exists(file) || folder == null ? file : folder;
    boolean inBook =
        file.toAbsolutePath().normalize().startsWith(book.toAbsolutePath().normalize());
    if (inBook && Files.exists(there) && !isInside(there)) {
      throw ProblemsException.of(leadsOut(nameOf(file)));
    }
  }

  /** A file of the book that is a link to somewhere else. */
  static Problem leadsOut(String name) {
    return new Problem(
        Mark.startOf(name), "the link leads out of the book", "put the file itself into the book");
  }

  private static Optional<Path> asPath(String typed) {
    try {
      return Optional.of(Path.of(typed));
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  /** Names without their ending, in order; none when there is no folder. */
  private List<String> names(Kind kind) {
    Path folder = book.resolve(kind.folder());
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      String[] all =
          files
              .filter(p -> !Files.isDirectory(p))
              .map(p -> String.valueOf(p.getFileName()))
              .filter(n -> n.endsWith(ENDING) && !n.startsWith("."))
              .map(n -> n.substring(0, n.length() - ENDING.length()))
              .toArray(String[]::new);
      Arrays.sort(all);
      return List.of(all);
    } catch (IOException | UncheckedIOException e) {
      throw ProblemsException.of(
          Mark.startOf(kind.folder()),
          Files.isRegularFile(folder)
              ? "this is a file, and the folder of every " + kind.noun
              : "the folder cannot be read",
          "check that it is a folder you may open");
    }
  }
}
