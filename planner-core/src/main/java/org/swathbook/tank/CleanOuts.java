package org.swathbook.tank;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.CleanOut;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.catalog.Terms;

/**
 * What has to be done to a sprayer that held these actives.
 *
 * @param rows by name of the active, each once
 */
public record CleanOuts(List<Row> rows) {

  /**
   * @param stated least clean-out before crops that its traces injure
   */
  public record Row(Ingredient ingredient, Stated<CleanOut> stated) {}

  public CleanOuts {
    rows = List.copyOf(rows);
  }

  /** After a load of these partners. */
  static CleanOuts after(List<Partner> partners) {
    Map<String, Row> rows = new TreeMap<>();
    for (Partner p : partners) {
      add(rows, p.ingredient(), p.terms());
    }
    return new CleanOuts(new ArrayList<>(rows.values()));
  }

  /** After loads of these actives, whatever they were sprayed for. */
  static CleanOuts of(List<Ingredient> actives) {
    Map<String, Row> rows = new TreeMap<>();
    actives.forEach(i -> add(rows, i, i.terms()));
    return new CleanOuts(new ArrayList<>(rows.values()));
  }

  private static void add(Map<String, Row> rows, Ingredient ingredient, Terms terms) {
    rows.putIfAbsent(ingredient.name(), new Row(ingredient, terms.tank().cleanOut()));
  }

  /** The most thorough that any of them asks for; empty when none is stated. */
  public Optional<Rinse> strictest() {
    return rows.stream()
        .flatMap(r -> r.stated().find().stream())
        .map(CleanOut::least)
        .max(Comparator.naturalOrder());
  }

  /** Actives of which it is not known, by name. */
  public List<String> unknown() {
    return rows.stream()
        .filter(r -> r.stated().isUnknown())
        .map(r -> r.ingredient().name())
        .toList();
  }
}
