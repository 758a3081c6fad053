package org.swathbook.cli.text;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.swathbook.book.Book;
import org.swathbook.book.WeedPressure;
import org.swathbook.check.OpenHours;
import org.swathbook.check.PassQueue;
import org.swathbook.check.QueuedPass;
import org.swathbook.check.QueuedPass.State;
import org.swathbook.cli.report.QueueReport.Row;
import org.swathbook.measure.Numbers;
import org.swathbook.rules.Finding;
import org.swathbook.season.outcome.PassWeed;

/** A pass of the queue in words, whatever it is printed on. */
public final class QueueWords {
  private final Book book;
  private final LocalDate today;

  public QueueWords(Book book, LocalDate today) {
    this.book = book;
    this.today = today;
  }

  /** What is said above the passes of a state. */
  public static String heading(State state) {
    return switch (state) {
      case CLOSES -> "Closes within " + PassQueue.DAYS_AHEAD + " days, the most pressing first";
      case DUE -> "Due; holds for " + PassQueue.DAYS_AHEAD + " days";
      case OPEN -> "Planned within " + PassQueue.DAYS_AHEAD + " days; nothing blocks it today";
      case BLOCKED -> "Due or planned soon, and blocked today";
      case MISSED -> "Not in the journal and more than two weeks late";
      case LATER -> "Later";
      case MADE -> "Made, by the journal";
    };
  }

  /** {@code ND-1 Long Eighty, 76 acres, soybean · pass 2}. */
  public String title(Row row) {
    return row.field().id()
        + "  "
        + row.field().name()
        + ", "
        + Numbers.grouped(row.field().acres(), 1)
        + " acres, "
        + book.catalog().crop(row.field().crop()).name()
        + " · "
        + (row.pass().pass() == 0 ? "a pass not planned" : "pass " + row.pass().pass());
  }

  /** Its day, and how that lies to today. */
  public String when(Row row) {
    LocalDate date = row.pass().date();
    long days = ChronoUnit.DAYS.between(today, date);
    String day = Figures.date(date);
    return switch (row.pass().state()) {
      case MADE -> "made " + day;
      case MISSED -> "was planned for " + day + ", " + days(-days) + " ago";
      default ->
          "planned for "
              + day
              + (days < 0
                  ? ", " + days(-days) + " ago"
                  : days == 0 ? ", today" : ", in " + days(days));
    };
  }

  private static String days(long n) {
    return Figures.counted((int) n, "day", "days");
  }

  /** Actives of the tank. */
  public String mix(Row row) {
    return row.pass().mix().actives().stream()
        .map(a -> a.ingredient().name())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** Why it stands where it stands; a sentence each. */
  public List<String> why(Row row) {
    QueuedPass p = row.pass();
    List<String> out = new ArrayList<>();
    p.lastDay()
        .ifPresent(
            d ->
                out.add(
                    (d.equals(today)
                            ? "LAST DAY TODAY"
                            : "Last day "
                                + Figures.date(d)
                                + ", in "
                                + days(ChronoUnit.DAYS.between(today, d)))
                        + "; from then on:"));
    if (p.state() == State.BLOCKED) {
      out.add(
          p.opens()
              .map(
                  d ->
                      "BLOCKED today; by the model nothing blocks it from " + Figures.date(d) + ":")
              .orElse("BLOCKED today, and for the " + PassQueue.DAYS_AHEAD + " days after:"));
    }
    p.why().forEach(f -> out.add(said(f)));
    return out;
  }

  private static String said(Finding f) {
    return f.rule() + ": " + f.message();
  }

  /** Crop and driver weeds as they are today by the model or by what was scouted. */
  public List<String> stands(Row row) {
    QueuedPass p = row.pass();
    if (p.cropStage().isEmpty()) {
      return List.of();
    }
    List<String> out = new ArrayList<>();
    out.add("Crop " + p.cropStage());
    for (PassWeed w : p.weeds()) {
      if (book.weedsOf(row.field().id()).stream().anyMatch(x -> isDriver(x, w))) {
        String name = book.catalog().weed(w.weed()).name();
        out.add(
            !w.stands() || !w.standsInAnyYear()
                ? name + ": none standing"
                : name
                    + ": half up to "
                    + Figures.inches(w.p50Cm())
                    + " in, "
                    + Numbers.decimals(100 * book.house().sizePercentile(), 0)
                    + " % to "
                    + Figures.inches(w.p90Cm())
                    + " in");
      }
    }
    return out;
  }

  /** The rules that warn of it when it is sprayed today, each with the weeds that it names. */
  public Optional<String> warned(Row row) {
    Map<String, Set<String>> weeds = new LinkedHashMap<>();
    for (Finding f : row.pass().warned()) {
      Set<String> of = weeds.computeIfAbsent(f.rule().value(), r -> new LinkedHashSet<>());
      f.about().weed().ifPresent(w -> of.add(book.catalog().weed(w).name()));
    }
    List<String> out = new ArrayList<>();
    weeds.forEach(
        (rule, of) -> out.add(of.isEmpty() ? rule : rule + " (" + String.join(", ", of) + ")"));
    return out.isEmpty()
        ? Optional.empty()
        : Optional.of("Warned of today already, 'check' says why: " + String.join(", ", out));
  }

  private static boolean isDriver(WeedPressure pressure, PassWeed weed) {
    return pressure.weed().id().equals(weed.weed()) && pressure.driver().isDriver();
  }

  /** Days and hours in which it can be sprayed. */
  public List<String> chances(Row row) {
    QueuedPass p = row.pass();
    if (p.cropStage().isEmpty()) {
      return List.of();
    }
    List<String> out = new ArrayList<>();
    LocalDate to = p.lastDay().orElse(today.plusDays(PassQueue.DAYS_AHEAD));
    out.add(
        "Past years have "
            + Numbers.fixed(p.sprayDays(), 1)
            + " days fit to spray from today to "
            + Figures.day(to)
            + ", of "
            + (ChronoUnit.DAYS.between(today, to) + 1));
    row.hours()
        .ifPresent(
            h -> {
              out.add(
                  h.spans().isEmpty()
                      ? "By the forecast no hour of the next three days is open"
                      : "Open by the forecast: "
                          + h.spans().stream()
                              .map(QueueWords::span)
                              .collect(Collectors.joining(", ")));
              if (!h.notKnown().isEmpty()) {
                out.add("NOT KNOWN of other hours: " + String.join("; ", h.notKnown()));
              }
            });
    return out;
  }

  private static String span(OpenHours.Span s) {
    return Figures.day(s.from().toLocalDate()) + " " + clock(s.from()) + " to " + clock(s.to());
  }

  private static String clock(LocalDateTime t) {
    return t.toLocalTime().toString();
  }

  /** How to read it. */
  public static final List<String> READING =
      List.of(
          "Each pass that is due or planned within "
              + PassQueue.DAYS_AHEAD
              + " days is put on today and on each of the next days, walked through all weather years"
              + " and judged by every rule of a program; its last day is the one before something new"
              + " stands against it. Stages and heights are the model's, or what was scouted.",
          "The queue is no verdict: judge the tank on its day with 'check', in the field.");
}
