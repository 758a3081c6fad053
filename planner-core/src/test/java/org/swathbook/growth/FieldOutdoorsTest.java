package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.WeedId;
import org.swathbook.program.Scouted;
import org.swathbook.testing.Fixtures;

/** One outdoors serves for all that is seen of weeds, and for nothing else. */
class FieldOutdoorsTest {
  private static final LocalDate DAY = LocalDate.of(2027, 6, 8);

  private final Book book = Fixtures.book();
  private final Field field = Fixtures.field("ND-1");
  private final ScoutedField nothing = ScoutedField.of(book, field, DAY);
  private final WeedId weed = book.weedsOf(field.id()).get(0).weed().id();

  private ScoutedField seen(Optional<String> stage, double weedCm) {
    TreeMap<WeedId, Double> weeds = new TreeMap<>(Map.of(weed, weedCm));
    return nothing.and(DAY, new Scouted(stage, OptionalDouble.empty(), weeds), Map.of());
  }

  @Test
  void weedsThatWereSeenAreTheSameAsInATraceOfTheirOwn() {
    ScoutedField tall = seen(Optional.empty(), 31);
    TraceSet shared = TraceBuilder.outdoors(book, field, DAY, nothing).with(tall);
    TraceSet own = TraceBuilder.outdoors(book, field, DAY, tall).with(tall);
    TraceSet none = TraceBuilder.outdoors(book, field, DAY, nothing).with(nothing);
    for (int y = 0; y < own.years().size(); y++) {
      assertThat(shared.years().get(y)).usingRecursiveComparison().isEqualTo(own.years().get(y));
    }
    assertThat(shared.years().get(0).cohorts(0))
        .usingRecursiveComparison()
        .isNotEqualTo(none.years().get(0).cohorts(0));
  }

  @Test
  void aCropThatWasSeenOtherwiseIsRefused() {
    FieldOutdoors outdoors = TraceBuilder.outdoors(book, field, DAY, nothing);
    ScoutedField crop = seen(Optional.of("V3"), 31);
    assertThatThrownBy(() -> outdoors.with(crop)).isInstanceOf(IllegalArgumentException.class);
  }
}
