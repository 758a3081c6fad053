package org.swathbook.catalog.starter;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Registration;

/** Last dates of the year by state. */
final class RegistrationLimits {

  private RegistrationLimits() {}

  static Verdict cutoff(PublishedLimit limit, Ingredient ingredient) {
    MonthDay last = MonthDay.parse("--" + limit.value());
    return MatchingUses.every(
        limit,
        ingredient,
        u ->
            Verdict.of(
                u.registration().cutoffs(),
                rows ->
                    limit.states().isEmpty()
                        ? rows.stream().anyMatch(r -> r.states().isEmpty())
                            && rows.stream().noneMatch(r -> r.last().isAfter(last))
                        : limit.states().stream()
                            .filter(s -> MatchingUses.isIn(u, s))
                            .allMatch(s -> endsBy(rows, s, last))));
  }

  private static boolean endsBy(List<Registration.Cutoff> rows, String state, MonthDay last) {
    Optional<Registration.Cutoff> first =
        rows.stream().filter(r -> r.states().isEmpty() || r.states().contains(state)).findFirst();
    return first.filter(r -> !r.last().isAfter(last)).isPresent();
  }
}
