package org.swathbook.cli.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.book.Resistance;
import org.swathbook.book.Tillage;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.Trait;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.measure.Inches;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Unit;
import org.swathbook.rules.Say;

/** What is known of a field: crop, soil, weeds. Unknown is said to be unknown. */
final class FieldText {

  private FieldText() {}

  static void head(Book book, Field field, Page page) {
    page.rule('=');
    page.line(
        field.id()
            + "  "
            + String.join(" · ", field.name(), field.grower(), acres(field.acres()) + " acres"));
    facts(book, field).forEach(l -> page.wrapped(0, 2, l));
    page.blank();
  }

  /** Crop, soil, what lies around, and what is assumed for want of a word in the book. */
  static List<String> facts(Book book, Field field) {
    List<String> out =
        new ArrayList<>(List.of(crop(book, field), soil(field), around(book, field)));
    List<String> assumed = TraceBuilder.assumed(field);
    if (!assumed.isEmpty()) {
      out.add("Assumed, since fields.csv does not say: " + String.join("; ", assumed));
    }
    return out;
  }

  static void weeds(Book book, Field field, Page page) {
    page.line("Weeds");
    Table table = new Table(2, "llrll");
    weedRows(book, field).forEach(table::row);
    table.on(page);
    weedNotes(book, field).forEach(n -> page.wrapped(2, 4, n));
    page.blank();
  }

  /**
   * {@code Note on Palmer amaranth: combine streaks along the headland}: what the adviser wrote in
   * weeds.csv for a reader; nothing is judged by it.
   */
  static List<String> weedNotes(Book book, Field field) {
    return book.weedsOf(field.id()).stream()
        .filter(w -> !w.note().isBlank())
        .map(w -> "Note on " + w.weed().name() + ": " + w.note().strip())
        .toList();
  }

  /** Name, code, density, whether it is a driver, resistance. */
  static List<List<String>> weedRows(Book book, Field field) {
    List<List<String>> out = new ArrayList<>();
    for (WeedPressure w : book.weedsOf(field.id())) {
      out.add(
          List.of(
              w.weed().name(),
              w.weed().id().value(),
              Figures.density(w.perM2()) + " plants/m²",
              driver(w.driver()),
              resistance(book, w)));
    }
    return out;
  }

  /** {@code ND-1, Long Eighty, 76 acres of soybean}: the field of a report on one tank or pass. */
  static String named(Book book, Field field) {
    return field.id()
        + ", "
        + field.name()
        + ", "
        + Numbers.grouped(field.acres(), 1)
        + " acres of "
        + cropName(book, field);
  }

  static String cropName(Book book, Field field) {
    return book.catalog().crop(field.crop()).name();
  }

  /** A crop beside this one may be none of the catalog. */
  private static String cropName(Book book, CropId crop) {
    return book.catalog().findCrop(crop.value()).map(Crop::name).orElse(crop.value());
  }

  private static String crop(Book book, Field field) {
    String rows =
        field.rowSpacingCm().isPresent()
            ? Numbers.decimals(Inches.ofCm(field.rowSpacingCm().getAsDouble()), 1) + " in rows"
            : "row spacing unknown";
    return String.join(
        ", ",
        cropName(book, field)
            + " ("
            + field.traits().map(FieldText::traits).orElse("traits unknown")
            + ")",
        rows,
        (field.tillage() == Tillage.NO_TILL ? "no-till" : "tilled")
            + (field.irrigated() ? ", irrigated" : ""),
        "planted " + Figures.date(field.plantDate()),
        field.harvestDate().map(d -> "harvest " + Figures.date(d)).orElse("harvest date unknown"),
        "yield goal " + Numbers.decimals(field.yieldGoalBuPerAcre(), 1) + " bu/acre");
  }

  private static String traits(Set<Trait> traits) {
    return traits.isEmpty()
        ? "no traits"
        : String.join(
            ", ",
            traits.stream().map(t -> t.value().equals("2-4-d") ? "2,4-D" : t.value()).toList());
  }

  private static String soil(Field field) {
    return String.join(
        ", ",
        either(
            field.soilTextures().stream().map(SoilTexture::spelling).toList(),
            "soil texture unknown"),
        numbers("organic matter", field.organicMatterPct(), " %"),
        numbers("pH", field.soilPh(), ""),
        "weather station " + field.station());
  }

  /**
   * What stood here before this crop, and what a pass may do harm to beyond it: the next one,
   * neighbors, water.
   */
  private static String around(Book book, Field field) {
    List<String> next = field.nextCrops().stream().map(c -> cropName(book, c)).toList();
    return String.join(
        ", ",
        field.previousCrop().map(c -> "after " + cropName(book, c)).orElse("previous crop unknown"),
        next.isEmpty()
            ? "next crop unknown"
            : "next crop "
                + String.join(" and ", next)
                + field.nextCropPlantDate().map(d -> " planted " + Figures.date(d)).orElse(""),
        field.neighbors().isEmpty()
            ? "no sensitive neighbor listed"
            : "nearby: " + String.join(" and ", field.neighbors()),
        water(field));
  }

  private static String water(Field field) {
    List<String> known = new ArrayList<>();
    if (field.waterDistanceM().isPresent()) {
      known.add(
          "water at "
              + Numbers.decimals(Unit.FOOT.fromSi(field.waterDistanceM().getAsDouble()), 0)
              + " ft");
    }
    field.waters().forEach(w -> known.add(w.words()));
    return known.isEmpty() ? "distance to water unknown" : String.join(", ", known);
  }

  private static String numbers(String what, List<Double> values, String unit) {
    String joined = either(values.stream().map(v -> Numbers.decimals(v, 2)).toList(), "");
    return joined.isEmpty() ? what + " unknown" : what + " " + joined + unit;
  }

  private static String either(List<String> values, String none) {
    return values.isEmpty() ? none : String.join(" or ", values);
  }

  static String acres(double acres) {
    return Numbers.grouped(acres, 1);
  }

  private static String driver(DriverKind kind) {
    return switch (kind) {
      case YES -> "driver";
      case NO -> "";
      case ZERO -> "zero: no survivor accepted";
    };
  }

  /**
   * {@code resists 2 and 9 in 90 %, 14 suspected in 30 %}; sites of one share and status together.
   */
  private static String resistance(Book book, WeedPressure w) {
    if (w.listed().isEmpty()) {
      return "no resistance listed";
    }
    Map<String, List<String>> byShare = new LinkedHashMap<>();
    for (Resistance r : w.listed()) {
      if (r.isWatched()) {
        continue;
      }
      String what =
          r.site()
              .map(s -> s.toString())
              .orElseGet(() -> book.catalog().ingredient(r.ingredient().orElseThrow()).name());
      String share =
          Numbers.decimals(100 * r.share(), 1)
              + " %"
              + (r.status().isBlank() ? "" : " " + r.status())
              + r.kept().map(FieldText::kept).orElse("");
      byShare.computeIfAbsent(share, s -> new ArrayList<>()).add(what);
    }
    List<String> listed = new ArrayList<>();
    byShare.forEach((share, what) -> listed.add(Figures.list(what) + " (" + share + ")"));
    List<String> watched =
        w.listed().stream()
            .filter(Resistance::isWatched)
            .map(r -> r.site().map(s -> "site " + s).orElse("") + ", " + r.status())
            .toList();
    return (listed.isEmpty() ? "no resistance listed" : "resists " + String.join(", ", listed))
        + (watched.isEmpty()
            ? ""
            : "; " + Say.SUSPECTED + ": " + String.join(", ", watched) + ", not tested");
  }

  /** {@code , keeps 40 % of the control}. */
  private static String kept(Resistance.Kept kept) {
    String leaf = Numbers.decimals(100 * kept.leaf(), 1) + " %";
    return kept.leaf() == kept.soil()
        ? ", keeps " + leaf + " of the control"
        : ", keeps "
            + leaf
            + " through leaves and "
            + Numbers.decimals(100 * kept.soil(), 1)
            + " % through soil";
  }
}
