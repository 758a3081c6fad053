package org.swathbook.rules.label;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.swathbook.catalog.Crop;
import org.swathbook.catalog.CropId;
import org.swathbook.catalog.Limit;
import org.swathbook.catalog.PlantingBand;
import org.swathbook.catalog.RateRow;
import org.swathbook.catalog.RotationRow;
import org.swathbook.catalog.Source;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.InsecticideLimit;
import org.swathbook.catalog.TimePoint;
import org.swathbook.catalog.Use;
import org.swathbook.catalog.WeedHeights;
import org.swathbook.catalog.Window;
import org.swathbook.growth.PassTiming;
import org.swathbook.measure.Numbers;
import org.swathbook.measure.Quantity;
import org.swathbook.rules.ActiveUse;
import org.swathbook.rules.NextCrop;
import org.swathbook.rules.PassFacts;
import org.swathbook.rules.PlantingBands;
import org.swathbook.rules.Rated;
import org.swathbook.rules.Say;
import org.swathbook.rules.SeasonInsecticides;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.PassWeed;

/**
 * Remembered limits of a tank at the loading pad that are kept by no more than a tenth of their
 * own: days to planting, to the next crop and between two applications, the last stage of the crop,
 * the tallest weeds, soil pH and organic matter, the hours to rain. A limit that is broken is
 * another rule's.
 */
final class CloseCalls {
  /** A limit within this share of what is met nearly decides. */
  static final double CLOSE = 0.1;

  private final PassFacts facts;
  private final ActiveUse active;
  private final Use use;
  private final List<CloseCall> out = new ArrayList<>();

  private CloseCalls(PassFacts facts, ActiveUse active, Use use) {
    this.facts = facts;
    this.active = active;
    this.use = use;
  }

  static List<CloseCall> of(PassFacts facts, ActiveUse active, Use use) {
    CloseCalls calls = new CloseCalls(facts, active, use);
    calls.planting();
    calls.nextCrops();
    calls.between();
    calls.stage();
    calls.weeds();
    calls.soilPh();
    calls.organicMatter();
    calls.rainFree();
    calls.insecticides();
    return calls.out;
  }

  private LocalDate day() {
    return facts.pass().timing().medianDate();
  }

  private static <T> Optional<Stated.Value<T>> remembered(Stated<T> stated) {
    return stated instanceof Stated.Value<T> v && v.source().fromMemory()
        ? Optional.of(v)
        : Optional.empty();
  }

  /**
   * Whether days left are so few more than those asked for; an interval of none decides nothing.
   */
  private static boolean isClose(long left, long asked) {
    return asked > 0 && left >= asked && left - asked <= CLOSE * asked;
  }

  private void add(String what, String met, String limit, Source source) {
    out.add(new CloseCall(what, met, limit, source.text()));
  }

  private void planting() {
    long left = ChronoUnit.DAYS.between(day(), facts.field().plantDate());
    Optional<Stated.Value<List<PlantingBand>>> bands = remembered(use.plantingInterval());
    if (left < 0 || bands.isEmpty()) {
      return;
    }
    PlantingBands.strictest(bands.get().value(), facts.field(), active.active().lbPerAcre())
        .filter(b -> b.rainMm().isEmpty() && isClose(left, b.days()))
        .ifPresent(
            b ->
                add(
                    "the days before planting",
                    Say.days(left),
                    Say.days(b.days()),
                    bands.get().source()));
  }

  private void nextCrops() {
    if (facts.field().nextCropPlantDate().isEmpty()) {
      return;
    }
    LocalDate planted = facts.field().nextCropPlantDate().get();
    long left = ChronoUnit.DAYS.between(day(), planted);
    for (CropId next : facts.field().nextCrops()) {
      Optional<Stated.Value<List<RotationRow>>> rows =
          remembered(active.ingredient().rotationTo(next));
      rows.flatMap(
              v ->
                  NextCrop.of(
                      v.value(),
                      facts.field(),
                      Optional.empty(),
                      active.active(),
                      active.dose().product().formulation(),
                      day(),
                      (from, mm) -> Optional.empty()))
          .filter(n -> !n.dependsOnUnknown() && !planted.isBefore(n.possible()))
          .filter(n -> isClose(left, ChronoUnit.DAYS.between(day(), n.possible())))
          .ifPresent(
              n ->
                  add(
                      "the interval before " + next + " is planted",
                      Say.days(left),
                      n.interval().toString(),
                      rows.get().source()));
    }
  }

  private void between() {
    Optional<Stated.Value<Integer>> least = remembered(use.repeatDays());
    if (least.isEmpty()) {
      return;
    }
    facts.season().passes().stream()
        .filter(p -> p.index() < facts.pass().index() && brings(p))
        .map(p -> p.timing().medianDate())
        .max(LocalDate::compareTo)
        .map(last -> ChronoUnit.DAYS.between(last, day()))
        .filter(days -> isClose(days, least.get().value()))
        .ifPresent(
            days ->
                add(
                    "the days between two applications",
                    Say.days(days),
                    Say.days(least.get().value()),
                    least.get().source()));
  }

  private boolean brings(PassOutcome pass) {
    return pass.mix().doses().stream()
        .flatMap(d -> d.actives().stream())
        .anyMatch(a -> a.ingredient().capGroup().equals(active.ingredient().capGroup()));
  }

  /** The end of the window, in stages from emergence. */
  private void stage() {
    Optional<Stated.Value<Window>> window = remembered(use.timing());
    if (window.isEmpty() || !facts.isInCrop()) {
      return;
    }
    Crop crop = facts.traces().crop();
    PassTiming timing = facts.pass().timing();
    double emergence = crop.findStage(TimePoint.EMERGENCE).orElse(0);
    OptionalInt before = stage(window.get().value().before(), crop);
    OptionalInt to = stage(window.get().value().to(), crop);
    double end =
        Math.min(
            before.isPresent() ? before.getAsInt() : Double.POSITIVE_INFINITY,
            to.isPresent() ? to.getAsInt() + 1 : Double.POSITIVE_INFINITY);
    double room = end - timing.medianStage();
    if (Double.isFinite(end) && room > 0 && room <= CLOSE * (end - emergence)) {
      add(
          "the last stage of the crop",
          facts.pass().cropStage(),
          window.get().value().toString(),
          window.get().source());
    }
  }

  private static OptionalInt stage(Optional<TimePoint> point, Crop crop) {
    return point.isPresent() && point.get() instanceof TimePoint.AtStage at
        ? crop.findStage(at.stage())
        : OptionalInt.empty();
  }

  /** Driver weeds that stand and that the active is counted on for: the closest of them. */
  private void weeds() {
    Optional<Stated.Value<WeedHeights>> heights = remembered(use.weedHeights());
    if (heights.isEmpty()) {
      return;
    }
    double least = 100 * facts.book().house().effectiveSite();
    PassWeed closest = null;
    double limit = 0;
    for (PassWeed w : facts.pass().weeds()) {
      var pressure = facts.pressure(w.weed());
      OptionalDouble most = Rated.tallestCm(heights.get().value(), pressure);
      if (w.stands()
          && pressure.driver().isDriver()
          && most.isPresent()
          && w.p90Cm() <= most.getAsDouble()
          && most.getAsDouble() - w.p90Cm() <= CLOSE * most.getAsDouble()
          && !Rated.isResisted(pressure, active.ingredient())
          && Rated.foliarPct(facts, pressure, active.ingredient()).orElse(0) >= least
          && (closest == null || most.getAsDouble() - w.p90Cm() < limit - closest.p90Cm())) {
        closest = w;
        limit = most.getAsDouble();
      }
    }
    if (closest != null) {
      add(
          "the height of " + facts.pressure(closest.weed()).weed().name(),
          Say.inches(closest.p90Cm()),
          Say.inches(limit),
          heights.get().source());
    }
  }

  private void soilPh() {
    Optional<Stated.Value<Limit>> limit = remembered(use.soilPh());
    if (limit.isEmpty()) {
      return;
    }
    facts.field().soilPh().stream()
        .filter(ph -> limit.get().value().allows(ph) && isNear(limit.get().value(), ph))
        .findFirst()
        .ifPresent(
            ph ->
                add(
                    "the soil's pH",
                    Numbers.plain(ph),
                    limit.get().value().toString(),
                    limit.get().source()));
  }

  /** Soils that a row refuses for their organic matter, and this one only just not. */
  private void organicMatter() {
    Optional<Stated.Value<List<RateRow>>> rows = remembered(use.rates());
    if (rows.isEmpty()) {
      return;
    }
    for (RateRow row : rows.get().value()) {
      Optional<Limit> refused = row.when().organicMatterPct();
      boolean onThisTexture =
          row.when().textures().isEmpty()
              || facts.field().soilTextures().stream().anyMatch(row.when().textures()::contains);
      if (row.rates().isPresent() || refused.isEmpty() || !onThisTexture) {
        continue;
      }
      for (double om : facts.field().organicMatterPct()) {
        if (!refused.get().allows(om) && isNear(refused.get(), om)) {
          add(
              "the soil's organic matter",
              Say.pct(om),
              "refused " + refused.get() + " %",
              rows.get().source());
          return;
        }
      }
    }
  }

  /** Days since an insecticide on leaves that the label waits after. */
  private void insecticides() {
    Optional<Stated.Value<InsecticideLimit>> limit =
        remembered(active.terms().tank().insecticides());
    if (limit.isEmpty() || limit.get().value().foliarWaitDays().isEmpty()) {
      return;
    }
    InsecticideLimit asked = limit.get().value();
    int least = asked.foliarWaitDays().getAsInt();
    for (SeasonInsecticides.Named n : SeasonInsecticides.of(facts).named()) {
      boolean limited =
          asked.refused().contains(n.insecticideClass())
              || asked.caution().contains(n.insecticideClass());
      n.over(asked)
          .filter(o -> limited)
          .map(o -> least + ChronoUnit.DAYS.between(o, day()))
          .filter(days -> isClose(days, least))
          .ifPresent(
              days ->
                  add(
                      "the wait after " + n.insecticideClass() + " insecticides on leaves",
                      Say.days(days),
                      Say.days(least),
                      limit.get().source()));
    }
  }

  /** Hours to the next rain, as the job or its forecast has them. */
  private void rainFree() {
    OptionalDouble dry =
        facts.job().map(j -> j.weather().hoursToRain()).orElse(OptionalDouble.empty());
    Optional<Stated.Value<Double>> asked =
        use.terms().foliar().find().flatMap(f -> remembered(f.rainfastHours()));
    if (dry.isEmpty() || asked.isEmpty()) {
      return;
    }
    double left = dry.getAsDouble();
    double hours = asked.get().value();
    if (hours > 0
        && !Quantity.exceeds(hours, left)
        && !Quantity.exceeds(left - hours, CLOSE * hours)) {
      add(
          "the hours without rain",
          Numbers.decimals(left, 1) + " h",
          Numbers.decimals(hours, 1) + " h",
          asked.get().source());
    }
  }

  private static boolean isNear(Limit limit, double x) {
    return isNear(limit.least(), x) || isNear(limit.most(), x);
  }

  private static boolean isNear(OptionalDouble end, double x) {
    return end.isPresent() && Math.abs(end.getAsDouble() - x) <= CLOSE * end.getAsDouble() + 1e-9;
  }
}
