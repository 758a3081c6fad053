package org.swathbook.growth;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class KeptTest {

  @Test
  void whatWasKeptFirstStays() {
    Kept<String, String> kept = new Kept<>(10);
    String first = new String("value");
    assertThat(kept.find("key")).isNull();
    assertThat(kept.keep("key", first)).isSameAs(first);
    assertThat(kept.keep("key", new String("value"))).isSameAs(first);
    assertThat(kept.find("key")).isSameAs(first);
    assertThat(kept.get("key", k -> "another")).isSameAs(first);
  }

  @Test
  void withMoreThanItMayHoldAllAreForgotten() {
    Kept<Integer, String> kept = new Kept<>(2);
    kept.keep(1, "one");
    kept.keep(2, "two");
    assertThat(kept.keep(3, "three")).isEqualTo("three");
    assertThat(kept.find(1)).isNull();
    assertThat(kept.find(2)).isNull();
    assertThat(kept.find(3)).isEqualTo("three");
  }
}
