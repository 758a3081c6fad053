package org.swathbook.testing;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.book.Biotype;
import org.swathbook.book.Book;
import org.swathbook.book.CropEconomics;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.book.Journal;
import org.swathbook.book.Prices;
import org.swathbook.book.Resistance;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Money;
import org.swathbook.program.FieldId;
import org.swathbook.weather.StationWeather;

/**
 * A small catalog and a book like the demo's, built by hand. Everything is immutable and may be
 * shared by all tests.
 */
public final class Fixtures {
  private static final Crop CORN = FixtureCrops.corn();
  private static final Crop SOYBEAN = FixtureCrops.soybean();
  private static final Crop GRAIN_SORGHUM = FixtureCrops.grainSorghum();

  private static final Catalog CATALOG =
      new Catalog(
          FixtureActives.ingredients(),
          FixtureActives.products(),
          FixtureWeeds.all(),
          List.of(CORN, SOYBEAN, GRAIN_SORGHUM),
          FixtureActives.responses(),
          List.of());

  private static final Map<String, StationWeather> STATIONS =
      Map.of(
          "sedge-fork", DemoWeatherReader.read("sedge-fork"),
          "dry-butte", DemoWeatherReader.read("dry-butte"));

  private static final List<Field> FIELDS =
      List.of(
          FieldBuilder.of("ND-1", "soybean", "2027-05-11")
              .traits("2,4-D", "glufosinate", "glyphosate")
              .yieldGoal(62)
              .rowInches(15)
              .harvest("2027-10-01")
              .soil(SoilTexture.SILT_LOAM, 2.6, 6.6)
              .build(),
          FieldBuilder.of("ND-2", "corn", "2027-04-28")
              .traits("glyphosate", "glufosinate")
              .yieldGoal(218)
              .harvest("2027-10-07")
              .soil(SoilTexture.SILTY_CLAY_LOAM, 3.4, 6.7)
              .build(),
          FieldBuilder.of("ND-4", "soybean", "2027-05-18")
              .yieldGoal(54)
              .harvest("2027-09-26")
              .tilled()
              .soil(SoilTexture.SILTY_CLAY_LOAM, 3.1, 6.4)
              .build(),
          FieldBuilder.of("QH-1", "corn", "2027-04-27")
              .traits("glyphosate", "glufosinate")
              .yieldGoal(210)
              .harvest("2027-10-05")
              .station("dry-butte", 40.18)
              .irrigated()
              .soil(SoilTexture.SANDY_LOAM, 1.3, 7.4)
              .build(),
          FieldBuilder.of("QH-3", "grain-sorghum", "2027-05-28")
              .traits("safened-seed")
              .yieldGoal(85)
              .harvest("2027-10-18")
              .station("dry-butte", 40.20)
              .soil(SoilTexture.LOAM, 1.9, 7.8)
              .build());

  private static final Book BOOK =
      new Book(
          "test book, invented",
          2027,
          CATALOG,
          HouseRules.DEFAULTS,
          Map.of(
              CropId.of("corn"), new CropEconomics(4.35, 205),
              CropId.of("soybean"), new CropEconomics(10.60, 62),
              CropId.of("grain-sorghum"), new CropEconomics(4.10, 120)),
          Money.ofDollars(9),
          Money.ofDollars(2.5),
          FIELDS,
          List.of(
              weed("ND-1", "AMAPA", 80, DriverKind.YES, 0.9, 2, 9),
              weed("ND-1", "SETFA", 25, DriverKind.NO, 0),
              weed("ND-1", "ABUTH", 3, DriverKind.NO, 0),
              weed("ND-2", "AMBTR", 10, DriverKind.YES, 0.6, 2),
              weed("ND-2", "ABUTH", 12, DriverKind.NO, 0),
              weed("ND-2", "SETFA", 40, DriverKind.NO, 0),
              weed("ND-4", "ABUTH", 18, DriverKind.YES, 0),
              weed("ND-4", "SETFA", 35, DriverKind.NO, 0),
              weed("ND-4", "AMAPA", 0.2, DriverKind.ZERO, 0),
              weed("QH-1", "AMAPA", 45, DriverKind.YES, 0.85, 9),
              weed("QH-1", "SETVI", 20, DriverKind.NO, 0),
              weed("QH-1", "KCHSC", 4, DriverKind.NO, 0.8, 9),
              weed("QH-3", "KCHSC", 60, DriverKind.YES, 0.55, 9, 4),
              weed("QH-3", "AMAPA", 20, DriverKind.NO, 0.6, 9),
              weed("QH-3", "SORVU", 1, DriverKind.NO, 0)),
          Journal.EMPTY,
          List.of(),
          new Prices(Map.of()),
          STATIONS,
          List.of());

  private Fixtures() {}

  public static Crop corn() {
    return CORN;
  }

  public static Crop soybean() {
    return SOYBEAN;
  }

  public static Crop grainSorghum() {
    return GRAIN_SORGHUM;
  }

  public static Catalog catalog() {
    return CATALOG;
  }

  public static Weed weed(String eppo) {
    return CATALOG.weed(WeedId.of(eppo));
  }

  public static Ingredient active(String name) {
    return CATALOG.findIngredient(name).orElseThrow();
  }

  /** Invented demo weather: {@code sedge-fork} or {@code dry-butte}. */
  public static StationWeather station(String id) {
    StationWeather s = STATIONS.get(id);
    if (s == null) {
      throw new IllegalArgumentException("no demo station " + id);
    }
    return s;
  }

  /** Five fields of season 2027: ND-1, ND-2, ND-4, QH-1, QH-3, with the demo's weeds. */
  public static Book book() {
    return BOOK;
  }

  public static Field field(String id) {
    return BOOK.findField(id).orElseThrow();
  }

  /** The book with one more field and its weeds. */
  public static Book bookWith(Field field, WeedPressure... weeds) {
    return bookWith(STATIONS, field, weeds);
  }

  /** The book with one more field under weather of its own. */
  public static Book bookWith(StationWeather weather, Field field, WeedPressure... weeds) {
    Map<String, StationWeather> stations = new LinkedHashMap<>(STATIONS);
    stations.put(weather.id(), weather);
    return bookWith(stations, field, weeds);
  }

  private static Book bookWith(
      Map<String, StationWeather> stations, Field field, WeedPressure... weeds) {
    List<Field> fields = new ArrayList<>(FIELDS);
    fields.removeIf(f -> f.id().equals(field.id()));
    fields.add(field);
    List<WeedPressure> all = new ArrayList<>(BOOK.weeds());
    all.removeIf(w -> w.field().equals(field.id()));
    all.addAll(List.of(weeds));
    return new Book(
        BOOK.name(),
        BOOK.season(),
        CATALOG,
        BOOK.house(),
        BOOK.crops(),
        BOOK.passCost(),
        BOOK.resprayExtra(),
        fields,
        all,
        Journal.EMPTY,
        List.of(),
        BOOK.prices(),
        stations,
        List.of());
  }

  /**
   * A weed with one biotype that resists all the sites, in a share of the plants; with no sites all
   * plants are susceptible.
   */
  public static WeedPressure weed(
      String field, String eppo, double perM2, DriverKind driver, double share, int... sites) {
    List<Resistance> all =
        Arrays.stream(sites)
            .mapToObj(
                s -> new Resistance(Optional.of(Site.of(s)), Optional.empty(), share, "confirmed"))
            .toList();
    List<Biotype> biotypes =
        all.isEmpty()
            ? List.of(new Biotype(1, List.of()))
            : List.of(new Biotype(1 - share, List.of()), new Biotype(share, all));
    return new WeedPressure(
        new FieldId(field), CATALOG.weed(WeedId.of(eppo)), perM2, driver, biotypes, all, "");
  }
}
