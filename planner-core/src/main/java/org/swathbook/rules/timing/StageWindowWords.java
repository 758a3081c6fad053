package org.swathbook.rules.timing;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.Window;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.WindowCheck;
import org.swathbook.rules.Say;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.YearShare;

/** What is said of a pass outside the window of a use, or close to its end. */
final class StageWindowWords {
  private StageWindowWords() {}

  static Text outside(UseFacts facts, Use use, List<WindowCheck.Answer> answers) {
    long byPosition = answers.stream().filter(a -> !a.byPosition()).count();
    long byStage = answers.stream().filter(a -> !a.byStage()).count();
    long byHeight = answers.stream().filter(a -> !a.byHeight()).count();
    boolean height = byHeight > 0 && byHeight >= byStage && byHeight >= byPosition;
    boolean position = !height && byPosition > byStage;
    String limit =
        height
            ? heightWords(use)
            : position
                ? Say.list(use.positions().stream().sorted().map(Position::spelling).toList())
                : use.timing().find().map(Window::toString).orElse("a suitable day");
    String actual = height ? Say.inches(facts.timing().medianHeightCm()) : where(facts);
    String source =
        (height ? use.cropHeightCm().findSource() : use.timing().findSource())
            .map(Object::toString)
            .orElse("the catalog's positions of the use");
    return Text.of(
            Say.start(facts.ingredient())
                + " is allowed on "
                + facts.cropName()
                + " "
                + limit
                + "; this pass "
                + (height ? "meets it at " + actual : (isUp(facts) ? "meets " : "comes ") + actual)
                + ".",
            source)
        .compared(actual, limit)
        .cleared(legalDates(facts, use));
  }

  static Text inSomeYears(UseFacts facts, Use use, YearShare share) {
    return Text.of(
            Say.start(facts.ingredient())
                + ": "
                + share.missedWords()
                + " this pass is outside its window on "
                + facts.cropName()
                + " ("
                + windowWords(use)
                + ").",
            Say.source(use.timing()))
        .compared(where(facts), windowWords(use))
        .cleared(legalDates(facts, use));
  }

  static Text close(UseFacts facts, Use use) {
    return Text.of(
            Say.start(facts.ingredient())
                + " is close to a limit on "
                + facts.cropName()
                + " ("
                + windowWords(use)
                + "): the model expects "
                + where(facts)
                + "; look before spraying.",
            Say.source(use.timing()))
        .compared(where(facts), windowWords(use))
        .cleared(awayFromLimit(facts, use));
  }

  private static String windowWords(Use use) {
    String stage = use.timing().find().map(Window::toString).orElse("");
    String height = use.cropHeightCm().find().isPresent() ? heightWords(use) : "";
    return stage.isEmpty() ? height : height.isEmpty() ? stage : stage + ", " + height;
  }

  private static String heightWords(Use use) {
    Limit limit = use.cropHeightCm().find().orElseThrow();
    String low =
        limit.least().isPresent()
            ? (limit.leastExcluded() ? "above " : "from ")
                + Say.inches(limit.least().getAsDouble())
                + " "
            : "";
    String high =
        limit.most().isPresent()
            ? (limit.mostExcluded() ? "before " : "up to ") + Say.inches(limit.most().getAsDouble())
            : "";
    return (low + high).strip();
  }

  /** The crop on the median day: {@code V5 on 12 Jun 2027}. */
  private static String where(UseFacts facts) {
    Crop crop = facts.traces().crop();
    int stage = (int) Math.floor(facts.timing().medianStage());
    String name =
        stage >= 0 && stage < crop.stages().size()
            ? crop.stages().get(stage).name()
            : fromPlanting(facts);
    String height =
        facts.isInCrop() ? ", " + Say.inches(facts.timing().medianHeightCm()) + " tall," : "";
    return name + height + " on " + Say.date(facts.date());
  }

  private static boolean isUp(UseFacts facts) {
    return facts.timing().medianStage() >= 0;
  }

  /** {@code 5 days after planting, no crop up,} as limits before emergence are written. */
  private static String fromPlanting(UseFacts facts) {
    long days = ChronoUnit.DAYS.between(facts.field().plantDate(), facts.date());
    return days == 0
        ? "at planting"
        : Say.days(Math.abs(days))
            + (days < 0 ? " before planting" : " after planting, no crop up,");
  }

  /** Later when the first day is the nearer end of the window, else no later than the last. */
  private static String awayFromLimit(UseFacts facts, Use use) {
    Optional<LocalDate> first = median(facts, use, WindowCheck.Span::first);
    Optional<LocalDate> last = median(facts, use, WindowCheck.Span::last);
    boolean nearFirst =
        first.isPresent()
            && last.isPresent()
            && ChronoUnit.DAYS.between(first.get(), facts.date())
                < ChronoUnit.DAYS.between(facts.date(), last.get());
    return nearFirst
        ? "some days later: the window opens on " + Say.date(first.get()) + " in the median year"
        : legalDates(facts, use);
  }

  private static String legalDates(UseFacts facts, Use use) {
    Optional<LocalDate> first = median(facts, use, WindowCheck.Span::first);
    Optional<LocalDate> last = median(facts, use, WindowCheck.Span::last);
    if (first.isEmpty() || last.isEmpty()) {
      return "another active: this use has no day in most years";
    }
    if (facts.date().isBefore(first.get())) {
      return "on or after " + Say.date(first.get());
    }
    return "on or before " + Say.date(last.get()) + ", or an active with a later window";
  }

  /** A day of the window, the lower median over all years; empty where most years have none. */
  private static Optional<LocalDate> median(
      UseFacts facts, Use use, ToIntFunction<WindowCheck.Span> day) {
    List<LocalDate> dates = new ArrayList<>();
    for (SeasonTrace trace : facts.traces().years()) {
      WindowCheck.span(use, trace).ifPresent(s -> dates.add(trace.bookDateOf(day.applyAsInt(s))));
    }
    if (2 * dates.size() <= facts.traces().years().size()) {
      return Optional.empty();
    }
    dates.sort(LocalDate::compareTo);
    return Optional.of(dates.get((dates.size() - 1) / 2));
  }
}
