package org.swathbook.catalog;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class SlugProperties {

  @Property
  void anIdIsItsOwnId(@ForAll String name) {
    assertThat(Slug.of(Slug.of(name))).isEqualTo(Slug.of(name)).matches("[a-z0-9.-]*");
  }
}
