package org.swathbook.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.swathbook.book.Application;
import org.swathbook.book.Biotypes;
import org.swathbook.book.Book;
import org.swathbook.book.DriverKind;
import org.swathbook.book.Field;
import org.swathbook.book.WeedPressure;
import org.swathbook.catalog.Weed;
import org.swathbook.catalog.WeedId;
import org.swathbook.growth.FieldOutdoors;
import org.swathbook.growth.ScoutedField;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.growth.TraceSet;
import org.swathbook.program.Anchor;
import org.swathbook.program.Dose;
import org.swathbook.program.Mix;
import org.swathbook.program.Pass;
import org.swathbook.program.Program;
import org.swathbook.program.Scouted;
import org.swathbook.program.SprayJob;
import org.swathbook.season.Kernel;
import org.swathbook.season.PassOutcome;
import org.swathbook.season.PassWeed;
import org.swathbook.season.SeasonOutcome;
import org.swathbook.season.SeasonWalk;

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
  private final Field field;
  private final Kernel kernel;
  private final List<Pass> before;

  private MixScene(Book book, Field field, Kernel kernel, List<Pass> before) {
    this.book = book;
    this.field = field;
    this.kernel = kernel;
    this.before = List.copyOf(before);
  }

  /** What a tank does in a scene. */
  record Walked(SeasonOutcome season, PassOutcome pass) {}

  /**
   * @param today weather up to it, and up to the day of the job where the file has it, is real
   */
  static MixScene of(Book book, Field field, SprayJob job, LocalDate today) {
    Book withAll = book.withMoreWeeds(unlisted(book, field, job));
    LocalDate observedTo = today.isAfter(job.date()) ? today : job.date();
    List<Pass> before = before(book, field, job);
    ScoutedField known = ScoutedField.of(withAll, field, observedTo);
    Scouted crop =
        new Scouted(job.scouted().cropStage(), job.scouted().cropHeightCm(), new TreeMap<>());
    ScoutedField cropSeen = known.and(job.date(), crop, Map.of());
    FieldOutdoors outdoors = TraceBuilder.outdoors(withAll, field, observedTo, cropSeen);
    MixScene modelled = with(withAll, field, outdoors.with(cropSeen), before);
    if (job.scouted().weedHeightCm().isEmpty()) {
      return modelled;
    }
    Map<WeedId, Double> fewest = modelled.fewest(job);
    return with(
        withAll, field, outdoors.with(known.and(job.date(), job.scouted(), fewest)), before);
  }

  private static MixScene with(Book book, Field field, TraceSet traces, List<Pass> before) {
    return new MixScene(book, field, Kernel.of(book, traces), before);
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
  private static List<Pass> before(Book book, Field field, SprayJob job) {
    Map<LocalDate, List<Dose>> byDate = new TreeMap<>();
    JournalMatch journal = new JournalMatch(book, field);
    for (Application a : journal.othersUpTo(job.date(), job.mix())) {
      byDate.computeIfAbsent(a.date(), d -> new ArrayList<>()).add(a.dose());
    }
    List<Pass> out = new ArrayList<>();
    byDate.forEach((date, doses) -> out.add(new Pass(new Anchor.OnDate(date), Mix.of(doses))));
    return out;
  }

  /** Numbers for the weeds that were seen and of which the model has hardly any left. */
  private Map<WeedId, Double> fewest(SprayJob job) {
    Map<WeedId, Double> out = new TreeMap<>();
    for (PassWeed w : walk(job).pass().weeds()) {
      double season =
          kernel.traces().weeds().stream()
              .filter(p -> p.weed().id().equals(w.weed()))
              .mapToDouble(WeedPressure::perM2)
              .findFirst()
              .orElse(0);
      double least = Math.max(SEEN_PER_M2, SEEN_SHARE * season);
      if (job.scouted().weedHeightCm().containsKey(w.weed()) && w.medianPerM2() < 2 * least) {
        out.put(w.weed(), 2 * least);
      }
    }
    return out;
  }

  /** Walks the season with this tank on the day of the job. */
  Walked walk(SprayJob job) {
    List<Pass> passes = new ArrayList<>(before);
    // Last of its date: what the journal has of that day came before.
    passes.add(new Pass(new Anchor.OnDate(job.date()), job.mix()));
    SeasonOutcome season =
        SeasonWalk.walkMade(book, kernel, new Program("job", field.id(), passes));
    return new Walked(season, season.passes().get(passes.size() - 1));
  }

  /** Place of the job's pass in the season: after all that was sprayed before. */
  int passIndex() {
    return before.size();
  }

  Book book() {
    return book;
  }

  TraceSet traces() {
    return kernel.traces();
  }
}
