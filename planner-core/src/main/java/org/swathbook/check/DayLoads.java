package org.swathbook.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.catalog.Ingredient;
import org.swathbook.catalog.IngredientId;
import org.swathbook.catalog.Stated;
import org.swathbook.catalog.TankTerms.CleanOut;
import org.swathbook.catalog.TankTerms.Rinse;
import org.swathbook.program.EarlierLoad;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayerTank;
import org.swathbook.rules.LabelUses;
import org.swathbook.tank.LoadSequence;

/**
 * The loads that one sprayer makes on a day, in the order that takes least clean-out. Whether each
 * may be sprayed is not asked here; {@link #asOrdered} is the job to judge.
 *
 * @param held what the sprayer held before, by name; empty when no job says
 */
public record DayLoads(List<SprayJob> jobs, Optional<Set<String>> held, LoadSequence sequence) {

  public DayLoads {
    jobs = List.copyOf(jobs);
    held = held.map(Set::copyOf);
  }

  /**
   * What the jobs say of the sprayer before the first load: each different answer once. More than
   * one is a contradiction, since one sprayer is meant.
   */
  public static List<SprayerTank> answers(List<SprayJob> jobs) {
    List<SprayerTank> out = new ArrayList<>();
    Set<List<EarlierLoad>> seen = new HashSet<>();
    for (SprayJob job : jobs) {
      if (job.tank().lastLoad().isPresent() && seen.add(job.tank().loads())) {
        out.add(job.tank());
      }
    }
    return out;
  }

  /**
   * @param jobs of one day and one sprayer, whose {@link #answers} are at most one
   * @throws IllegalArgumentException when there are none or too many, or answers differ
   */
  public static DayLoads of(Book book, List<SprayJob> jobs) {
    List<SprayerTank> answers = answers(jobs);
    if (answers.size() > 1) {
      throw new IllegalArgumentException("what the sprayer held before is said in two ways");
    }
    Optional<SprayerTank> before = answers.stream().findFirst();
    Map<String, Ingredient> byName = new TreeMap<>();
    List<Set<String>> loads = new ArrayList<>();
    for (SprayJob job : jobs) {
      Set<String> names = new TreeSet<>();
      job.mix().actives().forEach(a -> put(byName, names, a.ingredient()));
      loads.add(names);
    }
    Map<String, Optional<Rinse>> held = new TreeMap<>();
    before.ifPresent(tank -> held.putAll(held(book, tank, byName)));
    List<Field> fields =
        jobs.stream().map(j -> book.findField(j.field().value()).orElseThrow()).toList();
    return new DayLoads(
        jobs,
        before.map(t -> held.keySet()),
        LoadSequence.of(
            loads,
            held,
            (active, load) ->
                demand(Objects.requireNonNull(byName.get(active)), fields.get(load))));
  }

  /**
   * A job as it comes in this order: what a load before it left is cleaned out by then, as the
   * order says. What the sprayer held before the first one stays unknown where no job says.
   *
   * @param load its place among the jobs
   */
  public SprayJob asOrdered(int load) {
    SprayJob job = jobs.get(load);
    if (held.isEmpty() && sequence.stops().get(0).load() == load) {
      return job;
    }
    return job.with(
        job.sprayer()
            .with(new SprayerTank(job.tank().gallons(), Optional.of(List.of()), Optional.empty())));
  }

  private static void put(Map<String, Ingredient> byName, Set<String> names, Ingredient active) {
    byName.put(active.name(), active);
    names.add(active.name());
  }

  /** The latest load of an active counts, with the most thorough clean-out since. */
  private static Map<String, Optional<Rinse>> held(
      Book book, SprayerTank tank, Map<String, Ingredient> byName) {
    Map<String, Optional<Rinse>> out = new TreeMap<>();
    Optional<Rinse> most = Optional.empty();
    for (EarlierLoad load : tank.loads()) {
      if (load.cleaned().isPresent()
          && (most.isEmpty() || load.cleaned().get().compareTo(most.get()) > 0)) {
        most = load.cleaned();
      }
      for (IngredientId id : load.held()) {
        Ingredient active = book.catalog().ingredient(id);
        byName.put(active.name(), active);
        out.putIfAbsent(active.name(), most);
      }
    }
    return out;
  }

  private static LoadSequence.Demand demand(Ingredient active, Field field) {
    if (LabelUses.isTolerated(active, field)) {
      return LoadSequence.Demand.NOTHING;
    }
    Stated<CleanOut> stated = active.terms().tank().cleanOut();
    if (stated.isUnknown()) {
      return LoadSequence.Demand.UNKNOWN;
    }
    return stated
        .find()
        .filter(c -> c.sensitive().contains(field.crop()))
        .map(c -> LoadSequence.Demand.of(c.least()))
        .orElse(LoadSequence.Demand.NOTHING);
  }
}
