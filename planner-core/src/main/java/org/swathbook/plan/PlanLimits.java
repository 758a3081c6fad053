package org.swathbook.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.swathbook.book.Book;
import org.swathbook.book.HouseRules;
import org.swathbook.measure.Money;
import org.swathbook.plan.PlanLimit.Asked;
import org.swathbook.plan.choice.PlanWishes;
import org.swathbook.program.Dose;
import org.swathbook.rules.Say;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.SeasonOutcome;

/**
 * The limits of a plan, each of which can be lifted by itself: what was asked, then those of the
 * house. Where a number of passes was asked, lifting it leaves the house's; of a number of the
 * house one more is allowed, and of its days every one but the same.
 */
public final class PlanLimits {
  private final Book book;
  private final HouseRules house;
  private final PlanWishes wishes;

  private PlanLimits(Book book, PlanWishes wishes) {
    this.book = book;
    this.house = book.house();
    this.wishes = wishes;
  }

  /** In a fixed order: what is left out, what is asked for, money, passes, products, days. */
  public static List<PlanLimit> of(Book book, PlanWishes wishes) {
    PlanLimits all = new PlanLimits(book, wishes);
    List<PlanLimit> out = all.choice();
    wishes.budgetPerAcre().ifPresent(b -> out.add(all.budget(b)));
    out.add(all.passes());
    out.add(all.products());
    out.add(all.days());
    return out;
  }

  /** What is to be used, and what is not. */
  private List<PlanLimit> choice() {
    List<PlanLimit> out = new ArrayList<>();
    wishes
        .without()
        .forEach(
            i ->
                out.add(
                    leftOut(
                        book.catalog().ingredient(i).name(),
                        wishes.allowing(i),
                        d -> d.actives().stream().anyMatch(a -> a.ingredient().id().equals(i)))));
    wishes
        .withoutProducts()
        .forEach(
            p ->
                out.add(
                    leftOut(
                        book.catalog().product(p).name(),
                        wishes.allowing(p),
                        d -> d.product().id().equals(p))));
    wishes
        .withoutSites()
        .forEach(
            s ->
                out.add(
                    leftOut(
                        "'site " + s + "'",
                        wishes.allowing(s),
                        d -> d.actives().stream().anyMatch(a -> a.ingredient().site().equals(s)))));
    wishes
        .include()
        .forEach(
            i ->
                out.add(
                    new PlanLimit(
                        "--must-include " + book.catalog().ingredient(i).name(),
                        "asked in one",
                        new Asked(book, wishes.notIncluding(i)),
                        o ->
                            doses(o)
                                    .flatMap(d -> d.actives().stream())
                                    .anyMatch(a -> a.ingredient().id().equals(i))
                                ? 0
                                : 1,
                        o -> "in no pass",
                        o -> true)));
    return out;
  }

  private PlanLimit leftOut(String what, PlanWishes lifted, Predicate<Dose> meant) {
    return new PlanLimit(
        "--without " + what,
        "asked without",
        new Asked(book, lifted),
        o -> usedToCome(o, meant).isEmpty() ? 0 : 1,
        o -> "with " + String.join(" and ", usedToCome(o, meant)),
        o -> true);
  }

  private static List<String> usedToCome(SeasonOutcome o, Predicate<Dose> meant) {
    return o.passes().stream()
        .filter(p -> !p.made())
        .flatMap(p -> p.mix().doses().stream())
        .filter(meant)
        .map(d -> d.product().name())
        .distinct()
        .toList();
  }

  private PlanLimit budget(Money most) {
    return new PlanLimit(
        "--budget",
        "at most $" + most + " asked",
        new Asked(book, wishes.withAnyBudget()),
        o -> Math.max(0, withEveryPass(o).minus(most).dollars()),
        o -> "$" + withEveryPass(o) + " an acre when every pass is made",
        o -> true);
  }

  private PlanLimit passes() {
    int most = Math.min(house.maxPasses(), wishes.maxPasses().orElse(house.maxPasses()));
    boolean asked = most < house.maxPasses();
    PlanWishes any = wishes.withAnyPasses();
    return new PlanLimit(
        asked ? "--max-passes" : "maxPasses",
        "at most " + most + " asked",
        new Asked(
            asked ? book : laidOut(most + 1, house.maxProducts(), house.minDaysBetweenPasses()),
            any),
        o -> Math.max(0, o.passes().size() - most),
        o -> counted(o.passes().size(), "pass", "passes"),
        o -> o.passes().size() >= most);
  }

  private PlanLimit products() {
    int most = house.maxProducts();
    return new PlanLimit(
        "maxProducts",
        "at most " + most + " asked",
        new Asked(laidOut(house.maxPasses(), most + 1, house.minDaysBetweenPasses()), wishes),
        o -> Math.max(0, products(o, fullest(o)) - most),
        o ->
            "pass "
                + (fullest(o) + 1)
                + ": "
                + counted(products(o, fullest(o)), "product", "products"),
        o -> products(o, fullest(o)) >= most);
  }

  private PlanLimit days() {
    int least = house.minDaysBetweenPasses();
    return new PlanLimit(
        "minDaysBetweenPasses",
        "at least " + least + " asked",
        new Asked(laidOut(house.maxPasses(), house.maxProducts(), Math.min(least, 1)), wishes),
        o -> narrowest(o).map(g -> Math.max(0, least - g.days())).orElse(0L),
        o -> narrowest(o).map(Gap::words).orElse("one pass"),
        o -> narrowest(o).filter(g -> g.days() < least + house.dateStepDays()).isPresent());
  }

  private Book laidOut(int passes, int products, int days) {
    return book.with(house.laidOut(passes, products, days));
  }

  private record Gap(LocalDate from, LocalDate to) {
    long days() {
      return ChronoUnit.DAYS.between(from, to);
    }

    String words() {
      return counted(days(), "day", "days") + " from " + Say.date(from) + " to " + Say.date(to);
    }
  }

  private static Optional<Gap> narrowest(SeasonOutcome o) {
    List<LocalDate> dates = o.passes().stream().map(PassOutcome::planned).sorted().toList();
    return IntStream.range(1, dates.size())
        .mapToObj(i -> new Gap(dates.get(i - 1), dates.get(i)))
        .min(Comparator.comparingLong(Gap::days));
  }

  /** Place of the pass to come with most products; the first of several. */
  private static int fullest(SeasonOutcome o) {
    return IntStream.range(0, o.passes().size())
        .boxed()
        .max(
            Comparator.<Integer>comparingInt(i -> products(o, i))
                .thenComparing(Comparator.reverseOrder()))
        .orElseThrow();
  }

  /** Of a pass to come: what is made keeps to no limit. */
  private static int products(SeasonOutcome o, int pass) {
    return o.passes().get(pass).made() ? 0 : o.passes().get(pass).mix().doses().size();
  }

  private static Stream<Dose> doses(SeasonOutcome o) {
    return o.passes().stream().flatMap(p -> p.mix().doses().stream());
  }

  private static String counted(long n, String one, String more) {
    return n + " " + (n == 1 ? one : more);
  }

  /**
   * Products and passes when no year misses one, per acre, as the planner holds them against a
   * budget: what is made without a price counts as nothing.
   */
  private Money withEveryPass(SeasonOutcome o) {
    Money sum = Money.ZERO;
    for (PassOutcome p : o.passes()) {
      sum = sum.plus(book.passCost());
      for (Dose d : p.mix().doses()) {
        sum = sum.plus(book.prices().perAcre(d).orElse(Money.ZERO));
      }
    }
    return sum;
  }
}
