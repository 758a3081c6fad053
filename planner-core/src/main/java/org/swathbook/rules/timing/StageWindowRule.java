package org.swathbook.rules.timing;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.ToIntFunction;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Position;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TimePoint;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.Window;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.WindowCheck;
import org.swathbook.rules.Findings;
import org.swathbook.rules.Lookup;
import org.swathbook.rules.RuleCard;
import org.swathbook.rules.RuleId;
import org.swathbook.rules.Say;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Text;
import org.swathbook.rules.UseFacts;
import org.swathbook.rules.UseRule;
import org.swathbook.rules.Where;
import org.swathbook.rules.YearShare;

/** Crop stage, crop height, days around planting and dates between which a use is allowed. */
public final class StageWindowRule implements UseRule {
  public static final RuleCard CARD =
      new RuleCard(
          new RuleId("stage-window"),
          Severity.BLOCK,
          "Is the crop at a stage and height at which this use is allowed?",
          "Stage and height are compared apart, the first limit reached binds: 'through V8' lasts"
              + " until the ninth collar, 'before 12 in' refuses 12. Blocks when the pass is outside"
              + " in most weather years, warns when it is in more than one year of five, or when the"
              + " modelled crop is within one leaf stage, 2 in, or 3 days of emergence of a limit.",
          List.of(
              "Schug & Vollmer 2025, University of Maryland Extension, postemergence cutoffs in"
                  + " corn",
              "Iowa State University 2017, flumioxazin within three days of planting"),
          "atrazine on corn of 12 in with 'before 12 in'; flumioxazin 5 days after planting, where 3 are the most;"
              + " imazethapyr at R1 with 'before R1'",
          "clethodim at R2 with 75 days to harvest");

  private static final double CLOSE_CM = 2 * 2.54;
  private static final double CLOSE_STAGES = 1;
  private static final int CLOSE_DAYS = 3;

  @Override
  public RuleCard card() {
    return CARD;
  }

  @Override
  public void judge(UseFacts facts, Findings out) {
    if (facts.chosen().isEmpty()) {
      return;
    }
    Use use = facts.chosen().get();
    List<WindowCheck.Answer> answers = answers(facts, use);
    YearShare share =
        new YearShare(
            (int) answers.stream().filter(WindowCheck.Answer::inside).count(), answers.size());
    if (!share.isMetInMost()) {
      out.block(this, facts.about(), () -> outside(facts, use, answers));
    } else if (share.isRisky()) {
      out.warn(this, facts.about(), () -> inSomeYears(facts, use, share));
    } else if (isClose(facts, use)) {
      out.warn(this, facts.about(), () -> close(facts, use));
    }
    ask(facts, use, answers, out);
  }

  private static List<WindowCheck.Answer> answers(UseFacts facts, Use use) {
    List<WindowCheck.Answer> answers = new ArrayList<>();
    for (int y = 0; y < facts.traces().years().size(); y++) {
      answers.add(
          WindowCheck.check(
              use, facts.traces().years().get(y), facts.timing().years().get(y).day()));
    }
    return answers;
  }

  private void ask(UseFacts facts, Use use, List<WindowCheck.Answer> answers, Findings out) {
    if (use.timing().isUnknown()) {
      out.ask(this, facts.about(), () -> missing(facts, use, "timing", "crop stages"));
    } else {
      answers.stream()
          .flatMap(a -> a.unknown().stream())
          .filter(u -> u.startsWith("day on which"))
          .findFirst()
          .ifPresent(
              u ->
                  out.ask(
                      this,
                      facts.about(),
                      () ->
                          new Lookup(
                              u,
                              "stages of catalog/crops/" + facts.traces().crop().id() + ".yaml")));
    }
    if (use.cropHeightCm().isUnknown() && facts.isInCrop()) {
      out.ask(this, facts.about(), () -> missing(facts, use, "cropHeight", "crop stages"));
    }
  }

  private static Lookup missing(UseFacts facts, Use use, String key, String section) {
    String what = key.equals("timing") ? "crop stages" : "crop height";
    return new Lookup(
        what + " between which " + facts.ingredient().name() + " may go on " + facts.cropName(),
        Where.use(facts.ingredient(), use, key, section));
  }

  // In words.

  private static Text outside(UseFacts facts, Use use, List<WindowCheck.Answer> answers) {
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
                + "; this pass meets "
                + (height ? "it at " + actual : actual)
                + ".",
            source)
        .compared(actual, limit)
        .cleared(legalDates(facts, use));
  }

  private static Text inSomeYears(UseFacts facts, Use use, YearShare share) {
    return Text.of(
            Say.start(facts.ingredient())
                + ": "
                + share.missedWords()
                + " this pass is outside its window on "
                + facts.cropName()
                + " ("
                + windowWords(use)
                + ").",
            use.timing().findSource().map(Object::toString).orElse(Say.COMMON_PRACTICE))
        .compared(where(facts), windowWords(use))
        .cleared(legalDates(facts, use));
  }

  private static Text close(UseFacts facts, Use use) {
    return Text.of(
            Say.start(facts.ingredient())
                + " is close to a limit on "
                + facts.cropName()
                + " ("
                + windowWords(use)
                + "): the model expects "
                + where(facts)
                + "; look before spraying.",
            use.timing().findSource().map(Object::toString).orElse(Say.COMMON_PRACTICE))
        .compared(where(facts), windowWords(use))
        .cleared(legalDates(facts, use));
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
            : facts.date().isBefore(facts.field().plantDate()) ? "bare ground" : "no crop up";
    String height =
        facts.isInCrop() ? ", " + Say.inches(facts.timing().medianHeightCm()) + " tall," : "";
    return name + height + " on " + Say.date(facts.date());
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

  // Close to a limit, where the crop is modelled and may be a leaf or two inches off.

  private static boolean isClose(UseFacts facts, Use use) {
    if (use.timing() instanceof Stated.Value<Window> w) {
      Window window = w.value();
      Crop crop = facts.traces().crop();
      OptionalInt before = stage(window.before(), crop, 0);
      OptionalInt through = stage(window.to(), crop, 1);
      OptionalInt from = stage(window.from(), crop, 0);
      if (isClose(facts, before) || isClose(facts, through) || isClose(facts, from)) {
        return true;
      }
    }
    return facts.isInCrop()
        && use.cropHeightCm()
            .find()
            .map(l -> isClose(facts.timing().medianHeightCm(), l))
            .orElse(false);
  }

  private static OptionalInt stage(Optional<TimePoint> point, Crop crop, int later) {
    if (point.isPresent() && point.get() instanceof TimePoint.AtStage at) {
      OptionalInt i = crop.findStage(at.stage());
      return i.isPresent() && i.getAsInt() + later < crop.stages().size()
          ? OptionalInt.of(i.getAsInt() + later)
          : OptionalInt.empty();
    }
    return OptionalInt.empty();
  }

  private static boolean isClose(UseFacts facts, OptionalInt stage) {
    if (stage.isEmpty()) {
      return false;
    }
    int emergence = facts.traces().crop().findStage("emergence").orElse(0);
    if (stage.getAsInt() == emergence) {
      return isCloseToEmergence(facts);
    }
    return Math.abs(facts.timing().medianStage() - stage.getAsInt()) < CLOSE_STAGES;
  }

  /** Days tell more than stages there: between planting and emergence there is no leaf to count. */
  private static boolean isCloseToEmergence(UseFacts facts) {
    int close = 0;
    for (int y = 0; y < facts.traces().years().size(); y++) {
      int day = facts.timing().years().get(y).day();
      if (Math.abs(facts.traces().years().get(y).emergenceDay() - day) < CLOSE_DAYS) {
        close++;
      }
    }
    return 2 * close > facts.traces().years().size();
  }

  private static boolean isClose(double heightCm, Limit limit) {
    return limit.most().isPresent() && limit.most().getAsDouble() - heightCm < CLOSE_CM
        || limit.least().isPresent() && heightCm - limit.least().getAsDouble() < CLOSE_CM;
  }
}
