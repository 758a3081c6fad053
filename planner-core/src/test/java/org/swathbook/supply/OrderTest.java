package org.swathbook.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.swathbook.book.HeldStock;
import org.swathbook.book.Prices;
import org.swathbook.catalog.Product;
import org.swathbook.measure.Money;
import org.swathbook.measure.Price;
import org.swathbook.measure.Quantity;
import org.swathbook.program.FieldId;
import org.swathbook.testing.Fixtures;

class OrderTest {
  private static final Product GLYPHOSATE =
      Fixtures.catalog().findProduct("glyphosate-4.5sl").orElseThrow();
  private static final LocalDate MAY = LocalDate.of(2027, 5, 11);
  private static final LocalDate JUNE = LocalDate.of(2027, 6, 8);

  static Need need(String grower, LocalDate date, double gallons) {
    return new Need(
        grower, new FieldId("F-" + grower), 1, date, GLYPHOSATE, Quantity.parse(gallons + " gal"));
  }

  static HeldStock held(String grower, String amount, String goodUntil) {
    return new HeldStock(
        GLYPHOSATE.id(),
        grower.isEmpty() ? Optional.empty() : Optional.of(grower),
        Quantity.parse(amount),
        goodUntil.isEmpty() ? Optional.empty() : Optional.of(LocalDate.parse(goodUntil)));
  }

  /** At 18 dollars a gallon in jugs of 2.5 gal. */
  static Prices prices(HeldStock... held) {
    return new Prices(
        Map.of(GLYPHOSATE.id(), Price.parse("18 $/gal")),
        Map.of(
            GLYPHOSATE.id(),
            new Prices.Stock(Optional.of(Quantity.parse("2.5 gal")), Optional.empty())),
        List.of(held));
  }

  private static OrderLine only(Prices prices, Need... needs) {
    return Order.of(prices, List.of(needs)).pooled().get(0);
  }

  private static OrderLine of(Order order, String grower) {
    return order.byGrower().getOrDefault(grower, List.of()).get(0);
  }

  @Test
  void packagesAreRoundedUpAndAWholeNumberOfThemStays() {
    assertThat(only(prices(), need("A", MAY, 7.5)).packages()).hasValue(3);
    assertThat(only(prices(), need("A", MAY, 7.5001)).packages()).hasValue(4);
    assertThat(only(prices(), need("A", MAY, 7.4999)).packages()).hasValue(3);
    // Ten fifths of a jug are two jugs, whatever the sum of binary fractions.
    Need[] tenths = new Need[10];
    Arrays.fill(tenths, need("A", MAY, 0.5));
    assertThat(only(prices(), tenths).packages()).hasValue(2);
    OrderLine line = only(prices(), need("A", MAY, 6));
    assertThat(line.cost()).contains(Money.ofDollars(3 * 2.5 * 18));
    assertThat(line.worthOfNeeded()).contains(Money.ofDollars(6 * 18));
    assertThat(line.leftOver()).isCloseTo(1.5, within(1e-12));
    assertThat(line.worthOfLeftOver()).contains(Money.ofDollars(27));
  }

  @Test
  void whatIsOnHandIsUsedFirstTheGrowersOwnAheadOfTheWarehouse() {
    Prices prices = prices(held("", "4 gal", ""), held("A", "1 gal", ""), held("B", "9 gal", ""));
    Order order = Order.of(prices, List.of(need("A", MAY, 3), need("C", MAY, 3)));
    assertThat(of(order, "A").onHand()).isEqualTo(3);
    // A took one of its own and two of the warehouse's four; B's nine serve nobody else.
    assertThat(of(order, "C").onHand()).isEqualTo(2);
    assertThat(of(order, "C").packages()).hasValue(1);
  }

  @Test
  void passesAreServedInTheOrderOfTheirDates() {
    Order order =
        Order.of(prices(held("", "3 gal", "")), List.of(need("A", JUNE, 3), need("B", MAY, 3)));
    assertThat(order.byGrower().keySet()).containsExactly("A", "B");
    assertThat(of(order, "A").onHand()).isZero();
    assertThat(of(order, "B").onHand()).isEqualTo(3);
  }

  @Test
  void stockServesOnItsLastDayAndNotTheDayAfter() {
    Prices prices = prices(held("A", "5 gal", "2027-05-11"));
    assertThat(only(prices, need("A", MAY, 5)).onHand()).isEqualTo(5);
    Order late = Order.of(prices, List.of(need("A", MAY.plusDays(1), 5)));
    assertThat(late.pooled().get(0).onHand()).isZero();
    assertThat(late.unfit())
        .containsExactly(new Unfit(prices.held().get(0), new FieldId("F-A"), MAY.plusDays(1)));
    // What is not needed is not told, however old.
    assertThat(
            Order.of(prices(held("A", "5 gal", "2027-05-11")), List.of(need("B", JUNE, 5))).unfit())
        .isEmpty();
  }

  @Test
  void whatSpoilsSoonestGoesFirst() {
    Prices prices = prices(held("A", "2 gal", ""), held("A", "2 gal", "2027-05-31"));
    Order order = Order.of(prices, List.of(need("A", MAY, 2), need("A", JUNE, 2)));
    assertThat(order.pooled().get(0).onHand()).isEqualTo(4);
    assertThat(order.pooled().get(0).packages()).hasValue(0);
    assertThat(order.pooled().get(0).cost()).contains(Money.ZERO);
  }

  @Test
  void oneOrderForAllTakesFewerPackages() {
    Order order = Order.of(prices(), List.of(need("A", MAY, 1), need("B", MAY, 1)));
    assertThat(of(order, "A").packages()).hasValue(1);
    assertThat(of(order, "B").packages()).hasValue(1);
    assertThat(order.pooled().get(0).packages()).hasValue(1);
  }

  @Test
  void withoutPriceOrPackageNothingIsMadeUp() {
    OrderLine line = only(new Prices(Map.of()), need("A", MAY, 3.2));
    assertThat(line.cost()).isEmpty();
    assertThat(line.packages()).isEmpty();
    assertThat(line.bought()).isEqualTo(3.2);
    assertThat(line.leftOver()).isZero();
  }
}
