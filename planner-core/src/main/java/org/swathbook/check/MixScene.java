package org.swathbook.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.swathbook.book.Application;
import org.swathbook.book.Biotypes;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.FieldOutdoors;
import org.swathbook.growth.PassTiming;
import org.swathbook.growth.ScoutedField;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Scouted;
import org.swathbook.program.SprayJob;
import org.swathbook.season.DayInSeason;
import org.swathbook.season.Kernel;
import org.swathbook.season.Standing;
import org.swathbook.season.outcome.PassOutcome;
import org.swathbook.season.outcome.WalkedPasses;

/**
 * The field on the day of a job: what the journal has sprayed this season, then the job itself, on
 * weeds and crop as they were seen or, where nobody looked, as the model has them.
 */
final class MixScene {
  /** Season's emergence, plants/m², of a weed that a job names and the book does not (default). */
  private static final double DENSITY_OF_UNLISTED = 1;

  /** A weed that was seen stands: so many plants/m² where the model has fewer left (default). */
  private static final double SEEN_PER_M2 = 0.1;

  private static final double SEEN_SHARE = 0.01;

  private final Book book;
  private final DayInSeason day;

  private MixScene(Book book, DayInSeason day) {
    this.book = book;
    this.day = day;
  }

  /**
   * @param today weather up to it, and up to the day of the job where the file has it, is real
   */
  static MixScene of(Book book, Field field, SprayJob job, LocalDate today) {
    Book withAll = book.withMoreWeeds(unlisted(book, field, job));
    LocalDate observedTo = today.isAfter(job.date()) ? today : job.date();
    List<DayInSeason.Made> before = before(book, field, job);
    ScoutedField known = ScoutedField.of(withAll, field, observedTo);
    Scouted crop =
        new Scouted(job.scouted().cropStage(), job.scouted().cropHeightCm(), new TreeMap<>());
    ScoutedField cropSeen = known.and(job.date(), crop, Map.of());
    FieldOutdoors outdoors = TraceBuilder.outdoors(withAll, field, observedTo, cropSeen);
    Kernel modelled = Kernel.of(withAll, outdoors.with(cropSeen));
    if (job.scouted().weedHeightCm().isEmpty()) {
      return new MixScene(withAll, DayInSeason.of(withAll, modelled, before, job.date()));
    }
    Map<WeedId, Double> fewest = fewest(modelled, before, job);
    Kernel seen = Kernel.of(withAll, outdoors.with(known.and(job.date(), job.scouted(), fewest)));
    return new MixScene(withAll, DayInSeason.of(withAll, seen, before, job.date()));
  }

  /** Weeds that the job names and the field's list lacks; they decide no program. */
  private static List<WeedPressure> unlisted(Book book, Field field, SprayJob job) {
    List<WeedPressure> listed = book.weedsOf(field.id());
    List<WeedPressure> out = new ArrayList<>();
    for (WeedId id : job.scouted().weedHeightCm().keySet()) {
      if (listed.stream().noneMatch(w -> w.weed().id().equals(id))) {
        Weed weed = book.catalog().weed(id);
        out.add(
            new WeedPressure(
                field.id(),
                weed,
                DENSITY_OF_UNLISTED,
                DriverKind.NO,
                Biotypes.withSusceptibleRest(List.of()),
                List.of(),
                "named in the job alone"));
      }
    }
    return out;
  }

  /** The season's passes of the journal up to the job, which may itself be among them. */
  private static List<DayInSeason.Made> before(Book book, Field field, SprayJob job) {
    Map<LocalDate, List<Dose>> byDate = new TreeMap<>();
    JournalMatch journal = new JournalMatch(book, field);
    for (Application a : journal.othersUpTo(job.date(), job.mix())) {
      byDate.computeIfAbsent(a.date(), d -> new ArrayList<>()).add(a.dose());
    }
    List<DayInSeason.Made> out = new ArrayList<>();
    byDate.forEach((date, doses) -> out.add(new DayInSeason.Made(date, Mix.of(doses))));
    return out;
  }

  /** Numbers for the weeds that were seen and of which the model has hardly any left. */
  private static Map<WeedId, Double> fewest(
      Kernel modelled, List<DayInSeason.Made> before, SprayJob job) {
    List<WeedPressure> weeds = modelled.traces().weeds();
    List<Integer> seen =
        IntStream.range(0, weeds.size())
            .filter(w -> job.scouted().weedHeightCm().containsKey(weeds.get(w).weed().id()))
            .boxed()
            .toList();
    double[] medianPerM2 =
        Standing.medianPerM2(
            modelled,
            before.stream().map(m -> modelled.made(m.mix(), m.date())).toList(),
            modelled.made(Mix.of(List.of()), job.date()),
            seen);
    Map<WeedId, Double> out = new TreeMap<>();
    for (int i = 0; i < medianPerM2.length; i++) {
      WeedPressure weed = weeds.get(seen.get(i));
      double least = Math.max(SEEN_PER_M2, SEEN_SHARE * weed.perM2());
      if (medianPerM2[i] < 2 * least) {
        out.put(weed.weed().id(), 2 * least);
      }
    }
    return out;
  }

  /** With a tank on the day: last of its date, after what the journal has of it. */
  WalkedPasses with(Mix mix) {
    return day.with(mix);
  }

  /** The tank's own pass. */
  static PassOutcome pass(WalkedPasses walked) {
    return walked.passes().get(walked.passes().size() - 1);
  }

  /** Place of the job's pass in the season: after all that was sprayed before. */
  int passIndex() {
    return day.passesBefore();
  }

  /** The day of the job in every year. */
  PassTiming timing() {
    return day.timing();
  }

  Book book() {
    return book;
  }

  TraceSet traces() {
    return day.traces();
  }
}
