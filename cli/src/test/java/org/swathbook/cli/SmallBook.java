package org.swathbook.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The demo book cut down so that a plan takes seconds: few fields, two weather years, at most two
 * passes of two products on coarse dates.
 */
final class SmallBook {
  private static final Path DEMO = ProgramProcess.CLI.resolve("../demo-data");

  private SmallBook() {}

  /** Makes a book of these fields in a folder that does not exist yet. */
  static Path of(Path folder, String... fields) throws IOException {
    Files.createDirectories(folder.resolve("weather"));
    Set<String> kept = Set.of(fields);
    write(folder, "fields.csv", rows("fields.csv", 0, kept));
    write(folder, "weeds.csv", rows("weeds.csv", 0, kept));
    write(folder, "applications.csv", rows("applications.csv", 5, kept));
    write(folder, "seasons.csv", rows("seasons.csv", 0, kept));
    write(folder, "prices.csv", Files.readAllLines(DEMO.resolve("prices.csv")));
    List<String> book =
        Files.readAllLines(DEMO.resolve("book.yaml")).stream()
            .map(l -> l.replace("maxPasses: 4", "maxPasses: 2"))
            .map(l -> l.replace("maxProducts: 4", "maxProducts: 2"))
            .map(l -> l.replace("dateStep: 3 days", "dateStep: 14 days"))
            .toList();
    write(folder, "book.yaml", book);
    for (String station : List.of("sedge-fork", "dry-butte")) {
      String file = "weather/" + station + ".csv";
      List<String> days = Files.readAllLines(DEMO.resolve(file));
      List<String> two = new ArrayList<>(days.subList(0, 1));
      days.stream().skip(1).filter(d -> d.compareTo("2024-09-01") >= 0).forEach(two::add);
      write(folder, file, two);
    }
    return folder;
  }

  static void copyProgram(Path folder, String name) throws IOException {
    Path programs = Files.createDirectories(folder.resolve("programs"));
    Files.copy(DEMO.resolve("programs").resolve(name), programs.resolve(name));
  }

  /** The head of a table and its rows with one of the values in a column. */
  private static List<String> rows(String file, int column, Set<String> values) throws IOException {
    List<String> all = Files.readAllLines(DEMO.resolve(file));
    List<String> out = new ArrayList<>(all.subList(0, 1));
    all.stream().skip(1).filter(r -> values.contains(r.split(",", -1)[column])).forEach(out::add);
    return out;
  }

  /** Adds a line to a file of the book. */
  static void append(Path folder, String file, String line) throws IOException {
    Path path = folder.resolve(file);
    Files.writeString(path, Files.readString(path) + line + "\n");
  }

  /**
   * Adds a spraying that keeps the field's next crop off it: fomesafen in July before corn in
   * April.
   */
  static void refuseNd2(Path folder) throws IOException {
    append(
        folder,
        "applications.csv",
        "T-1,1,,2026-07-14,08:00,ND-2,2026,118.0,fomesafen,DEMO-1,0.25,lb ai/acre,M-1,soybean,V5,"
            + "AMAPA,Applicator One,DEMO-4101,5,NW,75,");
  }

  private static void write(Path folder, String file, List<String> lines) throws IOException {
    Files.writeString(folder.resolve(file), String.join("\n", lines) + "\n");
  }
}
