package org.swathbook.audit;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Makes a book of as many applications as are wanted, of which no field has the history of another:
 * stations, soils, rotations, weeds, dates, tanks and rates are drawn, the same on every machine.
 * What repeats is what repeats in a district: twelve stations, eight soils, the words of labels,
 * round rates, and planters and sprayers that are out on the same days. For measuring.
 */
final class VariedBook {
  private static final int STATIONS = 12;
  private static final int FIRST_SEASON = 2017;
  private static final int SEASON = 2027;
  private static final List<String> SOILS =
      List.of(
          "silt loam,2.6,6.6",
          "silty clay loam,3.4,6.7",
          "silt loam,2.1,6.9",
          "sandy loam,1.3,7.4",
          "loam,1.9,7.8",
          "loamy sand,0.8,7.0",
          "silt loam,3.1,6.2",
          "clay loam,2.9,7.1");
  private static final List<String> DENSITIES = List.of("5", "10", "20", "40", "60", "80", "110");
  private static final List<String> BROADLEAF =
      List.of("AMAPA", "AMATU", "AMBTR", "ABUTH", "KCHSC", "CHEAL");
  private static final List<String> GRASS = List.of("SETFA", "SETVI", "SORVU");
  private static final List<String> RESISTANT =
      List.of(",", "9,85 %", "2;9,90 %", "2,35 %", "9;14,70 %", "9;27;5,45 %", ",", "9,60 %");

  /** Products of a pass with the rates that are written for them, in the journal's words. */
  private static final List<String> CORN_PRE =
      List.of(
          "S-metolachlor:1.27:1.6;atrazine:0.75:1.0:1.25;mesotrione:0.18:0.21",
          "acetochlor:1.5:1.9;atrazine:1.0:1.6:2.0",
          "acetochlor:1.9:1.5;saflufenacil:0.067",
          "isoxaflutole:0.07;atrazine:1.0;S-metolachlor:1.27",
          "dimethenamid-P:0.75:0.9;atrazine:1.0:1.25;pyroxasulfone:0.09");

  private static final List<String> CORN_POST =
      List.of(
          "glyphosate:0.94:1.13;mesotrione:0.094;atrazine:0.5:1.0",
          "glufosinate-ammonium:0.4;tembotrione:0.082",
          "glyphosate:1.13;dicamba:0.25:0.5",
          "topramezone:0.0164;atrazine:0.5:1.0;glyphosate:0.94:1.13",
          "nicosulfuron:0.031;glyphosate:1.13;S-metolachlor:0.95:1.27");
  private static final List<String> SOY_PRE =
      List.of(
          "flumioxazin:0.064:0.08;pyroxasulfone:0.09",
          "S-metolachlor:1.27;metribuzin:0.25:0.38",
          "sulfentrazone:0.25;S-metolachlor:1.27:1.6",
          "chlorimuron-ethyl:0.023;flumioxazin:0.08",
          "metribuzin:0.38;pyroxasulfone:0.09;flumioxazin:0.064");
  private static final List<String> SOY_POST =
      List.of(
          "glyphosate:0.94:1.13;fomesafen:0.176:0.25",
          "glufosinate-ammonium:0.53:0.59;S-metolachlor:0.95:1.27",
          "glyphosate:1.13;cloransulam-methyl:0.0158",
          "glyphosate:1.13;lactofen:0.156:0.195;clethodim:0.094:0.125",
          "imazethapyr:0.063;glyphosate:0.94:1.13;acetochlor:1.12");
  private static final List<String> MILO_PRE =
      List.of("S-metolachlor:1.27;atrazine:1.0", "dimethenamid-P:0.75;atrazine:1.0:1.25");
  private static final List<String> MILO_POST =
      List.of("dicamba:0.25;atrazine:0.5:1.0", "atrazine:1.0;prosulfuron:0.018");

  private final Random draws = new Random(20270601);
  private int rows;

  private VariedBook() {}

  /** {@code DEMO BOOK ROWS}: writes tables and weather into BOOK, a copy of the demo book. */
  public static void main(String[] args) throws IOException {
    new VariedBook().write(Path.of(args[0]), Path.of(args[1]), Integer.parseInt(args[2]));
  }

  private void write(Path demo, Path book, int applications) throws IOException {
    for (int s = 0; s < STATIONS; s++) {
      weather(demo, book, s);
    }
    // What the demo's growers have on hand is none of these growers'.
    table(book, "stock.csv", demo).close();
    try (BufferedWriter fields = table(book, "fields.csv", demo);
        BufferedWriter weeds = table(book, "weeds.csv", demo);
        BufferedWriter seasons = table(book, "seasons.csv", demo);
        BufferedWriter journal = table(book, "applications.csv", demo)) {
      for (int f = 0; rows < applications; f++) {
        field(f, fields, weeds, seasons, journal, applications);
      }
    }
  }

  private static BufferedWriter table(Path book, String name, Path demo) throws IOException {
    List<String> lines = Files.readAllLines(demo.resolve(name));
    BufferedWriter out = Files.newBufferedWriter(book.resolve(name));
    out.write(lines.get(0) + "\n");
    return out;
  }

  /** A station near one of the demo's: some tenths warmer or cooler, some rain more or less. */
  private void weather(Path demo, Path book, int station) throws IOException {
    String model = station % 2 == 0 ? "sedge-fork" : "dry-butte";
    double warmer = Math.rint(30 * (draws.nextDouble() - 0.5)) / 10;
    double wetter = 0.8 + 0.4 * draws.nextDouble();
    List<String> lines = Files.readAllLines(demo.resolve("weather").resolve(model + ".csv"));
    List<String> out = new ArrayList<>();
    out.add(lines.get(0));
    for (String line : lines.subList(1, lines.size())) {
      String[] c = line.split(",", -1);
      out.add(
          c[0]
              + ","
              + plus(c[1], warmer)
              + ","
              + plus(c[2], warmer)
              + ","
              + (c[3].equals("T") ? "T" : one(Double.parseDouble(c[3]) * wetter)));
    }
    Files.write(book.resolve("weather").resolve("station-" + station + ".csv"), out);
  }

  private static String plus(String degrees, double more) {
    return one(Double.parseDouble(degrees) + more);
  }

  private static String one(double value) {
    return String.format(Locale.ROOT, "%.1f", value);
  }

  private <T> T any(List<T> of) {
    return of.get(draws.nextInt(of.size()));
  }

  private void field(
      int f,
      BufferedWriter fields,
      BufferedWriter weeds,
      BufferedWriter seasons,
      BufferedWriter journal,
      int applications)
      throws IOException {
    String id = "F-" + (f + 1);
    int station = draws.nextInt(STATIONS);
    String[] soil = any(SOILS).split(",");
    boolean tilled = draws.nextInt(4) == 0;
    String residue = tilled ? "10" : "60";
    double acres = (200 + draws.nextInt(1400)) / 10.0;
    int latitude = 60 + draws.nextInt(15);
    String crop = any(List.of("corn", "soybean", "grain-sorghum"));
    boolean corn = crop.equals("corn");
    fields.write(
        String.join(
                ",",
                id,
                "Grower " + (f / 25 + 1),
                "Field " + (f + 1),
                one(acres),
                crop,
                traits(crop, SEASON),
                corn ? "205 bu/acre" : crop.equals("soybean") ? "58 bu/acre" : "90 bu/acre",
                any(List.of("30 in", "30 in", "15 in")),
                planted(crop, SEASON, draws.nextInt(24)).toString(),
                harvest(crop, SEASON, draws.nextInt(15)).toString(),
                tilled ? "tilled" : "no-till",
                soil[0],
                soil[1],
                soil[2],
                residue,
                "station-" + station,
                "40." + latitude,
                "-98." + (50 + draws.nextInt(20)),
                corn ? "soybean" : "corn",
                corn ? "soybean" : "corn",
                (SEASON + 1) + "-05-" + (10 + draws.nextInt(10)),
                "",
                "grain",
                "none",
                "NE",
                "Invented",
                "no",
                (300 + 100 * draws.nextInt(13)) + " ft")
            + "\n");
    String first = any(BROADLEAF);
    String second = any(BROADLEAF);
    String grass = any(GRASS);
    weed(weeds, id, first, "yes");
    if (!second.equals(first)) {
      weed(weeds, id, second, draws.nextInt(3) == 0 ? "yes" : "no");
    }
    weed(weeds, id, grass, "no");
    for (int season = FIRST_SEASON; season < SEASON && rows < applications; season++) {
      String grown =
          season % 2 == f % 2 ? "corn" : draws.nextInt(5) == 0 ? "grain-sorghum" : "soybean";
      LocalDate planted = planted(grown, season, draws.nextInt(24));
      LocalDate off = harvest(grown, season, draws.nextInt(15));
      seasons.write(
          String.join(
                  ",",
                  id,
                  Integer.toString(season),
                  grown,
                  traits(grown, season),
                  planted.toString(),
                  off.toString(),
                  tilled ? "tilled" : "no-till",
                  "",
                  "")
              + "\n");
      String pre =
          any(grown.equals("corn") ? CORN_PRE : grown.equals("soybean") ? SOY_PRE : MILO_PRE);
      String post =
          any(grown.equals("corn") ? CORN_POST : grown.equals("soybean") ? SOY_POST : MILO_POST);
      pass(
          journal, id, season, acres, grown, pre, planted.plusDays(draws.nextInt(3)), "pre", first);
      int after = 26 + draws.nextInt(14);
      pass(journal, id, season, acres, grown, post, planted.plusDays(after), "", first);
    }
  }

  private static LocalDate planted(String crop, int season, int late) {
    int first = crop.equals("corn") ? 108 : crop.equals("soybean") ? 122 : 138;
    return LocalDate.ofYearDay(season, first + late);
  }

  private static LocalDate harvest(String crop, int season, int late) {
    return LocalDate.ofYearDay(season, (crop.equals("soybean") ? 268 : 276) + late);
  }

  private String traits(String crop, int season) {
    return switch (crop) {
      case "corn" -> "glyphosate;glufosinate";
      case "soybean" -> season % 3 == 0 ? "glyphosate" : "2-4-D;glufosinate;glyphosate";
      default -> "safened-seed";
    };
  }

  private void weed(BufferedWriter out, String field, String weed, String driver)
      throws IOException {
    out.write(
        field
            + ","
            + weed
            + ","
            + any(DENSITIES)
            + " /m2,"
            + driver
            + ","
            + any(RESISTANT)
            + ",,\n");
  }

  private void pass(
      BufferedWriter out,
      String field,
      int season,
      double acres,
      String crop,
      String products,
      LocalDate date,
      String stage,
      String target)
      throws IOException {
    String id = "A-" + season + "-" + field.substring(2) + (stage.isEmpty() ? "b" : "a");
    String start =
        String.format(Locale.ROOT, "%02d:%02d", 7 + draws.nextInt(11), 15 * draws.nextInt(4));
    int by = 1 + draws.nextInt(40);
    int wind = 3 + draws.nextInt(9);
    String from = any(List.of("N", "NW", "W", "SW", "S", "SE", "E"));
    int warm = (stage.isEmpty() ? 68 : 50) + draws.nextInt(20);
    int line = 1;
    for (String part : products.split(";")) {
      String[] p = part.split(":");
      out.write(
          String.join(
                  ",",
                  id,
                  Integer.toString(line++),
                  "",
                  date.toString(),
                  start,
                  field,
                  Integer.toString(season),
                  one(acres),
                  p[0],
                  "DEMO-" + (100 + Math.floorMod(p[0].hashCode(), 60)),
                  p[1 + draws.nextInt(p.length - 1)],
                  p[0].equals("glyphosate") || p[0].equals("dicamba") ? "lb ae/acre" : "lb ai/acre",
                  "M-" + id.substring(2),
                  crop,
                  stage,
                  target,
                  "Applicator " + by,
                  "DEMO-41" + (10 + by),
                  Integer.toString(wind),
                  from,
                  Integer.toString(warm),
                  "")
              + "\n");
      rows++;
    }
  }
}
