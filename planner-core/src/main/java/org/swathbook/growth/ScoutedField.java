package org.swathbook.growth;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.ScoutedCount;
import org.swathbook.book.ScoutedHeight;
import org.swathbook.book.Scouting;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.Scouted;

/**
 * What was seen in one field up to a day, its zones put together: of a weed's heights the tallest
 * governs, its density is the mean by ground, of crop stages the furthest on the day counts, and
 * irrigation is the most that any row says of a day.
 */
public final class ScoutedField {

  /**
   * A weed on a day.
   *
   * @param height empty when only a count was written
   * @param perM2 empty when only a height was written
   */
  public record WeedSeen(
      LocalDate date, WeedId weed, Optional<ScoutedHeight> height, OptionalDouble perM2) {}

  private final List<WeedSeen> weeds;
  private final SortedMap<LocalDate, String> stages;
  private final SortedMap<LocalDate, Double> cropHeightsCm;
  private final SortedMap<LocalDate, Double> irrigationMm;

  /** The maps are handed over: nobody writes to them any more. */
  private ScoutedField(
      List<WeedSeen> weeds,
      SortedMap<LocalDate, String> stages,
      SortedMap<LocalDate, Double> cropHeightsCm,
      SortedMap<LocalDate, Double> irrigationMm) {
    this.weeds = List.copyOf(weeds);
    this.stages = Collections.unmodifiableSortedMap(stages);
    this.cropHeightsCm = Collections.unmodifiableSortedMap(cropHeightsCm);
    this.irrigationMm = Collections.unmodifiableSortedMap(irrigationMm);
  }

  /** What the book says of a field on days up to and with this one. */
  public static ScoutedField of(Book book, Field field, LocalDate observedTo) {
    Crop crop = book.catalog().crop(field.crop());
    SortedMap<LocalDate, SortedMap<WeedId, List<Scouting>>> seen = new TreeMap<>();
    SortedMap<LocalDate, String> stages = new TreeMap<>();
    SortedMap<LocalDate, Double> irrigationMm = new TreeMap<>();
    for (Scouting s : book.scoutings()) {
      if (!s.field().equals(field.id()) || s.date().isAfter(observedTo)) {
        continue;
      }
      if (s.weed().isPresent()) {
        seen.computeIfAbsent(s.date(), d -> new TreeMap<>())
            .computeIfAbsent(s.weed().get(), k -> new ArrayList<>())
            .add(s);
      }
      if (s.cropStage().isPresent()) {
        String known = stages.get(s.date());
        String now = s.cropStage().get();
        stages.put(s.date(), known == null ? now : later(crop, known, now));
      }
      if (s.irrigationMm() > 0) {
        irrigationMm.merge(s.date(), s.irrigationMm(), Math::max);
      }
    }
    List<WeedSeen> weeds = new ArrayList<>();
    seen.forEach((date, by) -> by.forEach((weed, rows) -> weeds.add(joined(date, weed, rows))));
    return new ScoutedField(weeds, stages, new TreeMap<>(), irrigationMm);
  }

  /**
   * With what was seen on one more day, which stands in the place of all that was seen later.
   *
   * @param perM2 plants of seen weeds, where the model's own number is not to stand
   */
  public ScoutedField and(LocalDate date, Scouted seen, Map<WeedId, Double> perM2) {
    List<WeedSeen> all = new ArrayList<>();
    weeds.stream().filter(w -> !isReplaced(w, date, seen)).forEach(all::add);
    seen.weedHeightCm()
        .forEach(
            (weed, cm) ->
                all.add(
                    new WeedSeen(
                        date,
                        weed,
                        Optional.of(ScoutedHeight.upTo(cm)),
                        perM2.containsKey(weed)
                            ? OptionalDouble.of(perM2.getOrDefault(weed, 0.0))
                            : OptionalDouble.empty())));
    all.sort(ScoutedField::byDate);
    SortedMap<LocalDate, String> newStages = new TreeMap<>(stages.headMap(date));
    SortedMap<LocalDate, Double> newHeights = new TreeMap<>(cropHeightsCm.headMap(date));
    if (seen.cropStage().isPresent()) {
      newStages.put(date, seen.cropStage().get());
    } else {
      newStages.putAll(stages.tailMap(date));
    }
    seen.cropHeightCm().ifPresent(cm -> newHeights.put(date, cm));
    return new ScoutedField(all, newStages, newHeights, irrigationMm);
  }

  private static int byDate(WeedSeen a, WeedSeen b) {
    int c = a.date().compareTo(b.date());
    return c != 0 ? c : a.weed().compareTo(b.weed());
  }

  private static boolean isReplaced(WeedSeen w, LocalDate date, Scouted seen) {
    return !w.date().isBefore(date) && seen.weedHeightCm().containsKey(w.weed());
  }

  private static String later(Crop crop, String a, String b) {
    return place(crop, a) >= place(crop, b) ? a : b;
  }

  private static int place(Crop crop, String stage) {
    return crop.findStage(stage).orElseThrow();
  }

  private static WeedSeen joined(LocalDate date, WeedId weed, List<Scouting> zones) {
    List<ScoutedHeight> heights = zones.stream().flatMap(z -> z.height().stream()).toList();
    List<ScoutedCount> counts = zones.stream().flatMap(z -> z.count().stream()).toList();
    return new WeedSeen(
        date,
        weed,
        heights.isEmpty() ? Optional.empty() : Optional.of(ScoutedHeight.tallest(heights)),
        counts.isEmpty()
            ? OptionalDouble.empty()
            : OptionalDouble.of(ScoutedCount.meanPerM2(counts)));
  }

  public boolean isEmpty() {
    return weeds.isEmpty() && stages.isEmpty() && cropHeightsCm.isEmpty() && irrigationMm.isEmpty();
  }

  /** All weeds seen, by date, then by id. */
  public List<WeedSeen> weeds() {
    return weeds;
  }

  List<WeedSeen> weeds(WeedId weed) {
    List<WeedSeen> out = new ArrayList<>();
    for (WeedSeen w : weeds) {
      if (w.weed().equals(weed)) {
        out.add(w);
      }
    }
    return List.copyOf(out);
  }

  /** Stage of the crop by date. */
  public SortedMap<LocalDate, String> stages() {
    return stages;
  }

  /** Height of the crop by date, cm. */
  SortedMap<LocalDate, Double> cropHeightsCm() {
    return cropHeightsCm;
  }

  /** Water put on by date, mm. */
  public SortedMap<LocalDate, Double> irrigationMm() {
    return irrigationMm;
  }
}
