package org.swathbook.catalog.file;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.function.Supplier;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.measure.Basis;
import org.swathbook.measure.Quantity;
import org.swathbook.measure.Rate;
import org.swathbook.measure.RateRange;
import org.swathbook.measure.Unit;

/** Draws the pieces of which random catalogs are made: values as a reader could have made them. */
final class Draw {
  private static final List<String> SCRAPS =
      List.of(
          "a",
          "corn",
          "2",
          " ",
          ", ",
          ": ",
          " #",
          "-",
          "'",
          "\"",
          "[",
          "{",
          "&",
          "*",
          "!",
          "|",
          ">",
          "%",
          "@",
          "é",
          "\ud83c\udf3d",
          "\u00a0",
          ".",
          "none",
          "?",
          "=",
          "~",
          "\\",
          "/");
  private static final List<String> HARD = List.of("\n", "\t", "\u0007", "\u2028", "\ufeff");
  private static final List<Unit> MASSES =
      List.of(Unit.POUND, Unit.GRAM, Unit.KILOGRAM, Unit.OUNCE_WEIGHT);
  private static final List<Unit> AREAS =
      List.of(Unit.ACRE, Unit.HECTARE, Unit.SQUARE_FOOT, Unit.SQUARE_METRE);

  private final Random random;
  private final List<Source> sources = new ArrayList<>();
  private int names;

  Draw(Random random) {
    this.random = random;
    sources.add(Source.FROM_MEMORY);
    sources.add(Source.NOT_GIVEN);
    sources.add(new Source("a label, second page"));
    sources.add(new Source(text()));
  }

  boolean chance(double share) {
    return random.nextDouble() < share;
  }

  /** From one to another, both inside. */
  int whole(int from, int to) {
    return from + random.nextInt(to - from + 1);
  }

  <T> T pick(List<T> items) {
    return items.get(random.nextInt(items.size()));
  }

  @SafeVarargs
  final <T> T pick(T... items) {
    return items[random.nextInt(items.length)];
  }

  /** Some of the items in a random order, at least so many. */
  <T> Set<T> some(List<T> items, int least) {
    int wanted = whole(least, items.size());
    Set<T> out = new LinkedHashSet<>();
    while (out.size() < wanted) {
      out.add(pick(items));
    }
    return out;
  }

  <T> Optional<T> maybe(Supplier<T> value) {
    return chance(0.5) ? Optional.of(value.get()) : Optional.empty();
  }

  <T> List<T> list(int least, int most, Supplier<T> item) {
    List<T> out = new ArrayList<>();
    int size = whole(least, most);
    for (int i = 0; i < size; i++) {
      out.add(item.get());
    }
    return out;
  }

  <T> Stated<T> stated(String what, Supplier<T> value) {
    return chance(0.2) ? Stated.unknown(what) : known(value);
  }

  /** A value or a known none. */
  <T> Stated<T> known(Supplier<T> value) {
    return chance(0.2) ? Stated.none(source()) : Stated.value(value.get(), source());
  }

  /** Few different ones, so that values share them, and now and then none. */
  Source source() {
    return pick(sources);
  }

  /** Any text that is not blank, with blanks neither before nor behind it. */
  String text() {
    StringBuilder out = new StringBuilder();
    int size = whole(1, 6);
    for (int i = 0; i < size; i++) {
      out.append(chance(0.05) ? pick(HARD) : pick(SCRAPS));
    }
    String text = out.toString().strip();
    return text.isEmpty() ? "x" : text;
  }

  /** A text that no other has, in any spelling. */
  String name() {
    return text() + " n" + ++names;
  }

  List<String> names(int most) {
    return list(0, most, this::name);
  }

  /** What people write, and now and then what only a computer would. */
  double number(double from, double to) {
    double value = from + random.nextDouble() * (to - from);
    if (chance(0.1)) {
      return value;
    }
    return decimal(from, to, whole(0, 4));
  }

  double decimal(double from, double to, int decimals) {
    double value = from + random.nextDouble() * (to - from);
    double rounded =
        BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).doubleValue();
    return rounded < from || rounded > to ? value : rounded;
  }

  /** A quantity as read in the unit that is kept, from any unit that a file may use. */
  double quantity(double to, Unit kept, Unit... units) {
    Unit unit = pick(units);
    double most = new Quantity(to, kept).in(unit);
    double least = new Quantity(to / 1000, kept).in(unit);
    return new Quantity(number(least, most), unit).in(kept);
  }

  double heightCm() {
    return quantity(300, Unit.CENTIMETRE, Unit.INCH, Unit.CENTIMETRE, Unit.METRE, Unit.FOOT);
  }

  double rainMm() {
    return quantity(100, Unit.MILLIMETRE, Unit.INCH, Unit.MILLIMETRE, Unit.CENTIMETRE);
  }

  double hours() {
    return quantity(100, Unit.HOUR, Unit.HOUR, Unit.DAY);
  }

  double feet() {
    return quantity(500, Unit.FOOT, Unit.FOOT, Unit.METRE, Unit.INCH);
  }

  double share() {
    return Unit.PERCENT.toSi(number(0, 100));
  }

  /** As the soil conditions of a row read a percentage. */
  double percentage() {
    return share() * 100;
  }

  Rate rate(Basis basis) {
    return new Rate(number(0.001, 10), pick(MASSES), pick(AREAS), basis);
  }

  /** A rate in the same unit, not below. */
  Rate above(Rate rate) {
    return new Rate(rate.amount() + number(0, 5), rate.unit(), rate.area(), rate.basis());
  }

  RateRange range(Basis basis) {
    Rate low = rate(basis);
    return new RateRange(low, chance(0.3) ? low : above(low));
  }

  /** An interval between two values of a kind, open on one side or on none. */
  Limit limit(Supplier<Double> end) {
    double a = end.get();
    Limit both = both(a, end.get());
    return switch (whole(0, 5)) {
      case 0 -> Limit.atMost(a);
      case 1 -> Limit.below(a);
      case 2 -> Limit.atLeast(a);
      case 3 -> Limit.above(a);
      case 4 -> both;
      default -> new Limit(both.least(), false, both.most(), !both.least().equals(both.most()));
    };
  }

  /** The same with its ends inside. */
  Limit minMax(Supplier<Double> end) {
    double a = end.get();
    return switch (whole(0, 2)) {
      case 0 -> Limit.atMost(a);
      case 1 -> Limit.atLeast(a);
      default -> both(a, end.get());
    };
  }

  private static Limit both(double a, double b) {
    return new Limit(box(Math.min(a, b)), false, box(Math.max(a, b)), false);
  }

  static OptionalDouble box(double value) {
    return OptionalDouble.of(value);
  }

  LocalDate date() {
    return LocalDate.of(2020, 1, 1).plusDays(whole(0, 4000));
  }

  MonthDay monthDay() {
    return chance(0.05) ? MonthDay.of(2, 29) : MonthDay.from(date());
  }
}
