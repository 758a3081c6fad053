package org.swathbook.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.swathbook.catalog.TankTerms;
import org.swathbook.measure.Rate;
import org.swathbook.program.Adjuvant;
import org.swathbook.program.Applicator;
import org.swathbook.program.Carrier;
import org.swathbook.program.Dose;
import org.swathbook.program.Doses;
import org.swathbook.program.Mix;
import org.swathbook.program.Scouted;
import org.swathbook.program.SprayDay;
import org.swathbook.program.SprayJob;
import org.swathbook.program.SprayWeather;
import org.swathbook.program.Sprayer;
import org.swathbook.program.SprayerSetup;
import org.swathbook.program.SprayerTank;
import org.swathbook.rules.Ask;
import org.swathbook.rules.Finding;
import org.swathbook.rules.Severity;
import org.swathbook.rules.Verdict;
import org.swathbook.testing.MixCase;
import org.swathbook.testing.Sky;

/** What must hold of every tank, with the starter catalog and the rules as they are. */
class MixLawsProperties {
  private static final List<MixCase> FIELDS =
      List.of(
          MixCase.in("soybean", "glyphosate", "glufosinate", "2,4-D")
              .day(27, "V3", 7)
              .weed("AMAPA", 3, 9)
              .seen("SETFA", 4),
          MixCase.in("corn", "glyphosate").day(24, "V4", 10).weed("AMATU", 2, 9),
          MixCase.in("soybean", "dicamba", "glyphosate").day(-8, "", 0).weed("ERICA", 4, 9),
          MixCase.in("grain-sorghum", "safened-seed").day(0, "", 0).weed("AMAPA", 0),
          // small volunteer corn that takes less, a vineyard downwind, no training, an insecticide
          MixCase.in("soybean", "dicamba", "glyphosate")
              .day(24, "V2", 5)
              .weed("ZEAMX", 5, 9)
              .field(f -> f.neighbors("vineyard NE 1500 ft").waterFeet(150))
              .sky(Sky.fair().from(225))
              .by(new Applicator("R. Invented", "", Optional.of(List.of())))
              .others("organophosphate"),
          // worked in, beside a garden and a well, after paraquat and dicamba
          MixCase.in("corn")
              .day(0, "", 0)
              .field(f -> f.tilled().neighbors("garden E 200 ft").waterFeet(40))
              .incorporated(true)
              .lastLoad("dicamba", TankTerms.Rinse.WATER_RINSE)
              .others("terbufos"),
          // what went before, an insecticide over the crop among it
          MixCase.in("corn", "glyphosate")
              .day(24, "V4", 9)
              .weed("AMATU", 3, 9)
              .applied(0, "atrazine 1.5 ai + S-metolachlor 1.3 ai")
              .sprayedOn(20, "V3", "glyphosate 0.8 ae", List.of("dimethoate")));

  private static final List<MixJudge> JUDGES = FIELDS.stream().map(MixCase::judge).toList();

  private static final List<Dose> DOSES =
      MixCase.CATALOG.products().stream()
          .map(
              p -> {
                Rate step = p.step();
                Rate spoken = step.in(p.spoken().unit());
                return Doses.ofProduct(
                    MixCase.CATALOG,
                    p,
                    new Rate(spoken.amount() * 16, spoken.unit(), spoken.area(), spoken.basis()));
              })
          .toList();

  record Drawn(int field, List<Dose> doses, List<Adjuvant> adjuvants) {
    SprayJob job() {
      return FIELDS.get(field).job().with(new Mix(doses, adjuvants, OptionalDouble.of(15)));
    }

    Judgement judged() {
      return judged(job());
    }

    Judgement judged(SprayJob job) {
      return JUDGES.get(field).judge(job).judgement();
    }

    SprayJob with(List<Dose> others) {
      return job().with(new Mix(others, adjuvants, OptionalDouble.of(15)));
    }
  }

  /** Mending passes over what is no better than what is there; of the rest it sees all. */
  @Property(tries = 100)
  void onlyWhatIsNoBetterIsPassedOver(
      @ForAll("tanks") Drawn there, @ForAll("tanks") Drawn tried, @ForAll boolean byBlocks) {
    MixJudge judge = JUDGES.get(there.field());
    JudgedMix than = judge.judge(there.job());
    SprayJob job = there.with(tried.doses());
    Judgement all = judge.judge(job).judgement();
    int blocks =
        Long.compare(objections(all, Severity.BLOCK), objections(than.judgement(), Severity.BLOCK));
    int warns =
        Long.compare(objections(all, Severity.WARN), objections(than.judgement(), Severity.WARN));
    Optional<JudgedMix> some = new MixGlance(judge, than).less(job, byBlocks);
    assertThat(some.isPresent()).isEqualTo(blocks < 0 || blocks == 0 && warns < 0 && !byBlocks);
    if (some.isPresent()) {
      assertThat(some.get().judgement().verdict()).isEqualTo(all.verdict());
      assertThat(some.get().judgement().asks()).isEqualTo(all.asks());
      assertThat(places(some.get().judgement())).isEqualTo(places(all));
    }
  }

  private static long objections(Judgement judgement, Severity severity) {
    return places(judgement).stream().filter(p -> p.contains(severity)).count();
  }

  private static Set<List<Object>> places(Judgement judgement) {
    return judgement.findings().stream()
        .map(f -> List.<Object>of(f.rule(), f.severity(), f.about()))
        .collect(Collectors.toSet());
  }

  @Provide
  Arbitrary<Drawn> tanks() {
    Arbitrary<List<Dose>> doses =
        Arbitraries.of(DOSES)
            .list()
            .uniqueElements(d -> d.product().id())
            .ofMinSize(1)
            .ofMaxSize(4);
    Arbitrary<List<Adjuvant>> adjuvants =
        Arbitraries.of(
                new Adjuvant("ammonium-sulfate", "8.5 lb/100 gal"),
                new Adjuvant("crop-oil", "1 % v/v"),
                new Adjuvant("nonionic-surfactant", "0.25 % v/v"))
            .list()
            .uniqueElements()
            .ofMaxSize(2);
    return Combinators.combine(
            Arbitraries.integers().between(0, FIELDS.size() - 1), doses, adjuvants)
        .as(Drawn::new);
  }

  private static Set<String> blocks(Judgement judgement) {
    Set<String> out = new TreeSet<>();
    for (Finding f : judgement.findings()) {
      if (f.severity() == Severity.BLOCK) {
        out.add(f.rule() + " " + f.about().ingredient().map(Object::toString).orElse(""));
      }
    }
    return out;
  }

  /**
   * A partner never clears what a label forbids of another: only a missing adjuvant that the tank's
   * kinds were to bring is its own affair, and no partner brings one.
   */
  @Property(tries = 200)
  void noProductRemovesAnothersBlock(@ForAll("tanks") Drawn tank, @ForAll("tanks") Drawn more) {
    Dose added = more.doses().get(0);
    boolean same =
        tank.doses().stream().anyMatch(d -> d.product().id().equals(added.product().id()));
    if (same) {
      return;
    }
    List<Dose> with = new ArrayList<>(tank.doses());
    with.add(added);

    assertThat(blocks(tank.judged(tank.with(with)))).containsAll(blocks(tank.judged()));
  }

  @Property(tries = 200)
  void aHigherRateNeverClearsACap(@ForAll("tanks") Drawn tank) {
    Dose first = tank.doses().get(0);
    Rate r = first.rate();
    Dose doubled =
        Doses.ofProduct(
            MixCase.CATALOG,
            first.product(),
            new Rate(2 * r.amount(), r.unit(), r.area(), r.basis()));
    List<Dose> more = new ArrayList<>(tank.doses());
    more.set(0, doubled);

    Set<String> before = blocks(tank.judged());
    before.removeIf(b -> !b.startsWith("annual-cap") && !b.startsWith("rate-above-use"));
    assertThat(blocks(tank.judged(tank.with(more)))).containsAll(before);
  }

  @Property(tries = 200)
  void theOrderOfTheTankDoesNotMatter(@ForAll("tanks") Drawn tank, @ForAll long seed) {
    List<Dose> other = new ArrayList<>(tank.doses());
    Collections.shuffle(other, new Random(seed));

    Judgement one = tank.judged();
    Judgement two = tank.judged(tank.with(other));
    assertThat(two.verdict()).isEqualTo(one.verdict());
    assertThat(keys(two)).isEqualTo(keys(one));
    assertThat(two.asks().stream().map(Ask::what).distinct().sorted())
        .containsExactlyElementsOf(one.asks().stream().map(Ask::what).distinct().sorted().toList());
  }

  private static List<String> keys(Judgement j) {
    return j.findings().stream()
        // two actives of which neither goes with the other are told of one of them
        .map(f -> f.rule() + " " + f.severity())
        .sorted()
        .toList();
  }

  @Property(tries = 200)
  void moreWindNeverClearsABlock(@ForAll("tanks") Drawn tank, @ForAll("mph") double mph) {
    Set<String> calm = windBlocks(tank, mph);
    Set<String> windy = windBlocks(tank, mph + 5);

    if (mph >= 3) {
      assertThat(windy).containsAll(calm);
    }
  }

  @Provide
  Arbitrary<Double> mph() {
    return Arbitraries.doubles().between(0, 30);
  }

  private static Set<String> windBlocks(Drawn tank, double mph) {
    SprayJob job = tank.job().with(Sky.fair().wind(mph).weather());
    Set<String> out = blocks(tank.judged(job));
    out.removeIf(b -> !b.startsWith("wind"));
    return out;
  }

  /** A fact that the tank needs, taken away: it may not make a verdict clear that was not. */
  @Property(tries = 200)
  void aFactLessClearsNothing(@ForAll("tanks") Drawn tank, @ForAll @IntRange(max = 7) int fact) {
    SprayJob all = tank.job();
    Verdict known = tank.judged().verdict();
    Verdict unknown = tank.judged(without(all, fact)).verdict();

    if (known != Verdict.CLEAR) {
      assertThat(unknown).isNotEqualTo(Verdict.CLEAR);
    }
  }

  private static SprayJob without(SprayJob j, int fact) {
    boolean hour = fact != 0;
    return new SprayJob(
        j.field(),
        new SprayDay(
            j.date(),
            hour ? j.time() : Optional.empty(),
            fact == 1 ? Scouted.NOTHING : j.scouted(),
            fact == 6 ? SprayWeather.UNKNOWN : j.weather()),
        fact == 2 ? new Mix(j.mix().doses(), j.mix().adjuvants(), OptionalDouble.empty()) : j.mix(),
        new Sprayer(
            j.method(),
            fact == 3 ? Carrier.UNKNOWN : j.carrier(),
            fact == 4 ? SprayerSetup.UNKNOWN : j.setup(),
            fact == 5 ? SprayerTank.UNKNOWN : j.tank()),
        j.others(),
        fact == 7 ? Optional.empty() : j.applicator());
  }

  /** Of which nothing is known but the tank: never clear, whatever is in it. */
  @Property(tries = 200)
  void whereNothingIsKnownNothingIsClear(@ForAll("tanks") Drawn tank) {
    SprayJob bare = SprayJob.of(tank.job().field(), tank.job().date(), Mix.of(tank.doses()));

    assertThat(tank.judged(bare).verdict()).isNotEqualTo(Verdict.CLEAR);
  }

  /** What is said to be better is better, and is what the rules themselves say of it. */
  @Property(tries = 20)
  void aMendedTankIsBetter(@ForAll("tanks") Drawn tank) {
    MixJudge judge = JUDGES.get(tank.field());
    JudgedMix broken = judge.judge(tank.job());
    Optional<MendedMix> mended = MixMending.of(judge, broken);

    mended.ifPresent(
        m -> {
          // A warning where a block was is better too.
          long blocks = count(m.mix(), Severity.BLOCK) - count(broken, Severity.BLOCK);
          long warns = count(m.mix(), Severity.WARN) - count(broken, Severity.WARN);
          assertThat(blocks < 0 || blocks == 0 && warns < 0)
              .as("%d more blocks, %d more warnings", blocks, warns)
              .isTrue();
          assertThat(judge.judge(m.mix().job()).judgement()).isEqualTo(m.mix().judgement());
          assertThat(DriverSites.of(broken.facts()).lackedBy(DriverSites.of(m.mix().facts())))
              .as("sites that work on driver weeds, lacked by the mended tank")
              .isZero();
          for (Dose d : tank.doses()) {
            assertThat(m.changes())
                .filteredOn(c -> c.matches(".*\\b" + d.product().id() + "\\b.*"))
                .as("changes of one product")
                .hasSizeLessThan(2);
          }
          assertThat(m.mix().job().mix().adjuvants())
              .filteredOn(a -> !tank.adjuvants().contains(a))
              .allSatisfy(
                  a -> assertThat(String.join(", ", m.changes())).contains("add " + a.kind()));
        });
  }

  private static long count(JudgedMix judged, Severity severity) {
    return judged.judgement().findings().stream().filter(f -> f.severity() == severity).count();
  }
}
