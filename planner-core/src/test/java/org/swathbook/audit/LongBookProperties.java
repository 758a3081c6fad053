package org.swathbook.audit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Tag;
import org.swathbook.book.Application;
import org.swathbook.book.Book;
import org.swathbook.book.Field;
import org.swathbook.book.PastSeason;
import org.swathbook.book.WeedPressure;
import org.swathbook.program.FieldId;
import org.swathbook.testing.BookParts;
import org.swathbook.testing.DemoBook;

/**
 * What is told of the worst of many fields, found by their figures alone, is what walking and
 * judging every one of them whole tells of these. Books are drawn from the demo's: copies of its
 * fields, many of them equally large, with other dates, rows and seasons gone, and other drivers.
 */
class LongBookProperties {
  private static final Book DEMO = DemoBook.BOOK;

  @Property(tries = 15)
  void theWorstAreToldAsIfAllWereWalked(@ForAll long seed) {
    toldAsIfAllWere(seed);
  }

  @Property(tries = 400)
  @Tag("slow")
  void theWorstAreToldAsIfAllWereWalkedInHundredsOfBooks(@ForAll long seed) {
    toldAsIfAllWere(seed);
  }

  /** Figures by driver weeds and sites alone are those of the whole walk, to the last bit. */
  @Property(tries = 15)
  void figuresAreThoseOfTheWholeWalk(@ForAll long seed) {
    Book book = drawn(new Random(seed));
    SharedTraces shared = new SharedTraces(book.catalog());
    FieldBooks books = new FieldBooks(book);
    for (Field field : book.fields()) {
      Book own = books.of(field);
      for (PastSeason season : own.pastSeasons()) {
        SeasonAudit.Result whole = SeasonAudit.of(own, field, season, shared);
        SeasonAudit.Result figures = SeasonAudit.figures(own, field, season, shared);
        assertThat(figures.unjudged()).isEqualTo(whole.unjudged());
        assertThat(figures.sites()).hasSameSizeAs(whole.sites());
        for (int w = 0; w < whole.sites().size(); w++) {
          SeasonSites a = whole.sites().get(w);
          SeasonSites b = figures.sites().get(w);
          assertThat(b.weed()).isEqualTo(a.weed());
          assertThat(b.applied()).isEqualTo(a.applied());
          assertThat(b.passes()).isEqualTo(a.passes());
          assertThat(b.met()).isEqualTo(a.met());
        }
      }
    }
  }

  private static void toldAsIfAllWere(long seed) {
    Random random = new Random(seed);
    Book book = drawn(random);
    int most = 1 + random.nextInt(book.fields().size() - 1);
    SiteAudit all = SiteAudit.of(book, book.fields(), book.fields().size());
    SiteAudit some = SiteAudit.of(book, book.fields(), most);
    Set<FieldId> worst = new LinkedHashSet<>();
    for (RankedSites r : all.ranked()) {
      if (worst.size() < most) {
        worst.add(r.sites().field().id());
      }
    }
    List<RankedSites> expected =
        all.ranked().stream().filter(r -> worst.contains(r.sites().field().id())).toList();
    assertThat(some.ranked()).hasSameSizeAs(expected);
    // Ranked are all up to the last of the told fields; what comes behind has no place.
    int last =
        worst.stream()
            .mapToInt(
                f ->
                    expected.stream()
                        .filter(r -> r.sites().field().id().equals(f))
                        .mapToInt(r -> r.rank().getAsInt())
                        .min()
                        .getAsInt())
            .max()
            .orElse(0);
    for (int i = 0; i < expected.size(); i++) {
      RankedSites e = expected.get(i);
      assertThat(some.ranked().get(i))
          .isEqualTo(
              e.rank().getAsInt() <= last
                  ? e
                  : new RankedSites(
                      e.sites(), e.streakYears(), e.turnover(), OptionalInt.empty(), e.reason()));
    }
    assertThat(some.findings())
        .isEqualTo(all.findings().stream().filter(f -> worst.contains(f.field().id())).toList());
    assertThat(some.acres()).isEqualTo(all.acres());
    assertThat(some.growers()).isEqualTo(all.growers());
    assertThat(some.notAudited()).isEqualTo(all.notAudited());
  }

  private static Book drawn(Random random) {
    List<Field> fields = new ArrayList<>();
    List<WeedPressure> weeds = new ArrayList<>();
    List<Application> rows = new ArrayList<>();
    List<PastSeason> seasons = new ArrayList<>();
    int many = 3 + random.nextInt(5);
    for (int i = 0; i < many; i++) {
      Field of = DEMO.fields().get(random.nextInt(DEMO.fields().size()));
      FieldId id = new FieldId("C" + i);
      fields.add(copy(of, id, random.nextInt(3) == 0 ? 120 : 80));
      for (WeedPressure w : DEMO.weedsOf(of.id())) {
        WeedPressure like = DEMO.weeds().get(random.nextInt(DEMO.weeds().size()));
        weeds.add(
            new WeedPressure(
                id, w.weed(), w.perM2(), like.driver(), w.biotypes(), w.listed(), w.note()));
      }
      for (PastSeason p : DEMO.pastSeasons()) {
        if (p.field().equals(of.id()) && random.nextInt(6) > 0) {
          seasons.add(
              new PastSeason(
                  id,
                  p.season(),
                  p.crop(),
                  p.traits(),
                  random.nextInt(12) == 0 ? Optional.empty() : p.plantDate(),
                  p.harvestDate(),
                  p.tillage(),
                  p.weeds()));
        }
      }
      // Half of the copies keep the journal of their model, so that some stand equal.
      boolean changed = random.nextBoolean();
      int later = random.nextInt(13) - 6;
      for (Application a : DEMO.journal().of(of.id())) {
        if (!changed || random.nextInt(5) > 0) {
          rows.add(copy(a, id, changed ? a.date().plusDays(later) : a.date()));
        }
      }
    }
    return BookParts.of(DEMO)
        .fields(fields)
        .weeds(weeds)
        .journal(rows)
        .pastSeasons(seasons)
        .whole();
  }

  private static Application copy(Application a, FieldId field, LocalDate date) {
    return new Application(
        a.pass() + field,
        a.line(),
        date,
        field,
        a.season(),
        OptionalDouble.empty(),
        a.dose(),
        a.epaRegNo(),
        a.crop(),
        a.position(),
        a.record(),
        a.note());
  }

  private static Field copy(Field f, FieldId id, double acres) {
    return new Field(
        id,
        f.grower(),
        f.name(),
        acres,
        f.crop(),
        f.traits(),
        f.yieldGoalBuPerAcre(),
        f.rowSpacingCm(),
        f.plantDate(),
        f.harvestDate(),
        f.tillage(),
        f.soilTextures(),
        f.organicMatterPct(),
        f.soilPh(),
        f.residuePct(),
        f.station(),
        f.latitude(),
        f.longitude(),
        f.previousCrop(),
        f.nextCrops(),
        f.nextCropPlantDate(),
        f.uses(),
        f.irrigated(),
        f.state(),
        f.county(),
        f.erodible(),
        f.waterDistanceM(),
        f.waters(),
        f.neighbors());
  }
}
