package org.swathbook.program;

import java.util.Optional;

/**
 * What besides the weeds may explain what a pass left, as written down.
 *
 * @param soil {@code dry}, {@code moist} or {@code wet} at spraying
 * @param coverage {@code good} or {@code poor}
 * @param rate {@code as planned}, {@code below} or {@code above}
 */
public record PassConditions(
    Optional<String> soil, Optional<String> coverage, Optional<String> rate) {

  public static final PassConditions UNKNOWN =
      new PassConditions(Optional.empty(), Optional.empty(), Optional.empty());
}
