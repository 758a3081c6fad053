package org.swathbook.check;

import java.util.List;

/**
 * A job changed so that less stands against it, judged again by all rules.
 *
 * @param changes what was changed, in words, in the order of the changes
 */
public record MendedMix(JudgedMix mix, List<String> changes) {

  public MendedMix {
    changes = List.copyOf(changes);
  }
}
