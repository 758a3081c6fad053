package org.swathbook.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.book.file.BookLoader;
import org.swathbook.book.file.BookPaths;
import org.swathbook.book.file.HourlyReader;
import org.swathbook.book.file.JournalImport;
import org.swathbook.book.file.MixReader;
import org.swathbook.book.file.ObservationReader;
import org.swathbook.book.file.ProgramReader;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.cli.terminal.ExitCode;
import org.swathbook.source.ProblemsException;

/**
 * A small book with a file of every kind, one of which is spoilt and then read by the real command.
 * The law: it is read, or it ends in plain problems with their places and exit code 2; never an
 * internal error, never a wait without end, and nothing written by a call that was refused.
 */
final class FuzzedBook implements AutoCloseable {
  private static final Path STARTER =
      ProgramProcess.CLI.resolve("../catalog/src/main/resources/org/swathbook/catalog/starter");
  private static final int MOST_SECONDS = 20;
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  /** In place of an exit code where there was none. */
  private static final int ENDLESS = -1;

  private static final String TODAY = "2027-06-10";

  /** {@code file:line:column: what; what would be right}, a wrong call, or how many more. */
  private static final Pattern PLAIN =
      Pattern.compile(
          "(?s)[^\\n]+:\\d+:\\d+: .+|swathbook[a-z ]*: .+; see 'swathbook[a-z ]* --help'"
              + "|(and )?[\\d,]+ more.*");

  /** What is to be spoilt, and the calls that read it. */
  record Target(String file, String text, boolean isYaml, List<List<String>> calls) {}

  /** What went wrong. */
  record Failure(String what, String culprit, List<String> call, String err) {
    @Override
    public String toString() {
      return what + "\n  call: " + call + "\n  " + err;
    }
  }

  private final Path book;
  private final Path entries;
  private final Path outputs;
  private final CatalogLoader catalogs = new CatalogLoader();
  private final Book read;
  private final List<Target> targets = new ArrayList<>();
  private final List<String> words = new ArrayList<>();
  private final Map<String, byte[]> sound = new TreeMap<>();
  private ExecutorService worker = Executors.newSingleThreadExecutor();

  FuzzedBook(Path folder) throws IOException {
    book = SmallBook.of(folder.resolve("book"), "ND-1", "ND-2");
    for (String inner : List.of("mixes", "programs", "observations")) {
      Files.createDirectories(book.resolve(inner));
      for (Path p : files(ProgramProcess.CLI.resolve("../demo-data").resolve(inner))) {
        Files.copy(p, book.resolve(inner).resolve(p.getFileName()));
      }
    }
    for (String file : List.of("stock.csv", "watch.csv", "scouting.csv")) {
      Files.copy(ProgramProcess.CLI.resolve("../demo-data").resolve(file), book.resolve(file));
    }
    write("watch.csv", "field,weed,site,since,reason\nND-1,AMAPA,14,2026-07-01,patches\n");
    write(
        "scouting.csv",
        """
        date,field,zone,weed,height,count,area,cropStage,irrigation,note
        2027-06-07,ND-1,,AMAPA,3 in,12,100 ft2,V3,,seen
        2027-06-08,ND-1,,,,,,,0.5 in,
        """);
    write(
        "weather/sedge-fork-hourly.csv",
        """
        time,temp_f,rh_pct,wind_mph,gust_mph,from,rain_in
        2027-06-08T09:00,72,60,6,9,W,0
        2027-06-08T10:00,77,55,7,12,WNW,0
        2027-06-08T11:00,79,50,11,15,NW,0.1
        """);
    write(
        "stock.csv",
        """
        product,amount,grower,goodUntil,note
        flumioxazin-51wg,4 lb,Ninebark Draw Farms,,left of 2026
        metribuzin-75wg,10 lb,Ninebark Draw Farms,2027-08-30,
        """);
    write("sprayed.csv", IMPORTED);
    write("sprayed-map.yaml", MAP);
    addTargets();
    for (Path p : files(book)) {
      sound.put(book.relativize(p).toString(), Files.readAllBytes(p));
    }
    read = new BookLoader(catalogs).load(book);
    entries = Files.createDirectory(folder.resolve("entries"));
    outputs = Files.createDirectory(folder.resolve("outputs"));
    for (Target t : targets) {
      t.text()
          .lines()
          .limit(60)
          .flatMap(l -> Stream.of(l.split(t.isYaml() ? "[,:{}\\[\\]]" : ",")))
          .map(String::strip)
          .filter(w -> !w.isEmpty() && w.length() < 60)
          .limit(80)
          .forEach(words::add);
    }
  }

  private static final String IMPORTED =
      """
      Field Name,Sprayed,Began,Product,Rate,Area (ha),Temp (C),Invoice
      North 80,6/8/2027,2:30 PM,gly 4.5,32,10,20,77
      ND-2,5/20/2027,,gly 4.5,32,10,,78
      """;
  private static final String MAP =
      """
      format: swathbook.journal-map/1
      columns:
        Field Name: field
        Sprayed: date
        Began: startTime
        Product: product
        Rate: {to: rate, unit: fl oz/acre}
        Area (ha): {to: acres, unit: ha}
        Temp (C): {to: tempF, unit: C}
      ignore: [Invoice]
      dates: M/D/YYYY
      words: {field: {North 80: ND-1}, product: {gly 4.5: glyphosate-4.5sl}}
      """;

  private static List<List<String>> calls(String... lines) {
    return Stream.of(lines).map(l -> List.of(l.split(" "))).toList();
  }

  private void addTargets() throws IOException {
    List<List<String>> reads =
        calls(
            "record --export",
            "audit ND-1 --ledger",
            "audit --json",
            "check nd-1-june",
            "check nd-1-june --json",
            "load nd-1-june",
            "escapes nd-1-june",
            "escapes --due",
            "order",
            "season nd-1-two-layers");
    for (String file :
        List.of(
            "book.yaml",
            "fields.csv",
            "weeds.csv",
            "applications.csv",
            "seasons.csv",
            "prices.csv",
            "stock.csv",
            "watch.csv",
            "scouting.csv")) {
      add(file, reads);
    }
    add(
        "mixes/nd-1-june.yaml",
        calls(
            "check nd-1-june",
            "check nd-1-june --json",
            "load nd-1-june",
            "load nd-1-june --json",
            "load nd-1-june --acres 60 --tank 800",
            "load nd-2-june nd-1-june",
            "record nd-1-june --again",
            "escapes nd-1-june"));
    add("mixes/nd-2-june.yaml", calls("check nd-2-june", "load nd-2-june"));
    add(
        "programs/nd-1-two-layers.yaml",
        calls(
            "season nd-1-two-layers",
            "season nd-1-two-layers --json",
            "check --program nd-1-two-layers",
            "load nd-1-two-layers --pass 2 --date 2027-06-06 --tank 1200",
            "record nd-1-two-layers --pass 1 --date 2027-05-11 --again",
            "order",
            "plan --queue",
            "audit --planned nd-1-two-layers"));
    add("observations/nd-1-june.yaml", calls("escapes nd-1-june", "escapes nd-1-june --json"));
    List<List<String>> weather =
        calls("season nd-1-two-layers", "check nd-1-june", "escapes nd-1-june", "audit ND-1");
    String days = Files.readString(book.resolve("weather/sedge-fork.csv"), UTF_8);
    for (String layout : WeatherLayouts.all(days)) {
      targets.add(new Target("weather/sedge-fork.csv", layout, false, weather));
    }
    add(
        "weather/sedge-fork-hourly.csv",
        calls("check nd-1-june", "check nd-1-june --json", "load nd-1-june", "plan --queue"));
    add("sprayed.csv", calls("record --import BOOK/sprayed.csv --map BOOK/sprayed-map.yaml"));
    add("sprayed-map.yaml", calls("record --import BOOK/sprayed.csv --map BOOK/sprayed-map.yaml"));
    targets.add(
        new Target(
            "applications-2.csv",
            withoutIds(Files.readString(book.resolve("applications.csv"), UTF_8)),
            false,
            calls("record --import BOOK/applications-2.csv --again")));
    List<List<String>> catalog =
        calls("catalog lint", "catalog list", "check nd-1-june", "season nd-1-two-layers");
    for (Path p : files(STARTER)) {
      String file = "catalog/" + STARTER.relativize(p).toString().replace('\\', '/');
      String text = Files.readString(p, UTF_8);
      if (file.endsWith("responses.csv")) {
        List<String> rows = text.lines().toList();
        text = String.join("\n", rows.subList(0, 60)) + "\n";
      }
      targets.add(new Target(file, text, file.endsWith(".yaml"), catalog));
    }
  }

  /** The journal as somebody else's table: a pass that has an id already is not taken again. */
  private static String withoutIds(String journal) {
    return journal
        .replaceFirst("^id,line,corrects,", "")
        .replaceAll("(?m)^A-[0-9-]+,[0-9]*,[^,]*,", "");
  }

  private void add(String file, List<List<String>> calls) throws IOException {
    String text = Files.readString(book.resolve(file), UTF_8);
    targets.add(new Target(file, text, file.endsWith(".yaml"), calls));
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(book.resolve(file), text, UTF_8);
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }

  /** Kinds of files, by the folder or the file; each is spoilt as often as any other. */
  static String kind(String file) {
    return file.startsWith("catalog/") || file.startsWith("weather/")
        ? file.replaceAll("^(catalog/[^/]+|weather)/.*", "$1")
        : file;
  }

  List<String> kinds() {
    return targets.stream().map(t -> kind(t.file())).distinct().toList();
  }

  /** Every file that may be spoilt, with what stands in it. */
  List<Target> targets() {
    return List.copyOf(targets);
  }

  Path book() {
    return book;
  }

  /** What each call does while nothing is spoilt: all must be done, or nothing would be tried. */
  List<String> refusedThoughSound() throws IOException {
    List<String> out = new ArrayList<>();
    for (List<String> call :
        targets.stream().flatMap(t -> t.calls().stream()).distinct().toList()) {
      Path second = book.resolve("applications-2.csv");
      Files.writeString(second, withoutIds(Files.readString(book.resolve("applications.csv"))));
      Called called = Called.with(arguments(call).toArray(String[]::new));
      if (called.code() > ExitCode.BLOCKED) {
        out.add(call + ": " + called.err());
      }
      restore();
    }
    return out;
  }

  /** Spoils a file of the kind and calls a command on it. */
  Stream<Failure> spoil(String kind, long seed) throws IOException {
    try {
      Spoilt spoilt = spoiltCall(kind, new Random(seed));
      return judged(spoilt.file(), spoilt.text(), spoilt.args()).stream();
    } finally {
      restore();
    }
  }

  /** The same as a process of its own. */
  List<Failure> spoilForProcess(String kind, Random random) throws IOException {
    Spoilt spoilt = spoiltCall(kind, random);
    return judgedInProcess(spoilt.file(), spoilt.text(), spoilt.args());
  }

  private record Spoilt(String file, String text, List<String> args) {}

  private Spoilt spoiltCall(String kind, Random random) throws IOException {
    List<Target> these = targets.stream().filter(t -> kind(t.file()).equals(kind)).toList();
    Target target = these.get(random.nextInt(these.size()));
    byte[] spoilt = new MutatedText(random, target.isYaml(), words).of(target.text());
    List<String> call = target.calls().get(random.nextInt(target.calls().size()));
    Path file = book.resolve(target.file());
    Files.createDirectories(file.getParent());
    Files.write(file, spoilt);
    return new Spoilt(target.file(), new String(spoilt, UTF_8), arguments(call));
  }

  /** Spoils a file of the kind and reads it alone, which costs a hundredth of a command. */
  Stream<Failure> readSpoilt(String kind, long seed) throws IOException {
    Random random = new Random(seed);
    List<Target> these = targets.stream().filter(t -> kind(t.file()).equals(kind)).toList();
    Target target = these.get(random.nextInt(these.size()));
    return readInPlace(target, new MutatedText(random, target.isYaml(), words).of(target.text()));
  }

  /** Reads what stands in place of the file alone, and puts the file back. */
  Stream<Failure> readInPlace(Target target, byte[] spoilt) throws IOException {
    boolean isEntry = kind(target.file()).startsWith("catalog/");
    Path file = isEntry ? entries.resolve(target.file()) : book.resolve(target.file());
    Files.createDirectories(file.getParent());
    Files.write(file, spoilt);
    try {
      String what = inTime(() -> problem(target, spoilt), String::valueOf);
      return what.isEmpty()
          ? Stream.empty()
          : Stream.of(
              new Failure(
                  what.lines().findFirst().orElse("") + " (" + target.file() + ")",
                  new String(spoilt, UTF_8),
                  List.of("reading", kind(target.file())),
                  what));
    } finally {
      byte[] was = isEntry ? null : sound.get(target.file());
      if (was == null) {
        Files.delete(file);
      } else {
        Files.write(file, was);
      }
    }
  }

  private String problem(Target target, byte[] spoilt) {
    try {
      readAlone(target.file(), spoilt);
      return "";
    } catch (ProblemsException e) {
      return e.problems().stream()
          .filter(
              p ->
                  p.mark().line() < 1
                      || p.mark().column() < 1
                      || p.toString().lines().count() != 1
                      || p.toString().length() > 2_000)
          .findFirst()
          .map(p -> "no plain problem: " + p)
          .orElse(e.problems().isEmpty() ? "refused without a word" : "");
    }
  }

  private void readAlone(String file, byte[] content) {
    BookPaths paths = new BookPaths(book);
    switch (kind(file)) {
      case "mixes/nd-1-june.yaml", "mixes/nd-2-june.yaml" -> MixReader.read(file, content, read);
      case "programs/nd-1-two-layers.yaml" -> ProgramReader.read(file, content, read);
      case "observations/nd-1-june.yaml" -> ObservationReader.read(file, content, paths, read);
      case "applications-2.csv" ->
          JournalImport.read(book.resolve(file), Optional.empty(), paths, read);
      case "sprayed.csv", "sprayed-map.yaml" ->
          JournalImport.read(
              book.resolve("sprayed.csv"),
              Optional.of(book.resolve("sprayed-map.yaml")),
              paths,
              read);
      default -> {
        if (file.startsWith("catalog/")) {
          catalogs.load(false, entries.resolve("catalog"), "catalog");
        } else if (file.endsWith("-hourly.csv")) {
          HourlyReader.read(book, "sedge-fork");
        } else {
          new BookLoader(catalogs).load(book);
        }
      }
    }
  }

  private interface Work<T> {
    T get() throws Exception;
  }

  /**
   * What the work gives, or what is to be said of it when it fails or does not end. Its own time is
   * what counts: a machine that is busy with something else may let it wait for minutes.
   */
  private <T> T inTime(Work<T> work, Function<String, T> failed) {
    AtomicLong thread = new AtomicLong();
    long[] began = new long[1];
    Future<T> started =
        worker.submit(
            () -> {
              began[0] = THREADS.getCurrentThreadCpuTime();
              // Written last: whoever sees it sees the time too.
              thread.set(Thread.currentThread().getId());
              return work.get();
            });
    while (true) {
      try {
        return started.get(MOST_SECONDS, TimeUnit.SECONDS);
      } catch (TimeoutException e) {
        long id = thread.get();
        long spent = id == 0 ? 0 : THREADS.getThreadCpuTime(id) - began[0];
        if (spent > TimeUnit.SECONDS.toNanos(MOST_SECONDS)) {
          String where = stackOfWorker();
          worker.shutdownNow();
          worker = Executors.newSingleThreadExecutor();
          return failed.apply("a wait without end" + where);
        }
      } catch (ExecutionException e) {
        StringWriter stack = new StringWriter();
        Throwable cause = e.getCause() == null ? e : e.getCause();
        cause.printStackTrace(new PrintWriter(stack, true));
        return failed.apply("thrown: " + stack);
      } catch (InterruptedException e) {
        throw new IllegalStateException(e);
      }
    }
  }

  private static String stackOfWorker() {
    return Thread.getAllStackTraces().entrySet().stream()
        .filter(t -> t.getKey().getName().startsWith("pool-"))
        .flatMap(t -> Stream.of(t.getValue()))
        .map(frame -> "\n    at " + frame)
        .collect(Collectors.joining());
  }

  private List<String> arguments(List<String> call) {
    List<String> out = new ArrayList<>(List.of(call.get(0), "--debug"));
    call.stream().skip(1).map(w -> w.replace("BOOK", book.toString())).forEach(out::add);
    out.addAll(List.of("--book", book.toString()));
    if (!call.get(0).equals("catalog")) {
      out.addAll(List.of("--today", TODAY));
    }
    if (call.get(0).equals("catalog")) {
      out.remove("--debug");
      out.add("--debug");
    }
    return out;
  }

  /** Calls the command and holds what it did against the law. */
  List<Failure> judged(String culpritName, String culprit, List<String> args) throws IOException {
    Map<String, String> before = stamps();
    Called called =
        inTime(
            () -> Called.sharing(catalogs, args.toArray(String[]::new)),
            why -> new Called(ENDLESS, "", why));
    return failures(called, culpritName, culprit, before, args);
  }

  /** The same as a process of its own. */
  List<Failure> judgedInProcess(String culpritName, String culprit, List<String> args)
      throws IOException {
    Map<String, String> before = stamps();
    try {
      Called called = FuzzedCalls.process(outputs, args);
      return failures(called, culpritName, culprit, before, args);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private List<Failure> failures(
      Called called,
      String culpritName,
      String culprit,
      Map<String, String> before,
      List<String> args)
      throws IOException {
    String what = problem(called, culprit, before.equals(stamps()), args);
    return what.isEmpty()
        ? List.of()
        : List.of(new Failure(what + " (" + culpritName + ")", culprit, args, called.err()));
  }

  private static String problem(
      Called called, String culprit, boolean isAsItWas, List<String> args) {
    if (called.code() == ENDLESS) {
      return called.err().lines().findFirst().orElse("");
    }
    if (called.code() > ExitCode.WRONG_INPUT) {
      return "exit code " + called.code();
    }
    if (called.code() == ExitCode.WRONG_INPUT) {
      if (!called.out().isEmpty()) {
        return "a result beside a refusal";
      }
      if (called.err().isBlank()) {
        return "refused without a word";
      }
      // Questions that were asked stand before what is said of the answers.
      String told = called.err().substring(Math.max(0, called.err().indexOf("answers:1:1: ")));
      for (String line : told.split("\n", -1)) {
        if (!line.isEmpty() && !PLAIN.matcher(line).matches()) {
          return "no plain line: " + line;
        }
      }
      return isAsItWas ? "" : "something written though it was refused";
    }
    if (!isAsItWas && !args.get(0).equals("record")) {
      return "something written";
    }
    if (called.out().isEmpty()) {
      return "done without a result";
    }
    return Stream.of("NaN", "Infinity")
        .filter(w -> called.out().contains(w) && !culprit.contains(w))
        .findFirst()
        .map(w -> w + " in the result")
        .orElse("");
  }

  private Map<String, String> stamps() throws IOException {
    Map<String, String> out = new TreeMap<>();
    try (Stream<Path> all = Files.walk(book)) {
      for (Path p : all.filter(Files::isRegularFile).toList()) {
        if (!p.endsWith(".applications.lock")) {
          out.put(p.toString(), Files.size(p) + " " + Files.getLastModifiedTime(p));
        }
      }
    }
    return out;
  }

  void restore() throws IOException {
    for (Path p : files(book)) {
      byte[] was = sound.get(book.relativize(p).toString());
      if (was == null) {
        Files.delete(p);
      } else if (Files.size(p) != was.length || !Arrays.equals(Files.readAllBytes(p), was)) {
        Files.write(p, was);
      }
    }
    for (String file : sound.keySet()) {
      if (!Files.exists(book.resolve(file))) {
        Files.write(book.resolve(file), sound.get(file));
      }
    }
  }

  @Override
  public void close() {
    worker.shutdownNow();
  }
}
