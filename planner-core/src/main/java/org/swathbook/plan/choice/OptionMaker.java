package org.swathbook.plan.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.SoilRates;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Catalog;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Product;
import org.swathbook.catalog.Response;
import org.swathbook.catalog.Use;
import org.swathbook.growth.UseFinder;
import org.swathbook.measure.Money;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;

/**
 * The doses from which the planner chooses: every product of one active that has a price, at the
 * low and at the high end of each range that the label allows on the field's soils, rounded inwards
 * to the product's practical step.
 */
public final class OptionMaker {
  /**
   * An active that gives no weed of the field this much control, percent, is not worth a search:
   * default, ours.
   */
  private static final double WORTH_A_LOOK_PCT = 40;

  private final Book book;
  private final Field field;
  private final List<DoseOption> options = new ArrayList<>();
  private final List<String> leftOut = new ArrayList<>();

  private OptionMaker(Book book, Field field) {
    this.book = book;
    this.field = field;
  }

  /** Options in the order of product id and rate, and what was left out with the reason. */
  public record Made(List<DoseOption> options, List<String> leftOut) {

    /** Whether a remark is on this product. */
    public boolean leavesOut(Product product) {
      return leftOut.stream().anyMatch(l -> isOn(l, product));
    }

    /** Whether one of the remarks is on this product. */
    public static boolean isOn(String remark, Product product) {
      return remark.startsWith(product.name() + ":");
    }

    /** With one more remark. */
    public Made withLeftOut(String remark) {
      return withLeftOut(List.of(remark));
    }

    /** With more remarks, before the others. */
    public Made withLeftOut(List<String> remarks) {
      List<String> all = new ArrayList<>(remarks);
      all.addAll(leftOut);
      return new Made(options, List.copyOf(all));
    }
  }

  public static Made make(Book book, Field field) {
    OptionMaker m = new OptionMaker(book, field);
    book.catalog().products().forEach(m::add);
    return new Made(List.copyOf(m.options), List.copyOf(m.leftOut));
  }

  private void add(Product product) {
    if (!product.isSingle()) {
      return;
    }
    Ingredient active = book.catalog().ingredient(product.contents().get(0).ingredient());
    TreeSet<Double> amounts = new TreeSet<>();
    for (Position.Phase phase : List.of(Position.Phase.BEFORE_EMERGENCE, Position.Phase.IN_CROP)) {
      for (Use use : UseFinder.candidates(active, product.formulation(), field, phase)) {
        if (!use.refused() && SoilRates.of(use, field) instanceof SoilRates.Allowed a) {
          practicalAmounts(product, a, amounts);
        }
      }
    }
    if (amounts.isEmpty()) {
      return;
    }
    if (!worthALook(active)) {
      leftOut.add(product.name() + ": no known control of a weed of this field");
      return;
    }
    for (double amount : amounts) {
      Rate rate =
          new Rate(
              amount, product.spoken().unit(), product.spoken().area(), product.spoken().basis());
      Dose dose = Doses.ofProduct(book.catalog(), product, rate);
      Optional<Money> cost = book.prices().perAcre(dose);
      if (cost.isEmpty()) {
        leftOut.add(product.name() + ": no price in prices.csv");
        return;
      }
      options.add(new DoseOption(options.size(), dose, active.id(), cost.get()));
    }
  }

  /**
   * Low end rounded up and high end rounded down to the step; the exact high end when no step lies
   * between.
   */
  private static void practicalAmounts(
      Product product, SoilRates.Allowed allowed, Set<Double> out) {
    double low = Doses.productRate(product, allowed.range().low()).amount();
    double high = Doses.productRate(product, allowed.range().high()).amount();
    if (Quantity.exceeds(low, high)) {
      return;
    }
    double step = product.step().like(product.spoken()).amount();
    double lowSteps = Math.ceil(low / step - 1e-6);
    double highSteps = Math.floor(high / step + 1e-6);
    if (highSteps >= lowSteps) {
      out.add(clean(lowSteps * step));
      out.add(clean(highSteps * step));
    } else {
      out.add(high);
    }
  }

  /** Removes the dust of binary fractions, so that 3 steps of 0.1 read 0.3. */
  private static double clean(double x) {
    return Math.rint(x * 1e6) / 1e6;
  }

  private boolean worthALook(Ingredient active) {
    Catalog catalog = book.catalog();
    for (WeedPressure w : book.weedsOf(field.id())) {
      for (Response.Timing t : Response.Timing.values()) {
        Optional<Response> r = catalog.response(w.weed().id(), active.id(), t).find();
        if (r.isPresent() && r.get().emaxPct() >= WORTH_A_LOOK_PCT) {
          return true;
        }
      }
    }
    return false;
  }
}
