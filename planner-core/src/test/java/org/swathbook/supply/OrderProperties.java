package org.swathbook.supply;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class OrderProperties {

  /** Nothing is lost or bought twice: on hand and bought cover the need, by less than a package. */
  @Property(tries = 200)
  void whatIsThereAndWhatIsBoughtCoverTheNeed(
      @ForAll @Size(min = 1, max = 6) List<@DoubleRange(min = 0.01, max = 400) Double> gallons,
      @ForAll @DoubleRange(max = 300) double stock) {
    List<Need> needs = new ArrayList<>();
    for (int i = 0; i < gallons.size(); i++) {
      needs.add(
          OrderTest.need(
              i % 2 == 0 ? "A" : "B", LocalDate.of(2027, 5, 11).plusDays(i), gallons.get(i)));
    }
    Order order = Order.of(OrderTest.prices(OrderTest.held("", stock + " gal", "")), needs);
    double all = gallons.stream().mapToDouble(g -> g).sum();
    OrderLine line = order.pooled().get(0);
    assertThat(line.needed()).isCloseTo(all, within(1e-6));
    assertThat(line.onHand()).isCloseTo(Math.min(all, stock), within(1e-6));
    assertThat(line.onHand() + line.bought()).isGreaterThanOrEqualTo(all - 1e-6);
    assertThat(line.leftOver()).isLessThan(2.5);
    long apart =
        order.byGrower().values().stream().mapToLong(l -> l.get(0).packages().orElseThrow()).sum();
    assertThat(line.packages().orElseThrow()).isLessThanOrEqualTo(apart);
  }
}
