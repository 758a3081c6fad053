package org.swathbook.escapes;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.WeedId;
import org.swathbook.measure.Acre;
import org.swathbook.measure.Inches;
import org.swathbook.measure.Money;
import org.swathbook.program.Observation;
import org.swathbook.rules.Say;

/** Judges what was seen after a pass, and says what to do about it. */
public final class EscapeJudge {

  /** Days after a look before another can tell more: default, ours. */
  private static final int BETWEEN_LOOKS = 3;

  /** Plants up to this height are cut off by a shovel or a sweep for good, cm: 4 in (default). */
  private static final double CULTIVATED_CM = Inches.toCm(4);

  /** Rows narrower than this take no row cultivator, cm: 20 in; common practice, no source. */
  private static final double ROWS_CM = Inches.toCm(20);

  private final Book book;
  private final Field field;
  private final Observation seen;
  private final LocalDate today;
  private final List<WeedReading> weeds;
  private final List<String> why = new ArrayList<>();

  private EscapeJudge(Book book, Observation seen, LocalDate today) {
    this.book = book;
    this.seen = seen;
    this.field = book.findField(seen.field().value()).orElseThrow();
    this.today = today.isBefore(seen.seen()) ? seen.seen() : today;
    this.weeds = Readings.of(book, seen);
  }

  /**
   * @param today before the field was seen it counts as that day
   * @throws IllegalArgumentException in words, when the book lacks what a walk of the season needs
   */
  public static EscapeReport judge(Book book, Observation seen, LocalDate today) {
    return new EscapeJudge(book, seen, today).judge();
  }

  /** Whether every weed was seen late enough to be judged. */
  public static boolean isLateEnough(Book book, Observation seen) {
    return Readings.of(book, seen).stream().noneMatch(WeedReading::tooEarly);
  }

  private EscapeReport judge() {
    FieldAfterPass scene = FieldAfterPass.of(book, field, seen, weeds, today);
    FieldAfterPass clean = FieldAfterPass.clean(book, field, seen, weeds, today);
    SurvivorCost cost = cost(scene, clean);
    List<WeedReading> early = weeds.stream().filter(WeedReading::tooEarly).toList();
    if (!early.isEmpty()) {
      LocalDate again =
          early.stream().map(WeedReading::judgedFrom).max(LocalDate::compareTo).orElseThrow();
      early.forEach(
          w ->
              why.add(
                  name(w)
                      + ": "
                      + Say.days(seen.days())
                      + " after the pass is too early to tell for "
                      + sites(w)));
      return report(Action.WAIT, later(again), cost, none());
    }
    boolean lives = weeds.stream().anyMatch(w -> w.surviving() > 0);
    boolean open = weeds.stream().anyMatch(w -> w.undecided() > 0);
    if (!lives) {
      if (!open) {
        why.add("every plant that was counted is dead or dying");
        return report(Action.DONE, Optional.empty(), cost, none());
      }
      LocalDate again =
          weeds.stream()
              .filter(w -> w.undecided() > 0)
              .map(w -> w.deadBy().plusDays(1))
              .max(LocalDate::compareTo)
              .orElseThrow();
      why.add("some plants are neither dying nor growing again yet");
      return report(Action.WAIT, later(again), cost, none());
    }
    return ofSurvivors(scene, clean, cost, open);
  }

  private EscapeReport ofSurvivors(
      FieldAfterPass scene, FieldAfterPass clean, SurvivorCost cost, boolean open) {
    Resprays.Found found = Resprays.of(scene, clean, weeds, seen.weeds(), today);
    boolean tooMany = weeds.stream().filter(w -> w.surviving() > 0).anyMatch(this::isTooMany);
    Optional<ResprayOption> best = found.options().stream().findFirst();
    boolean pays =
        found.options().stream().anyMatch(o -> o.savesPerAcre().compareTo(o.costPerAcre()) > 0);
    Optional<LocalDate> again =
        open
            ? later(
                weeds.stream()
                    .filter(w -> w.undecided() > 0)
                    .map(w -> w.deadBy().plusDays(1))
                    .max(LocalDate::compareTo)
                    .orElseThrow())
            : Optional.empty();
    if (!pays && !tooMany) {
      why.add("the survivors cost less than one more pass, and they are few enough to be pulled");
      return report(open ? Action.WAIT : Action.DONE, again, cost, found);
    }
    why.add(
        pays
            ? "one more pass saves more yield than it costs"
            : "the yield alone does not pay for one more pass, but more survive than the house rules"
                + " accept, and they will seed");
    if (best.isEmpty()) {
      why.add("no product is left that may go on, would work and has not just failed");
      return report(Action.STOP_SEED, again, cost, found);
    }
    why.add(
        "the first sensible day is "
            + Say.date(found.sensible())
            + ": plants can be judged and have fresh leaves by then");
    boolean first = again.filter(d -> d.isAfter(found.sensible())).isEmpty();
    if (!first) {
      why.add(
          "plants that are undecided today are sprayed along with the rest, and not waited for");
    }
    return report(Action.RESPRAY, first ? again : Optional.empty(), cost, found);
  }

  private static Resprays.Found none() {
    return new Resprays.Found(List.of(), List.of(), LocalDate.MIN);
  }

  private Optional<LocalDate> later(LocalDate again) {
    LocalDate soon = seen.seen().plusDays(BETWEEN_LOOKS);
    return Optional.of(again.isBefore(soon) ? soon : again);
  }

  private boolean isTooMany(WeedReading w) {
    DriverKind kind = pressure(w.weed()).driver();
    double most = kind == DriverKind.ZERO ? 0 : book.house().maxSurvivorsPerAcre();
    return kind.isDriver() && w.survivorsPerM2() * Acre.SQUARE_METERS > most;
  }

  private WeedPressure pressure(WeedId weed) {
    return book.weedsOf(field.id()).stream()
        .filter(p -> p.weed().id().equals(weed))
        .findFirst()
        .orElseThrow();
  }

  private SurvivorCost cost(FieldAfterPass scene, FieldAfterPass clean) {
    Money loss = scene.asItIs().loss().minus(clean.asItIs().loss());
    Map<WeedId, Double> seeds = new LinkedHashMap<>();
    for (WeedReading w : weeds) {
      double more =
          scene.asItIs().weed(w.weed()).seedReturnPerM2()
              - clean.asItIs().weed(w.weed()).seedReturnPerM2();
      seeds.put(w.weed(), Math.max(0, more));
    }
    return new SurvivorCost(loss, seeds);
  }

  private EscapeReport report(
      Action action, Optional<LocalDate> again, SurvivorCost cost, Resprays.Found found) {
    boolean lives = weeds.stream().anyMatch(w -> w.surviving() > 0 && !w.tooEarly());
    return new EscapeReport(
        seen,
        weeds,
        action,
        why,
        again,
        cost,
        found.options(),
        found.refused(),
        lives ? beside() : List.of());
  }

  private List<String> beside() {
    List<String> out = new ArrayList<>();
    double tallestCm =
        weeds.stream().flatMap(w -> w.heightCm().stream()).mapToDouble(h -> h).max().orElse(0);
    if (field.rowSpacingCm().isEmpty()) {
      out.add("Row cultivation: the row spacing of the field is not known.");
    } else if (field.rowSpacingCm().getAsDouble() < ROWS_CM) {
      out.add("Row cultivation: the rows are too narrow.");
    } else {
      out.add(
          tallestCm > CULTIVATED_CM
              ? "Row cultivation kills about half of plants of 4 to 8 in, and misses those in the row."
              : "Row cultivation kills plants under 4 in between the rows, and misses those in the"
                  + " row.");
    }
    double acres = field.acres();
    double plants =
        weeds.stream().mapToDouble(w -> w.survivorsPerM2() * Acre.SQUARE_METERS).sum() * acres;
    out.add(
        "Pulling: about "
            + Say.perAcre(plants)
            + " plants on the field; "
            + (plants <= book.house().maxSurvivorsPerAcre() * acres
                ? "within what one crew can pull by hand."
                : "more than one crew can pull, unless they stand in patches."));
    out.add(
        "Seed: whatever flowers is pulled, bagged and taken off the field before it sheds seed.");
    return out;
  }

  private String name(WeedReading w) {
    return book.catalog().weed(w.weed()).name();
  }

  private static String sites(WeedReading w) {
    List<String> all = w.sites().stream().map(Object::toString).toList();
    return all.isEmpty() ? "this mix" : (all.size() == 1 ? "site " : "sites ") + Say.list(all);
  }
}
