package org.swathbook.audit;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.swathbook.book.Biotype;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.book.Resistance;
import org.swathbook.book.Tillage;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.SoilTexture;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.SharedOutdoors;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.Kernel;
import org.swathbook.season.SharedKernels;

/**
 * Outdoors of past seasons, computed once for all fields that had the same: station, season, crop
 * and its dates, soil, weeds and what was seen of the crop. Nothing that a sprayer does changes
 * them. Their kernels share what rests on no outdoors. One of these serves one audit of one book;
 * several threads may use it.
 */
final class SharedTraces {
  /** Fields by weather and soil, so that those that share them stand side by side. */
  static final Comparator<Field> BY_OUTDOORS = SharedTraces::byOutdoors;

  /**
   * Places of fields in a list, those that share weather and soil one after the other. They are
   * gathered first: thousands of fields share some hundreds of them, which are soon put in order.
   */
  static List<Integer> placesByOutdoors(List<Field> fields) {
    Map<Field, List<Integer>> alike = new TreeMap<>(BY_OUTDOORS);
    for (int i = 0; i < fields.size(); i++) {
      alike.computeIfAbsent(fields.get(i), f -> new ArrayList<>()).add(i);
    }
    return alike.values().stream().flatMap(List::stream).toList();
  }

  private static int byOutdoors(Field a, Field b) {
    int c = a.station().compareTo(b.station());
    if (c == 0) {
      c = texture(a).compareTo(texture(b));
    }
    return c != 0 ? c : Double.compare(a.latitude().orElse(0), b.latitude().orElse(0));
  }

  private static String texture(Field f) {
    return f.soilTextures().isEmpty() ? "" : f.soilTextures().get(0).name();
  }

  /** So many are kept; a field whose like comes later has its own made again. */
  private static final int KEPT = 1000;

  private final Cache<Same, TraceSet> known =
      Caffeine.newBuilder().maximumSize(KEPT).executor(Runnable::run).build();
  private final SharedOutdoors outdoors = new SharedOutdoors();
  private final SharedKernels kernels;

  /** All of a field and season from which its outdoors is computed. */
  private record Same(
      int season,
      String station,
      CropId crop,
      double yieldGoalBuPerAcre,
      Optional<Double> rowSpacingCm,
      LocalDate plantDate,
      Optional<LocalDate> harvestDate,
      Tillage tillage,
      List<SoilTexture> soilTextures,
      Optional<Double> latitude,
      List<SameWeed> weeds,
      List<SameSight> seen) {

    /** By what tells most of them apart: all of it would take longer than to compare it once. */
    @Override
    public int hashCode() {
      return 31 * (31 * (31 * season + station.hashCode()) + crop.hashCode())
          + plantDate.hashCode();
    }
  }

  private record SameWeed(
      WeedId weed,
      double perM2,
      DriverKind driver,
      List<Biotype> biotypes,
      List<Resistance> listed) {

    static SameWeed of(WeedPressure w) {
      return new SameWeed(w.weed().id(), w.perM2(), w.driver(), w.biotypes(), w.listed());
    }
  }

  private record SameSight(LocalDate date, Optional<String> cropStage) {}

  SharedTraces(Catalog catalog) {
    this.kernels = new SharedKernels(catalog);
  }

  Kernel kernel(Book past, TraceSet traces) {
    return Kernel.of(past, traces, kernels);
  }

  /**
   * Whether the outdoors of a season is known: the station has all of its days, and it was planted
   * in them.
   */
  boolean has(Book book, Field field, LocalDate planted, int season) {
    return !planted.isBefore(LocalDate.of(season - 1, 9, 1))
        && !planted.isAfter(LocalDate.of(season, 10, 31))
        && book.station(field).scenarioYears().contains(season);
  }

  /** The outdoors of the book's very season, which {@link #has} found to be known. */
  TraceSet of(Book past, Field field) {
    List<WeedPressure> weeds = past.weedsOf(field.id());
    TraceSet same = known.get(same(past, field, weeds), k -> once(past, field));
    return new TraceSet(field, same.crop(), weeds, same.years());
  }

  /** The same, not kept for another field. */
  TraceSet once(Book past, Field field) {
    return TraceBuilder.ofSeason(past, field, outdoors);
  }

  private static Same same(Book past, Field field, List<WeedPressure> weeds) {
    return new Same(
        past.season(),
        field.station(),
        field.crop(),
        field.yieldGoalBuPerAcre(),
        boxed(field.rowSpacingCm()),
        field.plantDate(),
        field.harvestDate(),
        field.tillage(),
        field.soilTextures(),
        boxed(field.latitude()),
        weeds.stream().map(SameWeed::of).toList(),
        past.scoutings().stream().map(s -> new SameSight(s.date(), s.cropStage())).toList());
  }

  private static Optional<Double> boxed(OptionalDouble d) {
    return d.isPresent() ? Optional.of(d.getAsDouble()) : Optional.empty();
  }
}
