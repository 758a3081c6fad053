package org.swathbook.catalog.review;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.file.SmallCatalog;

class ProvenanceTest {
  private final List<Provenance.Row> rows = Provenance.of(new SmallCatalog().written());

  private Provenance.Row row(String group, String what) {
    return rows.stream()
        .filter(r -> r.group().equals(group) && r.what().equals(what))
        .findFirst()
        .orElseThrow();
  }

  /** One cap of the two actives' three is from a letter, by the longest path that leads to it. */
  @Test
  void everyValueCountsByItsOwnSource() {
    assertThat(row("use", "most in a period").counts())
        .containsOnly(entry(Source.Kind.MEMORY, 2), entry(Source.Kind.PUBLISHED, 1));
    assertThat(row("ingredient", "half-life in soil").counts())
        .containsOnly(entry(Source.Kind.PUBLISHED, 1));
    assertThat(row("rating", "post").counts()).containsOnly(entry(Source.Kind.MEMORY, 1));
    assertThat(row("product", "package").counts()).containsOnly(entry(Source.Kind.INVENTED, 1));
  }

  @Test
  void namesAreNoFactsThatASourceCouldHold() {
    assertThat(rows).noneMatch(r -> r.what().equals("name") || r.what().equals("aliases"));
  }

  private static java.util.Map.Entry<Source.Kind, Integer> entry(Source.Kind kind, int n) {
    return java.util.Map.entry(kind, n);
  }
}
