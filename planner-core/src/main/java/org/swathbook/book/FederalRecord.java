package org.swathbook.book;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.swathbook.catalog.Ingredient;
import org.swathbook.program.ActiveDose;

/**
 * What United States law asks to be written down of restricted-use products, and what of it is not
 * there yet: product, its EPA registration number and total amount, place, size, crop, date, name
 * of the certified applicator and number of the certificate (7 CFR 110.3, from memory), within 14
 * days. States may ask for more, and sooner.
 *
 * @param restricted actives that make it a matter of record, in the order of the alphabet
 * @param unknown actives of which the catalog does not know whether they are restricted
 * @param missing what is to be filled in; empty when nothing is, or when nothing is restricted
 * @param due last day on which it may be written down
 */
public record FederalRecord(
    List<String> restricted, List<String> unknown, List<String> missing, LocalDate due) {

  /** Days in which the record is to be made. */
  public static final int DAYS = 14;

  public FederalRecord {
    restricted = List.copyOf(restricted);
    unknown = List.copyOf(unknown);
    missing = List.copyOf(missing);
  }

  /**
   * Of the rows of one pass.
   *
   * @param sprayed day of the pass
   */
  public static FederalRecord of(Field field, LocalDate sprayed, List<Application> rows) {
    TreeSet<String> restricted = new TreeSet<>();
    TreeSet<String> unknown = new TreeSet<>();
    List<String> missing = new ArrayList<>();
    for (Application row : rows) {
      List<String> actives = restricted(row);
      restricted.addAll(actives);
      row.dose().actives().stream()
          .map(ActiveDose::ingredient)
          .filter(i -> i.terms().restrictedUse().isUnknown())
          .forEach(i -> unknown.add(i.name()));
      if (!actives.isEmpty()) {
        String product = String.join(" + ", actives);
        missing(row).forEach(what -> missing.add(what + " of " + product));
        if (row.dose().named()) {
          missing.add("the product that brought " + product + ", and so its total amount");
        }
      }
    }
    if (!restricted.isEmpty() && !hasPlace(field)) {
      missing.add("the place: county, or latitude and longitude, in fields.csv");
    }
    return new FederalRecord(
        List.copyOf(restricted), List.copyOf(unknown), missing, sprayed.plusDays(DAYS));
  }

  private static boolean hasPlace(Field field) {
    return field.county().isPresent()
        || field.latitude().isPresent() && field.longitude().isPresent();
  }

  /** Days left to write down what is missing; negative when they are over. */
  public long daysLeft(LocalDate today) {
    return ChronoUnit.DAYS.between(today, due);
  }

  /** Actives of a row that are for certified applicators only. */
  public static List<String> restricted(Application row) {
    return row.dose().actives().stream()
        .map(ActiveDose::ingredient)
        .filter(i -> i.terms().restrictedUse().find().orElse(false))
        .map(Ingredient::name)
        .toList();
  }

  /** What a row lacks of what only a row can hold. */
  public static List<String> missing(Application row) {
    List<String> out = new ArrayList<>();
    need(out, row.epaRegNo(), "the EPA registration number");
    if (row.acres().isEmpty()) {
      out.add("the acres");
    }
    need(out, row.crop(), "the crop");
    need(out, row.record().applicator(), "the applicator");
    need(out, row.record().certNo(), "the certificate number");
    return out;
  }

  private static void need(List<String> out, String value, String what) {
    if (value.isBlank()) {
      out.add(what);
    }
  }
}
