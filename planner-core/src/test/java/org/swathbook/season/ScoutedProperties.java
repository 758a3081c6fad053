package org.swathbook.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.ScoutedCount;
import org.swathbook.book.ScoutedHeight;
import org.swathbook.book.Scouting;
import org.swathbook.book.WeedPressure;
import org.swathbook.growth.CohortSet;
import org.swathbook.growth.SeasonTrace;
import org.swathbook.growth.StandingSize;
import org.swathbook.growth.TraceBuilder;
import org.swathbook.season.RandomPrograms.Plan;
import org.swathbook.testing.Fixtures;
import org.swathbook.weather.StationWeather;
import org.swathbook.weather.WeatherDay;

/** Laws of walks through fields that somebody has scouted. */
class ScoutedProperties {
  private static final LocalDate TODAY = LocalDate.of(2027, 10, 31);
  private static final double ROUNDING = 1e-9;

  /** A field under one weather year, so that what is seen can equal what is modelled. */
  private static Book oneYear(String id, int place) {
    Field field = Fixtures.field(id);
    StationWeather all = Fixtures.station(field.station());
    int year = all.scenarioYears().get(place % all.scenarioYears().size());
    List<WeatherDay> days =
        all.days().stream()
            .filter(d -> !d.date().isBefore(LocalDate.of(year - 1, 9, 1)))
            .filter(d -> !d.date().isAfter(LocalDate.of(year, 10, 31)))
            .toList();
    return Fixtures.bookWith(
        new StationWeather(all.id(), days),
        field,
        Fixtures.book().weedsOf(field.id()).toArray(WeedPressure[]::new));
  }

  private static Kernel kernel(Book book, String id, List<Scouting> seen) {
    return kernel(book, id, seen, TODAY);
  }

  private static Kernel kernel(Book book, String id, List<Scouting> seen, LocalDate today) {
    Book scouted = book.withScoutings(seen);
    return Kernel.of(scouted, TraceBuilder.build(scouted, Fixtures.field(id), today));
  }

  private static Scouting seen(
      String field,
      LocalDate date,
      WeedPressure weed,
      Optional<ScoutedHeight> height,
      OptionalDouble perM2) {
    return new Scouting(
        date,
        Fixtures.field(field).id(),
        "",
        Optional.of(weed.weed().id()),
        height,
        perM2.isPresent()
            ? Optional.of(new ScoutedCount(perM2.getAsDouble(), OptionalDouble.empty()))
            : Optional.empty(),
        Optional.empty(),
        0);
  }

  private static Scouting random(Random random, String field) {
    List<WeedPressure> weeds = Fixtures.book().weedsOf(Fixtures.field(field).id());
    WeedPressure weed = weeds.get(random.nextInt(weeds.size()));
    boolean count = random.nextBoolean();
    boolean none = count && random.nextInt(5) == 0;
    double low = 0.5 + 30 * random.nextDouble();
    double high = random.nextBoolean() ? low : low * (1 + random.nextDouble());
    return seen(
        field,
        LocalDate.of(2027, 4, 1).plusDays(random.nextInt(100)),
        weed,
        none || count && random.nextBoolean()
            ? Optional.empty()
            : Optional.of(ScoutedHeight.range(low, high)),
        count
            ? OptionalDouble.of(none ? 0 : 1.5 * weed.perM2() * random.nextDouble())
            : OptionalDouble.empty());
  }

  private static List<Scouting> some(Random random, String field) {
    List<Scouting> out = new ArrayList<>();
    int n = 1 + random.nextInt(3);
    for (int i = 0; i < n; i++) {
      out.add(random(random, field));
    }
    return out;
  }

  @Property(tries = 20)
  void withoutRowsOrWithRowsOfOtherFieldsOrLaterDaysNothingChangesToTheBit(@ForAll long seed) {
    Random random = new Random(seed);
    String field = RandomPrograms.field(random);
    List<Plan> plans = RandomPrograms.plans(random, 3);
    List<Scouting> rows = some(random, field);
    LocalDate march = LocalDate.of(2027, 3, 1);
    Book book = Fixtures.book();
    String elsewhere = field.equals("QH-1") ? "ND-1" : "QH-1";

    KernelProperties.assertSameBits(
        RandomPrograms.score(kernel(book, field, rows, march), plans),
        RandomPrograms.score(kernel(book, field, List.of(), march), plans));
    KernelProperties.assertSameBits(
        RandomPrograms.score(kernel(book, field, some(random, elsewhere), TODAY), plans),
        RandomPrograms.score(kernel(book, field, List.of(), TODAY), plans));
  }

  @Property(tries = 200)
  void numbersStayInTheirBounds(@ForAll long seed) {
    Random random = new Random(seed);
    String field = RandomPrograms.field(random);
    Kernel kernel = kernel(oneYear(field, random.nextInt(10)), field, some(random, field));
    Score s = RandomPrograms.score(kernel, RandomPrograms.plans(random, 4));
    Score untreated = kernel.score(List.of());
    assertThat(s.lossShare(0)).isBetween(0.0, untreated.lossShare(0) + ROUNDING);
    for (int w = 0; w < kernel.traces().weeds().size(); w++) {
      assertThat(s.controlPct(w, 0)).isBetween(-ROUNDING, 100.0 + ROUNDING);
      double unsprayed = untreated.controlPct(w, 0);
      assertThat(Math.min(Math.abs(unsprayed), Math.abs(unsprayed - 100))).isLessThan(ROUNDING);
      assertThat(s.allSurvivorsPerM2(w, 0))
          .isBetween(
              s.survivorsPerM2(w, 0) - ROUNDING, untreated.allSurvivorsPerM2(w, 0) + ROUNDING);
      assertThat(s.exposedShare(w, 0)).isBetween(0.0, 1.0);
      assertThat(s.exposedToNothing(w, 0)).isBetween(0.0, s.exposedShare(w, 0) + ROUNDING);
    }
  }

  @Property(tries = 200)
  void onePassMoreNeverControlsLess(@ForAll long seed) {
    Random random = new Random(seed);
    String field = RandomPrograms.field(random);
    Kernel kernel = kernel(oneYear(field, random.nextInt(10)), field, some(random, field));
    List<Plan> fewer = RandomPrograms.plans(random, 3);
    List<Plan> more = new ArrayList<>(fewer);
    more.add(RandomPrograms.plan(random));
    more.sort((a, b) -> Integer.compare(a.day(), b.day()));
    KernelProperties.assertNoWorse(
        kernel, RandomPrograms.score(kernel, more), RandomPrograms.score(kernel, fewer));
  }

  @Property(tries = 2000)
  @Tag("slow")
  void onePassMoreOften(@ForAll long seed) {
    onePassMoreNeverControlsLess(seed);
    numbersStayInTheirBounds(seed);
    tallerWeedsAreNeverControlledBetter(seed);
  }

  /** One foliar pass on or after the day on which the weeds were seen. */
  @Property(tries = 200)
  void tallerWeedsAreNeverControlledBetter(@ForAll long seed) {
    Random random = new Random(seed);
    String field = RandomPrograms.field(random);
    Book book = oneYear(field, random.nextInt(10));
    Plan plan = RandomPrograms.plan(random);
    LocalDate pass = Fixtures.field(field).plantDate().plusDays(plan.day());
    WeedPressure weed = book.weedsOf(Fixtures.field(field).id()).get(0);
    double cm = 1 + 25 * random.nextDouble();
    OptionalDouble count =
        random.nextBoolean()
            ? OptionalDouble.of(weed.perM2() * (0.01 + random.nextDouble()))
            : OptionalDouble.empty();
    LocalDate visit = pass.minusDays(random.nextInt(10));
    Kernel lower =
        kernel(
            book,
            field,
            List.of(seen(field, visit, weed, Optional.of(ScoutedHeight.range(cm, cm)), count)));
    double more = cm * (1 + random.nextDouble());
    Kernel taller =
        kernel(
            book,
            field,
            List.of(seen(field, visit, weed, Optional.of(ScoutedHeight.range(more, more)), count)));
    Score low = RandomPrograms.score(lower, List.of(plan));
    Score high = RandomPrograms.score(taller, List.of(plan));
    assertThat(high.allSurvivorsPerM2(0, 0))
        .isGreaterThanOrEqualTo(low.allSurvivorsPerM2(0, 0) - ROUNDING);
  }

  /** As many as the model has, on a day before every pass: nothing changes. */
  @Property(tries = 100)
  void theModelledNumberChangesNothing(@ForAll long seed) {
    Random random = new Random(seed);
    String field = RandomPrograms.field(random);
    Book book = oneYear(field, random.nextInt(10));
    Kernel plain = kernel(book, field, List.of());
    SeasonTrace trace = plain.traces().years().get(0);
    int day = trace.plantingDay() + random.nextInt(50);
    int w = random.nextInt(trace.weedCount());
    CohortSet cohorts = trace.cohorts(w);
    double standing = 0;
    for (int c = 0; c < cohorts.count(); c++) {
      standing += cohorts.standing(c, day, trace.plantingDay());
    }
    Assume.that(standing > 0);
    Kernel seen =
        kernel(
            book,
            field,
            List.of(
                seen(
                    field,
                    trace.bookDateOf(day),
                    plain.traces().weeds().get(w),
                    Optional.empty(),
                    OptionalDouble.of(standing))));
    List<Plan> after = new ArrayList<>();
    int n = 1 + random.nextInt(2);
    for (int i = 0; i < n; i++) {
      Plan p = RandomPrograms.plan(random);
      after.add(new Plan(day - trace.plantingDay() + random.nextInt(20), p.lines()));
    }
    after.sort((a, b) -> Integer.compare(a.day(), b.day()));
    Score a = RandomPrograms.score(plain, after);
    Score b = RandomPrograms.score(seen, after);
    // Small plants that a later residual takes have cost something by the day of the count: how
    // much goes by their number, but never more than if nobody had sprayed.
    double most =
        reachesBack(after)
            ? RandomPrograms.score(plain, List.of()).lossShare(0) + ROUNDING
            : a.lossShare(0) + 1e-9;
    assertThat(b.lossShare(0)).isBetween(a.lossShare(0) - ROUNDING, most);
    assertThat(b.controlPct(w, 0)).isCloseTo(a.controlPct(w, 0), within(1e-7));
    assertThat(b.allSurvivorsPerM2(w, 0)).isCloseTo(a.allSurvivorsPerM2(w, 0), within(ROUNDING));
    assertThat(b.survivorsPerM2(w, 0)).isCloseTo(a.survivorsPerM2(w, 0), within(ROUNDING));
    assertThat(b.exposedToNothing(w, 0)).isCloseTo(a.exposedToNothing(w, 0), within(ROUNDING));
  }

  private static boolean reachesBack(List<Plan> plans) {
    return plans.stream()
        .flatMap(p -> p.lines().stream())
        .anyMatch(l -> Fixtures.active(l.active()).hasSoilActivity());
  }

  /** The modelled median, where the model's tall plants are within the bound of one height. */
  @Property(tries = 100)
  void theModelledHeightKeepsTheSizesWithinAClass(@ForAll long seed) {
    Random random = new Random(seed);
    String field = RandomPrograms.field(random);
    Book book = oneYear(field, random.nextInt(10));
    Kernel plain = kernel(book, field, List.of());
    SeasonTrace trace = plain.traces().years().get(0);
    int day = trace.plantingDay() + random.nextInt(60);
    double[] shares = {0.1, 0.5, 0.9};
    double[] cm = new double[3];
    for (int i = 0; i < 3; i++) {
      cm[i] = StandingSize.percentileCm(trace, 0, day, shares[i]).orElse(0);
    }
    Assume.that(cm[0] > 0.01 && cm[2] <= cm[1] * 2);
    Kernel seen =
        kernel(
            book,
            field,
            List.of(
                seen(
                    field,
                    trace.bookDateOf(day),
                    plain.traces().weeds().get(0),
                    Optional.of(ScoutedHeight.range(cm[1], cm[1])),
                    OptionalDouble.empty())));
    SeasonTrace scouted = seen.traces().years().get(0);
    for (int i = 0; i < 3; i++) {
      assertThat(StandingSize.percentileCm(scouted, 0, day, shares[i]).orElseThrow())
          .isCloseTo(cm[i], within(1e-6));
    }
  }

  /** With one size of plants up, the modelled height changes nothing at all. */
  @Property(tries = 50)
  void theModelledHeightOfOneCohortChangesNothing(@ForAll long seed) {
    Random random = new Random(seed);
    String field = RandomPrograms.field(random);
    Book book = oneYear(field, random.nextInt(10));
    Kernel plain = kernel(book, field, List.of());
    SeasonTrace trace = plain.traces().years().get(0);
    CohortSet cohorts = trace.cohorts(0);
    int day = cohorts.emergedOn(1) - 1;
    Assume.that(day > cohorts.emergedOn(0) && cohorts.heightCm(0, day) > 0);
    Kernel seen =
        kernel(
            book,
            field,
            List.of(
                seen(
                    field,
                    trace.bookDateOf(day),
                    plain.traces().weeds().get(0),
                    Optional.of(
                        ScoutedHeight.range(cohorts.heightCm(0, day), cohorts.heightCm(0, day))),
                    OptionalDouble.empty())));
    List<Plan> plans = List.of(RandomPrograms.plan(random));
    Score a = RandomPrograms.score(plain, plans);
    Score b = RandomPrograms.score(seen, plans);
    assertThat(b.controlPct(0, 0)).isCloseTo(a.controlPct(0, 0), within(1e-6));
    assertThat(b.allSurvivorsPerM2(0, 0)).isCloseTo(a.allSurvivorsPerM2(0, 0), within(1e-6));
  }
}
