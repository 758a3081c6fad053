package org.swathbook.catalog.review;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.swathbook.catalog.Cap;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.file.EntryKind;
import org.swathbook.catalog.file.WrittenCatalog;
import org.swathbook.measure.Quantity;

/**
 * A premix in which one partner has passed its highest rate or its cap before another reaches its
 * lowest rate: at no dose are both within their labels.
 */
final class PremixCheck implements Check {

  /** The doses of the product, in its own measure per hectare, that keep one partner in range. */
  private record Range(Ingredient partner, double least, double most) {}

  @Override
  public List<Remark> remarks(WrittenCatalog catalog, LocalDate today) {
    List<Remark> out = new ArrayList<>();
    for (Product p : catalog.catalog().products()) {
      if (!p.isSingle()) {
        catalog
            .find(EntryKind.PRODUCT, p.id().value())
            .ifPresent(
                e ->
                    what(catalog.catalog(), p)
                        .ifPresent(
                            what ->
                                out.add(
                                    Remark.error(
                                        e.mark(),
                                        what,
                                        "correct the strengths, or the rates and caps of the"
                                            + " ingredients"))));
      }
    }
    return out;
  }

  private static Optional<String> what(Catalog catalog, Product p) {
    List<Ingredient> partners =
        p.contents().stream().map(c -> catalog.ingredient(c.ingredient())).toList();
    TreeSet<CropId> crops = new TreeSet<>();
    partners.forEach(i -> i.uses().forEach(u -> u.crop().ifPresent(crops::add)));
    Optional<String> first = Optional.empty();
    boolean shared = false;
    for (CropId crop : crops) {
      for (Position.Phase phase : Position.Phase.values()) {
        List<Range> ranges = new ArrayList<>();
        for (int i = 0; i < partners.size(); i++) {
          range(partners.get(i), p.contents().get(i), crop, phase).ifPresent(ranges::add);
        }
        if (ranges.size() < partners.size()) {
          continue;
        }
        shared = true;
        Range latest = ranges.stream().max(Comparator.comparing(Range::least)).orElseThrow();
        Range ends = ranges.stream().min(Comparator.comparing(Range::most)).orElseThrow();
        if (!Quantity.exceeds(latest.least(), ends.most())) {
          return Optional.empty();
        }
        first =
            first.or(
                () ->
                    Optional.of(
                        "at no dose are both within their labels: where "
                            + latest.partner().name()
                            + " reaches its lowest rate, "
                            + ends.partner().name()
                            + " is past its highest rate or cap"));
      }
    }
    return shared
        ? first
        : Optional.of("no crop is labelled for all its ingredients at the same time of the season");
  }

  private static Optional<Range> range(
      Ingredient i, Product.Content content, CropId crop, Position.Phase phase) {
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Use u : i.uses()) {
      if (u.refused() || !u.isFor(crop) || !u.isIn(phase)) {
        continue;
      }
      double cap =
          u.caps().find().orElse(List.of()).stream()
              .filter(c -> c.counts(u.positions()))
              .mapToDouble((Cap c) -> c.amount().kgPerHa())
              .min()
              .orElse(Double.POSITIVE_INFINITY);
      for (RateRow row : u.rates().find().orElse(List.of())) {
        if (row.rates().isPresent()) {
          least = Math.min(least, row.rates().get().low().kgPerHa());
          most = Math.max(most, Math.min(cap, row.rates().get().high().kgPerHa()));
        }
      }
    }
    return most == 0
        ? Optional.empty()
        : Optional.of(
            new Range(
                i,
                content.concentration().productPerHa(least),
                content.concentration().productPerHa(most)));
  }
}
