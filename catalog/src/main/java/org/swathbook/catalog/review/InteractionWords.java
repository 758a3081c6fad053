package org.swathbook.catalog.review;

import java.util.Locale;
import java.util.stream.Collectors;
import org.swathbook.catalog.Interaction;

/** An interaction in words. */
public final class InteractionWords {
  private InteractionWords() {}

  /** {@code clethodim with site 4}. */
  public static String of(Interaction i) {
    return side(i.one()) + " with " + side(i.other());
  }

  private static String side(Interaction.Side s) {
    return s.ingredient().map(Object::toString).or(() -> s.site().map(n -> "site " + n)).orElse("?")
        + s.with().map(w -> " beside site " + w).orElse("");
  }

  /** {@code antagonism on grass, 51 % of the control lost}. */
  public static String effect(Interaction i) {
    String on =
        i.kindOfWeed()
            .map(k -> k.name().toLowerCase(Locale.ROOT))
            .orElseGet(
                () -> i.weeds().stream().map(Object::toString).collect(Collectors.joining(", ")));
    String size =
        !i.isCounted()
            ? "size not known"
            : i.kind() == Interaction.Kind.ANTAGONISM
                ? String.format(
                    Locale.ROOT,
                    "%.0f %% of %s's control lost",
                    100 * (1 - i.factor()),
                    side(i.affects()))
                : String.format(
                    Locale.ROOT, "%.0f %% of the joint survival left", 100 * i.factor());
    return i.kind().name().toLowerCase(Locale.ROOT) + " on " + on + ", " + size;
  }
}
