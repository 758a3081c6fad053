package org.swathbook.tank;

import java.util.List;
import org.swathbook.program.Mix;

/** Actives of a mix under the terms of their ingredients. */
final class Partners {
  private Partners() {}

  static List<Partner> of(Mix mix) {
    return mix.actives().stream()
        .map(a -> new Partner(a.ingredient(), a.ingredient().terms()))
        .toList();
  }
}
