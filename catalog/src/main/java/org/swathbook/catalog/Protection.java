package org.swathbook.catalog;

import java.util.Set;

/**
 * What the label of a product tells people to wear.
 *
 * @param handlers whoever mixes, loads, sprays or cleans
 * @param mixing besides, while mixing, loading and cleaning
 */
public record Protection(Set<ProtectiveItem> handlers, Set<ProtectiveItem> mixing) {

  public Protection {
    handlers = Ordered.set(handlers);
    mixing = Ordered.set(mixing);
  }
}
