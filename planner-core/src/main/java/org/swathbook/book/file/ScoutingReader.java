package org.swathbook.book.file;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.book.Field;
import org.swathbook.book.ScoutedCount;
import org.swathbook.book.ScoutedHeight;
import org.swathbook.book.Scouting;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropStage;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.FieldId;
import org.swathbook.source.CsvColumns;
import org.swathbook.source.CsvRow;
import org.swathbook.source.Problems;

/** Reads {@code scouting.csv}: what was seen in the fields of the season, one zone a row. */
final class ScoutingReader {
  static final Table TABLE =
      new Table(
          "scouting.csv",
          CsvColumns.required("date", "field")
              .andOptional(
                  "zone", "weed", "height", "count", "area", "cropStage", "irrigation", "note"));

  private final Names names;
  private final FieldList fields;
  private final Optional<List<WeedPressure>> weeds;
  private final SeasonDates dates;
  private final Problems problems;
  private final Map<String, Integer> lines = new LinkedHashMap<>();
  private final Map<FieldId, SortedMap<LocalDate, Stage>> stages = new LinkedHashMap<>();
  private final List<Scouting> out = new ArrayList<>();

  private record Stage(int place, Row row) {}

  /**
   * @param weeds those of the fields; empty when their table has problems, and then every weed fits
   */
  ScoutingReader(
      Names names,
      FieldList fields,
      Optional<List<WeedPressure>> weeds,
      SeasonDates dates,
      Problems problems) {
    this.names = names;
    this.fields = fields;
    this.weeds = weeds;
    this.dates = dates;
    this.problems = problems;
  }

  List<Scouting> read(Path book) {
    TABLE.read(book, problems, this::row);
    stages.values().forEach(this::neverBack);
    return out;
  }

  private void row(CsvRow csv) {
    Row row = new Row(csv, problems);
    Optional<LocalDate> date = row.need("date", dates::inSeason, "2027-06-01");
    Optional<FieldId> field = row.need("field", fields::parse, "ND-1");
    Optional<Weed> weed = row.find("weed", names::weed, "AMAPA");
    Optional<ScoutedHeight> height = row.find("height", ScoutingCells::height, "4 in");
    Optional<ScoutedCount> count = count(row);
    Optional<Double> irrigation = row.find("irrigation", ScoutingCells::irrigationMm, "0.8 in");
    Optional<String> stage = field.flatMap(fields::find).flatMap(f -> stage(row, f, date));
    weedAndWhatIsSaidOfIt(row, height, count);
    field.ifPresent(f -> weed.ifPresent(w -> listed(row, f, w)));
    if (!row.isSound()) {
      return;
    }
    Scouting seen =
        new Scouting(
            date.orElseThrow(),
            field.orElseThrow(),
            row.text("zone"),
            weed.map(Weed::id),
            height,
            count,
            stage,
            irrigation.orElse(0.0));
    once(row, seen);
    if (row.isSound()) {
      out.add(seen);
    }
  }

  /** With an area the cell holds plants, without one a density. */
  private static Optional<ScoutedCount> count(Row row) {
    if (row.isBlank("count")) {
      if (!row.isBlank("area")) {
        row.problem(
            "area", "an area without a count", "write in count how many plants stood on it");
      }
      return Optional.empty();
    }
    if (row.isBlank("area")) {
      return row.find("count", ScoutingCells::density, "3 /m2");
    }
    Optional<Double> plants = row.find("count", ScoutingCells::plants, "23");
    Optional<Double> area = row.find("area", ScoutingCells::areaM2, "10 ft2");
    return plants.isPresent() && area.isPresent()
        ? Optional.of(new ScoutedCount(plants.get() / area.get(), OptionalDouble.of(area.get())))
        : Optional.empty();
  }

  private Optional<String> stage(Row row, Field field, Optional<LocalDate> date) {
    Optional<Crop> crop = names.catalog().findCrop(field.crop().value());
    if (row.isBlank("cropStage") || crop.isEmpty()) {
      return Optional.empty();
    }
    List<String> known = crop.get().stages().stream().map(CropStage::name).toList();
    String text = row.text("cropStage");
    OptionalInt place = crop.get().findStage(text);
    if (place.isEmpty()) {
      row.find(
          "cropStage",
          t -> {
            throw Names.unknown(t, "stage of " + field.crop(), known);
          },
          "V3");
      return Optional.empty();
    }
    if (date.isPresent() && date.get().isBefore(field.plantDate())) {
      row.problem(
          "cropStage",
          "a stage of " + field.crop() + " before it is planted on " + field.plantDate(),
          "mend the date here or plantDate in fields.csv, or leave the stage blank");
      return Optional.empty();
    }
    date.ifPresent(
        d ->
            stages
                .computeIfAbsent(field.id(), f -> new TreeMap<>())
                .merge(
                    d, new Stage(place.getAsInt(), row), (a, b) -> a.place() >= b.place() ? a : b));
    return Optional.of(known.get(place.getAsInt()));
  }

  private void neverBack(SortedMap<LocalDate, Stage> ofField) {
    Map.Entry<LocalDate, Stage> before = null;
    for (Map.Entry<LocalDate, Stage> now : ofField.entrySet()) {
      if (before != null && now.getValue().place() < before.getValue().place()) {
        Row row = now.getValue().row();
        row.problem(
            "cropStage",
            "'"
                + row.text("cropStage")
                + "' comes before "
                + before.getValue().row().text("cropStage")
                + ", seen on "
                + before.getKey()
                + " already",
            "mend the one that is wrong; a crop does not go back");
      } else {
        before = now;
      }
    }
  }

  private static void weedAndWhatIsSaidOfIt(
      Row row, Optional<ScoutedHeight> height, Optional<ScoutedCount> count) {
    boolean said = !row.isBlank("height") || !row.isBlank("count");
    if (said && row.isBlank("weed")) {
      row.problem("weed", "a height or a count of no weed", "name the weed by EPPO code, as AMAPA");
    } else if (!said && !row.isBlank("weed") && row.isBlank("area")) {
      row.problem(
          "weed",
          "neither height nor count of '" + row.text("weed") + "'",
          "write one of them, or a count of 0 on an area where none stands");
    } else if (!said
        && row.isBlank("weed")
        && row.isBlank("area")
        && row.isBlank("cropStage")
        && row.isBlank("irrigation")) {
      row.problem(
          "date", "the row says nothing", "write a weed and its height, a cropStage or irrigation");
    }
    if (height.isPresent() && count.isPresent() && count.get().perM2() == 0) {
      row.problem(
          "height", "a height of plants of which 0 stand", "leave the height or the count blank");
    }
  }

  private void listed(Row row, FieldId field, Weed weed) {
    boolean known =
        weeds.isEmpty()
            || weeds.get().stream()
                .anyMatch(w -> w.field().equals(field) && w.weed().id().equals(weed.id()));
    if (!known) {
      row.problem(
          "weed",
          weed.id() + " has no row in weeds.csv for " + field,
          "write its row there first, with the density you expect");
    }
  }

  /** A zone says one thing of a weed on a day, and a day has one irrigation. */
  private void once(Row row, Scouting seen) {
    String where = seen.field() + " " + seen.date() + " ";
    if (seen.irrigationMm() > 0) {
      Integer line = lines.putIfAbsent(where + "irrigation", row.line());
      if (line != null) {
        row.problem(
            "irrigation",
            "line " + line + " has the irrigation of " + seen.field() + " on that day already",
            "write the water of a day once, all of it");
      }
    }
    Optional<WeedId> weed = seen.weed();
    if (weed.isPresent() && !seen.zone().isEmpty()) {
      String zone = seen.zone().strip().toLowerCase(Locale.ROOT);
      Integer line = lines.putIfAbsent(where + weed.get() + " " + zone, row.line());
      if (line != null) {
        row.problem(
            "zone",
            "line " + line + " tells of " + weed.get() + " in '" + seen.zone() + "' already",
            "name another zone, or put both rows together");
      }
    }
  }
}
