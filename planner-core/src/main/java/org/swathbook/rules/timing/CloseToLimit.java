package org.swathbook.rules.timing;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TimePoint;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.Window;
import org.swathbook.growth.WindowCheck;
import org.swathbook.measure.Inches;
import org.swathbook.program.Scouted;
import org.swathbook.program.SprayJob;
import org.swathbook.rules.UseFacts;

/**
 * Whether the modelled crop, which may be a leaf or two inches off, is close to a limit of a use. A
 * stage or a height that somebody saw is taken as it is.
 */
final class CloseToLimit {
  private static final double CLOSE_CM = Inches.toCm(2);
  private static final double CLOSE_STAGES = 1;
  private static final int CLOSE_DAYS = 3;

  private CloseToLimit() {}

  /**
   * @param others uses of the other side of emergence that leave the dose open: where one is open
   *     there, the day on which the crop comes up is no limit
   */
  static boolean isClose(UseFacts facts, Use use, Supplier<List<Use>> others) {
    if (!isSeen(facts, s -> s.cropStage().isPresent())
        && use.timing() instanceof Stated.Value<Window> w) {
      Window window = w.value();
      Crop crop = facts.traces().crop();
      OptionalInt before = stage(window.before(), crop, 0);
      OptionalInt through = stage(window.to(), crop, 1);
      OptionalInt from = stage(window.from(), crop, 0);
      if (Stream.of(before, through, from).anyMatch(s -> isClose(facts, s, others))) {
        return true;
      }
    }
    return facts.isInCrop()
        && !isSeen(facts, s -> s.cropHeightCm().isPresent())
        && use.cropHeightCm()
            .find()
            .map(l -> isClose(facts.timing().medianHeightCm(), l))
            .orElse(false);
  }

  private static boolean isSeen(UseFacts facts, Predicate<Scouted> what) {
    return facts.job().map(SprayJob::scouted).filter(what).isPresent();
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

  private static boolean isClose(UseFacts facts, OptionalInt stage, Supplier<List<Use>> others) {
    if (stage.isEmpty()) {
      return false;
    }
    int emergence = facts.traces().crop().findStage("emergence").orElse(0);
    if (stage.getAsInt() == emergence) {
      return isCloseToEmergence(facts) && !goesOnAcross(facts, others.get());
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

  /** Whether in every year one of the uses is open on the day across emergence. */
  private static boolean goesOnAcross(UseFacts facts, List<Use> others) {
    return facts.traces().years().stream()
        .allMatch(
            t ->
                others.stream()
                    .anyMatch(
                        u ->
                            WindowCheck.check(u, t, t.emergenceDay() - (facts.isInCrop() ? 1 : 0))
                                .inside()));
  }

  private static boolean isClose(double heightCm, Limit limit) {
    return limit.most().isPresent() && limit.most().getAsDouble() - heightCm < CLOSE_CM
        || limit.least().isPresent() && heightCm - limit.least().getAsDouble() < CLOSE_CM;
  }
}
