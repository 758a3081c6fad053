package org.swathbook.audit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Catalog;
import org.swathbook.growth.SharedOutdoors;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.season.Kernel;
import org.swathbook.season.SharedKernels;

/**
 * Outdoors of past seasons. What fields have in common of it, by station and season, soil, crop or
 * weed, is computed once: nothing that a sprayer does changes it. Their kernels share what rests on
 * no outdoors. One of these serves one audit of one book; several threads may use it.
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

  private final SharedOutdoors outdoors = new SharedOutdoors();
  private final SharedKernels kernels;

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

  /**
   * The outdoors of the book's very season, which {@link #has} found to be known. It is not kept:
   * hardly two fields of a long journal have all of it in common.
   */
  TraceSet of(Book past, Field field) {
    return TraceBuilder.ofSeason(past, field, outdoors);
  }
}
