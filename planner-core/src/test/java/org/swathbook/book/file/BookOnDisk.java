package org.swathbook.book.file;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.swathbook.book.Book;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.source.ProblemsException;

/** A small sound book in a folder, of which a test replaces the files that it is about. */
final class BookOnDisk {
  /** One for all tests, since it keeps the starter catalog. */
  private static final CatalogLoader CATALOGS = new CatalogLoader();

  private static final Map<String, String> SOUND = new LinkedHashMap<>();

  static {
    SOUND.put(
        "book.yaml",
        """
        format: swathbook.book/1
        name: Invented
        season: 2027
        crops:
          corn: {price: 4.35 $/bu, yieldGoal: 205 bu/acre}
          soybean: {price: 10.60 $/bu, yieldGoal: 62 bu/acre}
        passCost: 9.00 $/acre
        """);
    SOUND.put(
        "fields.csv",
        """
        id,acres,crop,plantDate,harvestDate,tillage,station
        A-1,76.0,soybean,2027-05-11,2027-10-01,no-till,hill
        A-2,40,corn,2027-05-01,,tilled,hill
        """);
    SOUND.put("weeds.csv", "field,weed,density,driver\nA-1,AMAPA,80 /m2,yes\n");
    SOUND.put(
        "applications.csv",
        """
        id,line,corrects,date,field,season,product,rate,unit,crop,cropStage
        P-1,1,,2026-05-01,A-1,2026,atrazine,1.0,lb ai/acre,corn,pre
        P-1,2,,2026-05-01,A-1,2026,glyphosate-4.5sl,32,fl oz/acre,corn,pre
        """);
    SOUND.put("prices.csv", "product,price\nglyphosate-4.5sl,18.00 $/gal\n");
    SOUND.put("seasons.csv", "field,season,crop,tillage\nA-1,2026,corn,no-till\n");
    SOUND.put("weather/hill.csv", weatherYear());
  }

  /** The shortest record that a book can do with: one weather year. */
  private static String weatherYear() {
    StringBuilder out = new StringBuilder("date,tmax_c,tmin_c,rain_mm\n");
    LocalDate end = LocalDate.of(2026, 10, 31);
    for (LocalDate d = LocalDate.of(2025, 9, 1); !d.isAfter(end); d = d.plusDays(1)) {
      out.append(d).append(",20.0,8.0,").append(d.getDayOfMonth() == 3 ? "T" : "0.0").append('\n');
    }
    return out.toString();
  }

  private final Path folder;

  BookOnDisk(Path folder) {
    this.folder = folder;
    SOUND.forEach(this::with);
  }

  BookOnDisk with(String file, String text) {
    return with(file, text.getBytes(StandardCharsets.UTF_8));
  }

  BookOnDisk with(String file, byte[] content) {
    try {
      Path path = folder.resolve(file);
      Path parent = path.getParent();
      if (parent != null) {
        Files.createDirectories(parent);
      }
      Files.write(path, content);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  BookOnDisk without(String file) {
    try {
      Files.delete(folder.resolve(file));
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String soundText(String file) {
    return SOUND.getOrDefault(file, "");
  }

  Book load() {
    return new BookLoader(CATALOGS).load(folder);
  }

  /** What is said of the book; empty when it loads. */
  List<String> problems() {
    try {
      load();
      return List.of();
    } catch (ProblemsException e) {
      return e.report();
    }
  }
}
