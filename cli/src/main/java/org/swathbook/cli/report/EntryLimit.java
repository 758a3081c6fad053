package org.swathbook.cli.report;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.swathbook.book.Application;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.Use;
import org.swathbook.program.ActiveDose;
import org.swathbook.tank.LongestReentry;
import org.swathbook.tank.Partner;

/**
 * Until when nobody may enter after a pass: the longest interval of its actives on this crop, from
 * the end of the spraying. An end that nobody wrote down is taken to be midnight after the day.
 *
 * @param until empty when no label's interval is known
 * @param endKnown whether the end of the spraying was written down
 */
public record EntryLimit(LongestReentry interval, Optional<LocalDateTime> until, boolean endKnown) {

  /**
   * @param rows of one pass, at least one
   */
  public static EntryLimit of(List<Application> rows) {
    List<Partner> partners = new ArrayList<>();
    for (Application row : rows) {
      for (ActiveDose dose : row.dose().actives()) {
        partners.addAll(partners(dose.ingredient(), row.crop()));
      }
    }
    LongestReentry interval = LongestReentry.of(partners);
    boolean endKnown = rows.stream().allMatch(r -> r.record().end().isPresent());
    LocalDateTime end =
        rows.stream().map(r -> end(r, endKnown)).max(LocalDateTime::compareTo).orElseThrow();
    return new EntryLimit(
        interval,
        interval.hours().isPresent()
            ? Optional.of(end.plusMinutes(Math.round(60 * interval.hours().getAsDouble())))
            : Optional.empty(),
        endKnown);
  }

  /** Under which use it was sprayed the journal does not say, so all on the crop count. */
  private static List<Partner> partners(Ingredient i, String crop) {
    List<Partner> all =
        i.uses().stream()
            .filter(u -> u.crop().map(c -> c.value().equals(crop)).orElse(true))
            .map(Use::terms)
            .map(t -> new Partner(i, t))
            .toList();
    return all.isEmpty() ? List.of(new Partner(i, i.terms())) : all;
  }

  private static LocalDateTime end(Application row, boolean known) {
    if (!known) {
      return row.date().plusDays(1).atStartOfDay();
    }
    LocalTime end = row.record().end().orElseThrow();
    // Sprayed through midnight.
    boolean nextDay = row.record().start().map(end::isBefore).orElse(false);
    return row.date().plusDays(nextDay ? 1 : 0).atTime(end);
  }
}
