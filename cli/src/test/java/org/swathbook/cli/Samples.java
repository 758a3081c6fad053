package org.swathbook.cli;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.swathbook.book.Biotype;
import org.swathbook.book.Book;
import org.swathbook.book.CropEconomics;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.book.HouseRules;
import org.swathbook.book.Journal;
import org.swathbook.book.Prices;
import org.swathbook.book.Resistance;
import org.swathbook.book.Tillage;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Commodity;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.ProductId;
import org.swathbook.catalog.Site;
import org.swathbook.catalog.SoilCondition;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.Trait;
import org.swathbook.catalog.WeedId;
import org.swathbook.catalog.file.CatalogLoader;
import org.swathbook.cli.report.SeasonCalendar;
import org.swathbook.growth.PassTiming;
import org.swathbook.measure.Money;
import org.swathbook.measure.Price;
import org.swathbook.measure.Rate;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.FieldId;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.rules.timing.PlantingWait;
import org.swathbook.season.outcome.GapSpan;
import org.swathbook.season.outcome.LateCost;
import org.swathbook.season.outcome.LayerSpan;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassSize;
import org.swathbook.season.outcome.PassWeed;
import org.swathbook.season.outcome.SeasonOutcome;
import org.swathbook.season.outcome.SiteControl;
import org.swathbook.season.outcome.WeedOutcome;
import org.swathbook.season.outcome.YearOutcome;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/**
 * A field and a walked program with figures set by hand, so that the kept reports change only with
 * the rendering: three years, three passes, one of them missed in a year, a site that is resisted
 * and one that is half effective, a year without a layer.
 */
final class Samples {
  static final LocalDate TODAY = LocalDate.of(2027, 3, 1);
  static final Catalog CATALOG = new CatalogLoader().starter();
  static final WeedId PALMER = WeedId.of("AMAPA");
  static final WeedId FOXTAIL = WeedId.of("SETFA");

  private static final int[] YEARS = {2024, 2025, 2026};
  private static final LocalDate PLANTED = LocalDate.of(2027, 5, 11);

  private Samples() {}

  static Field field() {
    return fieldOf("Ninebark Draw Farms");
  }

  static Field fieldOf(String grower) {
    return new Field(
        new FieldId("ND-1"),
        grower,
        "Long Eighty",
        76,
        CropId.of("soybean"),
        Optional.of(
            new TreeSet<>(
                Set.of(Trait.of("2,4-D"), Trait.of("glufosinate"), Trait.of("glyphosate")))),
        62,
        OptionalDouble.of(38.1),
        PLANTED,
        Optional.of(LocalDate.of(2027, 10, 1)),
        Tillage.NO_TILL,
        List.of(SoilTexture.SILT_LOAM),
        List.of(2.6),
        List.of(6.6, 7.1),
        OptionalDouble.empty(),
        "sedge-fork",
        OptionalDouble.of(40.72),
        OptionalDouble.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty(),
        Set.of(Commodity.GRAIN),
        false,
        Optional.of("NE"),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty(),
        List.of(),
        List.of());
  }

  static Book book() {
    Map<ProductId, Price> prices = new TreeMap<>();
    prices.put(product("metribuzin-75wg").id(), Price.parse("12.00 $/lb"));
    prices.put(product("flumioxazin-51wg").id(), Price.parse("24.50 $/lb"));
    prices.put(product("2-4-d-choline-3.8sl").id(), Price.parse("38.00 $/gal"));
    prices.put(product("glufosinate-2.34sl").id(), Price.parse("31.50 $/gal"));
    prices.put(product("s-metolachlor-7.62ec").id(), Price.parse("54.75 $/gal"));
    prices.put(product("clethodim-2ec").id(), Price.parse("54.00 $/gal"));
    return new Book(
        "Sample book, season 2027 (invented)",
        2027,
        CATALOG,
        HouseRules.DEFAULTS,
        Map.of(CropId.of("soybean"), new CropEconomics(10.60, 62)),
        Money.ofDollars(9),
        Money.ofDollars(2.5),
        List.of(field()),
        List.of(palmer(), foxtail()),
        Journal.EMPTY,
        List.of(),
        new Prices(prices),
        Map.of("sedge-fork", weather()),
        List.of("scouting.csv has 3 rows, which are not used yet."));
  }

  private static StationWeather weather() {
    List<WeatherDay> days = new ArrayList<>();
    for (LocalDate d = LocalDate.of(2023, 9, 1);
        d.isBefore(LocalDate.of(2026, 11, 1));
        d = d.plusDays(1)) {
      days.add(new WeatherDay(d, 20, 10, 0));
    }
    return new StationWeather("sedge-fork", days);
  }

  private static WeedPressure palmer() {
    List<Resistance> listed =
        List.of(
            resists(2, 0.9, "confirmed"),
            resists(9, 0.9, "confirmed"),
            resists(14, 0.3, "suspected"));
    return new WeedPressure(
        field().id(),
        CATALOG.weed(PALMER),
        80,
        DriverKind.YES,
        List.of(new Biotype(0.1, List.of()), new Biotype(0.9, listed)),
        listed,
        "");
  }

  private static WeedPressure foxtail() {
    return new WeedPressure(
        field().id(),
        CATALOG.weed(FOXTAIL),
        25,
        DriverKind.NO,
        List.of(new Biotype(1, List.of())),
        List.of(),
        "");
  }

  private static Resistance resists(int site, double share, String status) {
    return new Resistance(Optional.of(Site.of(site)), Optional.empty(), share, status);
  }

  private static PlantingWait.Wait waiting() {
    return new PlantingWait.Wait(
        CATALOG.findIngredient("metribuzin").orElseThrow(),
        new PlantingBand(SoilCondition.ALWAYS, Optional.empty(), 15, OptionalDouble.empty()));
  }

  static SeasonCalendar calendar() {
    SeasonCalendar.Dates dates =
        new SeasonCalendar.Dates(
            LocalDate.of(2027, 5, 18), LocalDate.of(2027, 5, 20), LocalDate.of(2027, 5, 24));
    return new SeasonCalendar(
        LocalDate.of(2027, 4, 27),
        LocalDate.of(2027, 8, 20),
        PLANTED,
        List.of(new SeasonCalendar.Stage("VE", dates)),
        List.of(
            new SeasonCalendar.Emergence(
                PALMER,
                List.of(new SeasonCalendar.Week(LocalDate.of(2027, 5, 11), 12.3, 4.5, 20.1)),
                dates)),
        List.of(
            new SeasonCalendar.Window(
                0,
                List.of(
                    new SeasonCalendar.Stretch(
                        LocalDate.of(2027, 4, 27), LocalDate.of(2027, 5, 14), 3)),
                List.of(waiting()))));
  }

  private static Product product(String id) {
    return CATALOG.findProduct(id).orElseThrow();
  }

  private static Dose dose(String product, String rate) {
    return Doses.ofProduct(CATALOG, product(product), Rate.parse(rate));
  }

  private static Mix first() {
    return Mix.of(
        List.of(
            dose("metribuzin-75wg", "8 oz weight/acre"),
            dose("flumioxazin-51wg", "2.5 oz weight/acre")));
  }

  private static Mix second() {
    return new Mix(
        List.of(
            dose("2-4-d-choline-3.8sl", "2 pt/acre"),
            dose("glufosinate-2.34sl", "32 fl oz/acre"),
            dose("s-metolachlor-7.62ec", "16 fl oz/acre")),
        List.of(
            new Adjuvant("ammonium-sulfate", "2.5 lb/acre"),
            new Adjuvant("ammonium-sulfate", "8.5 lb/100 gal")),
        OptionalDouble.of(15));
  }

  private static Mix third() {
    return Mix.of(List.of(dose("clethodim-2ec", "8 fl oz/acre")));
  }

  /** All three passes, or the first so many. */
  static SeasonOutcome outcome(String name, int count) {
    Program program =
        new Program(
            name,
            field().id(),
            List.of(
                    new Pass(new Anchor.FromPlanting(0), first()),
                    new Pass(new Anchor.FromPlanting(26), second()),
                    new Pass(new Anchor.AtStage("V8"), third()))
                .subList(0, count));
    Book book = book();
    List<PassOutcome> passes =
        List.of(
                pass(book, 0, 0, first(), "planted", "2027-05-11", "2027-05-16", List.of(), -0.5),
                pass(book, 1, 26, second(), "V3", "2027-06-06", "2027-06-12", List.of(2025), 5.2),
                pass(book, 2, 45, third(), "R1", "2027-06-25", "2027-06-29", List.of(), 11.4))
            .subList(0, count);
    return new SeasonOutcome(
        program,
        passes,
        List.of(year(0, count), year(1, count), year(2, count)),
        List.of(weed(palmer(), 97.25, 91.4), weed(foxtail(), 99.04, 98)),
        Optional.of(Money.ofDollars(81.37)),
        Money.ofDollars(6.57),
        Money.ofDollars(402.71),
        Optional.of(Money.ofDollars(569.26)),
        66.7);
  }

  /** The first pass once more at the end, so that sites are used twice. */
  static SeasonOutcome usedTwice() {
    SeasonOutcome o = outcome("Sample", 3);
    List<PassOutcome> passes = new ArrayList<>(o.passes());
    passes.add(o.passes().get(0));
    return new SeasonOutcome(
        o.program(),
        passes,
        o.years(),
        o.weeds(),
        o.cost(),
        o.loss(),
        o.untreatedLoss(),
        o.net(),
        o.windowConfidencePct());
  }

  private static PassOutcome pass(
      Book book,
      int index,
      int days,
      Mix mix,
      String stage,
      String earliest,
      String latest,
      List<Integer> missed,
      double runningStage) {
    LocalDate planned = PLANTED.plusDays(days);
    List<PassTiming.YearDay> years = new ArrayList<>();
    for (int y = 0; y < YEARS.length; y++) {
      years.add(new PassTiming.YearDay(YEARS[y], day(index, y), runningStage, 10));
    }
    return new PassOutcome(
        index,
        planned,
        new PassTiming(planned, years, planned.plusDays(1), runningStage, 10),
        LocalDate.parse(earliest),
        LocalDate.parse(latest),
        days,
        stage,
        mix,
        missed,
        book.prices().perAcre(mix),
        List.of(
            new PassWeed(
                PALMER,
                index < 2,
                index == 0 ? 0.63 : 4.4,
                index < 2 ? 3.3 : Double.NaN,
                index < 2 ? 7.1 : Double.NaN,
                index < 2 ? 4.06 : Double.NaN,
                index < 2 ? 9.66 : Double.NaN,
                index == 1
                    ? List.of(
                        site(4, "2,4-D choline", 92.1, false, true),
                        site(10, "glufosinate-ammonium", 71, false, false),
                        site(9, "glyphosate", 10, true, false))
                    : List.of(),
                index == 2
                    ? List.of()
                    : List.of(site(index == 0 ? 5 : 15, "metribuzin", 84, false, true))),
            new PassWeed(FOXTAIL, true, 2.1, 5, 8, 6, 11, List.of(), List.of())),
        LateCost.NONE,
        false);
  }

  private static SiteControl site(
      int number, String best, double pct, boolean struck, boolean effective) {
    return new SiteControl(Site.of(number), IngredientId.of(best), pct, struck, effective);
  }

  /** 11 May is day 252 of a season, 253 in a leap year. */
  private static int day(int pass, int year) {
    int planting = YEARS[year] % 4 == 0 ? 253 : 252;
    return planting + new int[] {0, 26, 45}[pass] + year;
  }

  private static YearOutcome year(int y, int count) {
    List<Integer> days = new ArrayList<>();
    List<PassSize> sizes = new ArrayList<>();
    for (int p = 0; p < count; p++) {
      boolean missed = p == 1 && y == 1;
      days.add(missed ? -1 : day(p, y));
      if (!missed && p < 2) {
        sizes.add(new PassSize(p, PALMER, 4.4 + y, 3.3 + y, 7.1 + y));
      }
    }
    List<LayerSpan> layers = new ArrayList<>();
    int first = day(0, y);
    layers.add(
        new LayerSpan(
            0, PALMER, List.of(IngredientId.of("metribuzin")), first + 3, first + 31 + y));
    if (y != 1 && count > 1) {
      layers.add(
          new LayerSpan(
              1, PALMER, List.of(IngredientId.of("S-metolachlor")), first + 28, first + 66));
    }
    Map<WeedId, Double> control = new LinkedHashMap<>();
    control.put(PALMER, 98.1 - 6.7 * (y % 2));
    control.put(FOXTAIL, 99.5 - 0.5 * y);
    return new YearOutcome(
        YEARS[y],
        days,
        sizes,
        layers,
        y == 1 ? List.of(new GapSpan(PALMER, first + 33, first + 60, 0.214)) : List.of(),
        control,
        Map.of(PALMER, y == 1 ? 0.214 : 0.012, FOXTAIL, 0.05),
        Map.of(PALMER, 0.1),
        Map.of(PALMER, 0.02),
        Map.of(PALMER, 0.09),
        0.004 + 0.011 * (y % 2));
  }

  private static WeedOutcome weed(WeedPressure pressure, double mean, double worst) {
    boolean driver = pressure.driver().isDriver();
    return new WeedOutcome(
        pressure,
        mean,
        worst,
        driver ? 1.2 : 5,
        driver ? 21.4 : 5,
        driver ? 0.4 : 1,
        driver ? 118.4 : 52,
        driver ? 1633.2 : 410,
        driver ? 1268.4 : 13.7,
        driver ? 1.46 : 0.187,
        driver ? 3 : 9.6,
        driver ? 31.2 : 60.2,
        driver ? 65.8 : 30.2,
        driver ? Optional.of(Site.of(15)) : Optional.empty(),
        driver ? 88.71 : 99.04,
        driver ? 1070.1 : 52,
        List.of(),
        driver ? List.of() : List.of("flumioxazin"));
  }
}
