package org.swathbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Calls as advisers make them – those of the table of questions – with words left out, doubled,
 * exchanged, stretched, or put from one call into another.
 */
final class FuzzedCalls {
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  /** What writes a file where the call says so: a spoilt call could name any. */
  private static final Pattern WRITES =
      Pattern.compile("init|--save|--html|--handout|--csv|--xlsx|--pdf|--watch");

  private final FuzzedBook book;
  private final List<List<String>> sound = new ArrayList<>();

  FuzzedCalls(FuzzedBook book) throws IOException {
    this.book = book;
    for (String line : Files.readAllLines(ProgramProcess.CLI.resolve("QUESTIONS.md"))) {
      String[] cells = line.split("\\|", -1);
      if (cells.length < 5 || !cells[3].contains("`")) {
        continue;
      }
      List<String> words = words(cells[3].strip().replaceAll("^`|`$", ""));
      boolean writes = words.stream().anyMatch(w -> WRITES.matcher(w).matches());
      // Planning takes a second or more; the rest of the calls find what is wrong with a call.
      boolean isLong = words.get(0).equals("plan") && !words.contains("--queue");
      if (!writes && !isLong) {
        sound.add(words);
      }
    }
    sound.add(words("load nd-1-june --acres 60 --tank 800 --volume 15 --date 2027-06-08"));
    sound.add(
        words(
            "check --field ND-1 --date 2027-06-08 --time 10:30 --volume 15"
                + " \"glyphosate-4.5sl 32 fl oz/acre\" \"ammonium-sulfate 8.5 lb/100 gal\""));
    sound.add(
        words(
            "record nd-1-june --start 10:30 --end 13:10 --acres 40 --wind 7 --wind-from NW"
                + " --temp 78 --epa glyphosate-4.5sl=1-2 --id A-27-900 --stage V3 --note x"));
    sound.add(words("record --corrects A-26-004/1 --acres 70"));
    sound.add(words("record --corrects A-26-004/1 --void"));
    sound.add(words("record --export --from 2026-01-01 --to 2026-12-31 --field ND-1"));
    sound.add(words("calibrate --spacing 20 --course 204 --time 14 --catch 17 --gpa 15 --psi 40"));
    sound.add(words("calibrate --spacing 20 --mph 10 --gpa 15 --gravity 1.28 --json"));
    sound.add(words("audit --what-if posts-by:V3 --what-if overlapping-residual:AMAPA"));
    sound.add(words("completion bash"));
    sound.add(words("--help"));
  }

  private static List<String> words(String line) {
    List<String> out = new ArrayList<>();
    Matcher m = WORD.matcher(line);
    while (m.find()) {
      out.add(m.group(1) != null ? m.group(1) : m.group(2));
    }
    out.remove("swathbook");
    return out;
  }

  private List<String> spoilt(Random random) {
    List<String> call = new ArrayList<>(sound.get(random.nextInt(sound.size())));
    for (int i = random.nextInt(3); i >= 0; i--) {
      int at = call.isEmpty() ? 0 : random.nextInt(call.size());
      if (call.isEmpty()) {
        call.add(NastyValues.any(random));
        continue;
      }
      List<String> other = sound.get(random.nextInt(sound.size()));
      switch (random.nextInt(9)) {
        case 0 -> call.remove(at);
        case 1 -> call.add(at, call.get(random.nextInt(call.size())));
        case 2 -> Collections.swap(call, at, random.nextInt(call.size()));
        case 3 -> call.set(at, NastyValues.any(random));
        case 4 -> call.add(at, other.get(random.nextInt(other.size())));
        case 5 -> call.add(random.nextBoolean() ? "--json" : "--debug=" + NastyValues.any(random));
        default -> call.set(at, NastyValues.stretched(call.get(at), random));
      }
    }
    call.removeIf(w -> WRITES.matcher(w).find());
    // A word of the call may name a folder elsewhere; it is the book's own that is spoilt here.
    call.addAll(List.of("--book", book.book().toString(), "--today", "2027-06-10"));
    return call;
  }

  /** Makes a spoilt call inside this process. */
  Stream<FuzzedBook.Failure> spoil(long seed) throws IOException {
    List<String> call = spoilt(new Random(seed));
    try {
      return book.judged("the call", String.join(" ", call), withTrace(call)).stream();
    } finally {
      book.restore();
    }
  }

  private static List<String> withTrace(List<String> call) {
    List<String> out = new ArrayList<>(call);
    out.add("--debug");
    return out;
  }

  /** Makes a spoilt call, or one on a spoilt file, as a process of its own. */
  Stream<FuzzedBook.Failure> spoilInProcess(long seed) throws IOException {
    Random random = new Random(seed);
    try {
      if (random.nextBoolean()) {
        List<String> call = new ArrayList<>(spoilt(random));
        // No system can hand a program a word with a zero in it.
        call.removeIf(w -> w.indexOf('\0') >= 0);
        return book.judgedInProcess("the call", String.join(" ", call), call).stream();
      }
      List<String> kinds = book.kinds();
      return book.spoilForProcess(kinds.get(random.nextInt(kinds.size())), random).stream();
    } finally {
      book.restore();
    }
  }

  /** Runs the program as a shell would. */
  static Called process(Path in, List<String> args) throws IOException, InterruptedException {
    ProgramProcess.Result result = ProgramProcess.run(in, Map.of(), ProgramProcess.ofClasses(args));
    return new Called(result.code(), result.out(), result.err());
  }
}
